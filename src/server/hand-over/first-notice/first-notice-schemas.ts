import { ClaimDto, FirstNoticeDto } from '../../../../shared/wire/first-notice-requests.dto.js';
import { schemaOf } from '../../../../shared/wire/record-schema.js';
import { count, hash, instant, listOf, object, type Schema, SIGNED_BY, text } from '../schema-parts.js';

const textOrNull: Schema = { type: ['string', 'null'] };
const POLICY_ID = '5b7d1f4e-0c57-4f3e-9f0e-2a1b3c4d5e6f';

const NOTICE = object(
  {
    id: text,
    number: text,
    policy: text,
    policyNumber: text,
    insurer: text,
    seenAt: text,
    callName: text,
    callNumber: text,
    madeAt: instant,
    by: SIGNED_BY,
    sha256: hash,
    size: count,
  },
  { version: count },
);

const CLAIM = object(
  { id: text, policy: text, at: instant, by: SIGNED_BY },
  { number: text, adjuster: text, phone: text, mail: text },
);

/** What first notices are asked and what they answer, for the API's document. */
export const FIRST_NOTICE_SCHEMAS: Record<string, Schema> = {
  FirstNoticeDraft: {
    ...schemaOf(FirstNoticeDto),
    examples: [
      {
        policy: POLICY_ID,
        seenAt: 'South dock, slip 4, tagged and not to be started',
        callName: 'Ruth Castellanos',
        callNumber: '903-555-0102',
      },
    ],
  },
  ClaimDraft: {
    ...schemaOf(ClaimDto),
    examples: [{ policy: POLICY_ID, number: 'C-88-2041', adjuster: 'R. Vale', phone: '903-555-0188' }],
  },
  FirstNotice: NOTICE,
  FirstNotices: object({
    reference: text,
    policies: listOf(
      object({
        id: text,
        number: text,
        insurer: text,
        covers: textOrNull,
        firstDay: text,
        lastDay: text,
        noticePhone: textOrNull,
        noticeMail: textOrNull,
        noticeTerms: textOrNull,
        craft: listOf(text),
        claim: { anyOf: [CLAIM, { type: 'null' }] },
      }),
    ),
    uncovered: listOf(text),
    notices: listOf(NOTICE),
    claims: listOf(CLAIM),
  }),
};
