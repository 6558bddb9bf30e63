import { isObject } from './is-object.js';
import { words } from './fleet-values.js';
import type { ValueRule } from './record-members.js';
import { listOf } from './record-values.js';

const DUTY = /^(us(-[a-z]{2})?|state)\/[a-z][a-z-]{0,60}$/;
const DUTY_WORDS = 'the id of a duty as the determination gives it, such as us-tx/accident-report';

export const dutyId: ValueRule = {
  expected: DUTY_WORDS,
  faultOf: (value) => (typeof value === 'string' && DUTY.test(value) ? null : `Must be ${DUTY_WORDS}.`),
  schema: { type: 'string', pattern: DUTY.source, examples: ['us-tx/accident-report'] },
};
export const dutyIds = listOf(dutyId, 'ids of duties');

const JURISDICTION = /^us(-[a-z]{2})?$/;
const JURISDICTION_WORDS = 'us-tx for a state, or us for the Coast Guard';
export const jurisdiction: ValueRule = {
  expected: JURISDICTION_WORDS,
  faultOf: (value) =>
    typeof value === 'string' && JURISDICTION.test(value) ? null : `Must be ${JURISDICTION_WORDS}.`,
  schema: { type: 'string', pattern: JURISDICTION.source, examples: ['us-tx'] },
};

/** Left out where no craft is named yet. */
export const craftId = words('the id of a craft of the record');

const KEY = 'an object: {"duty", "vessel"}';
const keyFault = (value: unknown): string | null => {
  if (!isObject(value)) return `Must be ${KEY}.`;
  const { duty, vessel, ...others } = value;
  if (Object.keys(others).length > 0) return `Must be ${KEY} and hold nothing else.`;
  return dutyId.faultOf(duty) ?? (vessel === undefined || vessel === null ? null : craftId.faultOf(vessel));
};

/** The reports that a filing answers; `vessel` is null or left out where no craft is named. */
export const reportKeys: ValueRule = {
  ...listOf(
    {
      expected: KEY,
      faultOf: keyFault,
      schema: {
        type: 'object',
        additionalProperties: false,
        required: ['duty'],
        properties: { duty: dutyId.schema, vessel: { type: ['string', 'null'] } },
      },
    },
    'reports',
  ),
  expected: `a list of reports, each ${KEY}`,
};
