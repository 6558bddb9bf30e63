import { HOLD_CAUSES } from '../../../shared/record/legal-hold.js';
import type { JsonSchema } from '../../../shared/wire/record-members.js';

const text: JsonSchema = { type: 'string' };
const instant: JsonSchema = { type: 'string', format: 'date-time' };
const day: JsonSchema = { type: 'string', format: 'date' };
const listOf = (items: JsonSchema): JsonSchema => ({ type: 'array', items });

/** An object of exactly these members; a name that ends in `?` may be left out. */
function members(properties: Record<string, JsonSchema>): JsonSchema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    additionalProperties: false,
    required: names.filter((name) => !name.endsWith('?')),
    properties: Object.fromEntries(names.map((name) => [name.replace('?', ''), properties[name]])),
  };
}

/** Which counsel reads an incident, and which did. */
export const ASSIGNMENTS: JsonSchema = {
  ...members({
    items: listOf(
      members({
        id: text,
        account: text,
        name: text,
        assignedAt: instant,
        assignedBy: text,
        'endedAt?': instant,
        'endedBy?': text,
      }),
    ),
  }),
  examples: [
    {
      items: [
        {
          id: '0b7a2c64-6d5e-4f0e-9f55-0a1d2c3b4e5f',
          account: '5f0c7a3e-2b1d-4c59-9d0e-2f4f6a1c7b10',
          name: 'Cleo Law',
          assignedAt: '2026-06-15T14:00:00.000Z',
          assignedBy: 'Max Dock',
        },
      ],
    },
  ],
};

const custodian = members({
  id: text,
  name: text,
  account: { type: 'boolean' },
  namedAt: instant,
  namedBy: text,
  'acknowledgedAt?': instant,
  'acknowledgedTo?': text,
});

const hold = members({
  id: text,
  cause: { enum: HOLD_CAUSES },
  of: listOf(text),
  since: instant,
  startedBy: text,
  'reason?': text,
  custodians: listOf(custodian),
  'released?': members({
    counsel: text,
    releasedOn: day,
    'reason?': text,
    enteredBy: text,
    enteredAt: instant,
  }),
});

/** Whether an incident is held, by which holds, and what went out of it on counsel's direction. */
export const HOLDS: JsonSchema = {
  ...members({
    held: { type: 'boolean' },
    holds: listOf(hold),
    withdrawals: listOf(
      members({ id: text, section: text, path: text, counsel: text, directedOn: day, at: instant }),
    ),
  }),
  examples: [
    {
      held: true,
      holds: [
        {
          id: '7c1f0f9a-0f0e-4a51-8a5d-5d1f6e2b3c4d',
          cause: 'beyond-first-aid',
          of: ['p1'],
          since: '2026-06-13T17:05:00.000Z',
          startedBy: 'the service, by what the record says',
          custodians: [
            {
              id: '1e9b3c7d-2a4f-4b6c-8d0e-9f1a2b3c4d5e',
              name: 'Max Dock',
              account: true,
              namedAt: '2026-06-13T17:05:00.000Z',
              namedBy: 'the service, by what the record says',
              acknowledgedAt: '2026-06-13T18:00:00.000Z',
            },
          ],
        },
      ],
      withdrawals: [],
    },
  ],
};
