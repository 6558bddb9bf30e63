import { MAIL_STATES } from '../../../shared/kernel/mail-state.js';
import { MAIL_DECISIONS } from '../platform/mail/mail-words.js';

type Schema = Record<string, unknown>;

export const MAIL_ID = '01976a3c-5e00-7000-8c3d-2f4f6a1c7b10';

const text: Schema = { type: 'string' };
const instant: Schema = { type: 'string', format: 'date-time' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const oneOf = (words: readonly string[]): Schema => ({ type: 'string', enum: words });

function members(properties: Record<string, Schema>, examples: object[] = []): Schema {
  return {
    type: 'object',
    additionalProperties: false,
    required: Object.keys(properties),
    properties,
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const decision = members({
  decision: oneOf(MAIL_DECISIONS),
  reason: text,
  stateBefore: oneOf(MAIL_STATES),
  wordsBefore: maybe(text),
  person: text,
  accountId: { type: 'string', format: 'uuid' },
  decidedAt: instant,
});

const mail = members(
  {
    id: { type: 'string', format: 'uuid' },
    version: { type: 'integer', minimum: 1, description: 'Also sent as ETag.' },
    state: oneOf(MAIL_STATES),
    purpose: text,
    incidentId: maybe(text),
    to: text,
    subject: text,
    text,
    tries: { type: 'integer', minimum: 0 },
    nextTryAt: maybe(instant),
    words: { ...maybe(text), description: 'What the server, or the folder, said last.' },
    messageId: text,
    queuedAt: instant,
    changedAt: instant,
    decisions: { type: 'array', items: decision },
  },
  [
    {
      id: MAIL_ID,
      version: 3,
      state: 'uncertain',
      purpose: 'decision-reopened',
      incidentId: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
      to: 'ana@rental.example',
      subject: 'Incident 2026-0042: a decision is open again',
      text: 'Incident 2026-0042: a decision is open again. Facts or law behind it have changed.\n',
      tries: 1,
      nextTryAt: null,
      words: 'It was handed over and no answer came: it may have been delivered. Timeout',
      messageId: `${MAIL_ID}@rental.example`,
      queuedAt: '2026-06-13T16:00:00.000Z',
      changedAt: '2026-06-13T16:05:00.000Z',
      decisions: [],
    },
  ],
);

/** Schemas of mail by the name that they have in the API's document. */
export const MAIL_SCHEMAS: Record<string, Schema> = {
  Mail: mail,
  MailPage: members({
    items: { type: 'array', items: { $ref: '#/components/schemas/Mail' } },
    next: { type: ['string', 'null'], description: 'The `after` of the next page.' },
  }),
  MailDecision: members({ reason: { type: 'string', maxLength: 1000, pattern: '\\S' } }, [
    { reason: 'Ana says that nothing has come.' },
  ]),
};
