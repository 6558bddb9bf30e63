import type { FieldError } from '../kernel/field-error.js';
import type { IncidentRecord } from './incident-record.js';
import { hasUnlistedFinding, recordToFacts } from './record-to-facts.js';
import { whenItHappened } from './when-it-happened.js';

/**
 * Where the facts of a record say more than the record does, each at its pointer into the facts, with what to add to
 * the record. A determination is shown together with these.
 * @example listAssumptions(recordOfABareCall)[0]?.pointer // '/occurredAt'
 */
export function listAssumptions(record: IncidentRecord): FieldError[] {
  const { from } = whenItHappened(record);
  const facts = recordToFacts(record);
  const { call, craft, damage, people } = record.sections;
  const foundEmpty = call?.overdue?.ended?.value === 'found-empty';
  return [
    ...(from === 'occurred' ? [] : [{ pointer: '/occurredAt', detail: WHEN[from] }]),
    ...(craft?.craft ?? []).flatMap(({ use }, index) =>
      use === undefined ? [{ pointer: `/vessels/${index}/use`, detail: USE }] : [],
    ),
    ...(people?.people ?? []).flatMap(({ diedAt, outcome, signsOfHarm }, index) => [
      ...(diedAt !== undefined && facts.people[index]?.diedAt === undefined
        ? [{ pointer: `/people/${index}/diedAt`, detail: DIED }]
        : []),
      ...(foundEmpty &&
      outcome?.value === 'not-back' &&
      signsOfHarm?.value !== 'yes' &&
      signsOfHarm?.value !== 'no'
        ? [{ pointer: `/people/${index}/signsOfHarm`, detail: FOUND_EMPTY }]
        : []),
    ]),
    ...(damage?.lines ?? []).flatMap(({ newSinceCheckOut }, index) =>
      newSinceCheckOut?.value === 'no' ? [{ pointer: `/damage/${index}/amount`, detail: OLD_DAMAGE }] : [],
    ),
    ...(damage?.assessment?.value === 'complete' && hasUnlistedFinding(record.sections)
      ? [{ pointer: '/damageAssessment', detail: UNLISTED }]
      : []),
  ];
}

const WHEN = {
  departure: 'Nobody has said when it happened: clocks run from when the craft left.',
  call: 'Nobody has said when it happened: clocks run from the call. If it was earlier, they end earlier.',
};
const USE = 'Nobody has said what the craft was used for: it is taken for one that the federal rule covers.';
const FOUND_EMPTY =
  'The craft was found empty and nobody has said otherwise: taken as a sign of harm to whoever is not back.';
const OLD_DAMAGE = 'Recorded as there before the craft went out: it counts for nothing here.';
const UNLISTED = 'Something found at check-in has no line of damage: the list is taken for incomplete.';
const DIED = 'The hour of death does not fit what else is recorded: it is taken for unknown.';
