import { SENSITIVE } from '../../../shared/hand-over/find-sensitive-text.js';
import { MASKINGS, RECIPIENTS } from '../../../shared/hand-over/hand-over-profile.js';
import { UNSTAMPED } from '../../../shared/hand-over/packet.js';
import { PacketDeliveryDto, PacketDraftDto } from '../../../shared/wire/hand-over-requests.dto.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import { FIRST_NOTICE_SCHEMAS } from './first-notice/first-notice-schemas.js';
import { LINK_SCHEMAS } from './links/link-schemas.js';
import { count, hash, instant, listOf, object, type Schema, SIGNED_BY, text } from './schema-parts.js';

const VERDICT = {
  does: { enum: ['goes', 'masked', 'stays'] },
  reason: text,
  by: { enum: ['profile', 'choice', 'override'] },
};
const HOW = { how: { enum: MASKINGS } };
const WITHHELD = object({ kind: text, what: text, count, reason: text });

const PACKET = object(
  {
    id: text,
    version: count,
    number: text,
    recipient: { enum: RECIPIENTS },
    name: text,
    purpose: text,
    madeAt: instant,
    by: SIGNED_BY,
    head: object({ size: count, root: hash }),
    manifest: { ...hash, description: 'SHA-256 of manifest.json' },
    manifestSize: count,
    files: count,
    privileged: { type: 'boolean' },
    overrides: listOf(object({ id: text, what: text, reason: text })),
    deliveries: listOf(object({ id: text, to: text, way: text, at: instant, by: SIGNED_BY })),
    looks: listOf(object({ id: text, at: instant, by: SIGNED_BY })),
  },
  {
    stamp: object({ at: instant, authority: text }),
    unstamped: { enum: UNSTAMPED, description: 'Why its head has no time stamp although one was asked for.' },
    cautions: listOf(object({ id: text, what: text, tells: { enum: SENSITIVE }, read: { type: 'boolean' } })),
  },
);

const DRAFT_EXAMPLE = {
  recipient: 'insurer',
  name: 'Red River Marine Insurance, claims',
  purpose: 'Claim of 13 June 2026',
  choices: [{ id: 'c1', what: 'medical', does: 'goes', reason: 'They asked in writing on 20 June.' }],
};

/** What hand-overs are asked and what they answer, for the API's document. */
export const HAND_OVER_SCHEMAS: Record<string, Schema> = {
  PacketDraft: { ...schemaOf(PacketDraftDto), examples: [DRAFT_EXAMPLE] },
  PacketDelivery: {
    ...schemaOf(PacketDeliveryDto),
    examples: [{ to: 'Red River Marine Insurance, claims', way: 'on a stick, by hand' }],
  },
  PacketPreview: object({
    reference: text,
    asOf: instant,
    recipient: { enum: RECIPIENTS },
    title: text,
    minors: { enum: ['named', 'initials'] },
    counts: object({ goes: count, masked: count, stays: count }),
    fields: listOf(
      object(
        { section: text, path: text, kind: { type: ['string', 'null'] }, ...VERDICT },
        { ...HOW, value: {} },
      ),
    ),
    files: listOf(
      object(
        {
          id: text,
          name: { type: ['string', 'null'] },
          type: text,
          size: count,
          kind: text,
          regions: count,
          ...VERDICT,
        },
        HOW,
      ),
    ),
    others: listOf(object({ kind: text, count, ...VERDICT })),
    cautions: listOf(object({ section: text, path: text, tells: { enum: SENSITIVE }, said: text })),
    withheld: listOf(WITHHELD),
    kinds: listOf(object({ kind: text, what: text })),
  }),
  Packet: PACKET,
  PacketList: object({ items: listOf(PACKET) }),
  ...FIRST_NOTICE_SCHEMAS,
  ...LINK_SCHEMAS,
};
