import {
  CollectionDto,
  CounselLinkDto,
  PacketLinkDto,
} from '../../../../shared/wire/packet-link-requests.dto.js';
import { schemaOf } from '../../../../shared/wire/record-schema.js';
import { COLLECTED } from '../hand-over-book.js';
import { count, hash, instant, listOf, object, type Schema, SIGNED_BY, text } from '../schema-parts.js';
import { LINK_STATES } from './link-views.js';

const LINK = {
  id: text,
  version: count,
  packet: text,
  to: text,
  address: text,
  expiresAt: instant,
  at: instant,
  by: SIGNED_BY,
  state: { enum: LINK_STATES },
  triesLeft: count,
  mailing: { oneOf: [object({ at: instant, answer: text }), { type: 'null' }] },
  collectedAt: { type: ['string', 'null'], format: 'date-time' },
  collections: listOf(object({ id: text, at: instant, what: { enum: COLLECTED } })),
};
const OPTIONAL = {
  counselAccount: { ...text, description: 'The account of counsel for which alone it opens.' },
  head: { enum: ['yes', 'no'] },
  revoked: object({ at: instant, by: SIGNED_BY }),
};

/** What links are asked and what they answer, for the API's document. */
export const LINK_SCHEMAS: Record<string, Schema> = {
  PacketLinkDraft: {
    ...schemaOf(PacketLinkDto),
    examples: [{ to: 'Kim Ortega, Red River Marine Insurance', address: 'claims@insurer.example', days: 14 }],
  },
  CounselLinkDraft: {
    ...schemaOf(CounselLinkDto),
    examples: [{ counsel: '5f0c7a3e-2b1d-4c59-9d0e-2f4f6a1c7b10', days: 14 }],
  },
  PacketLink: object(LINK, OPTIONAL),
  PacketLinkSent: object(
    {
      ...LINK,
      passcode: {
        type: ['string', 'null'],
        description: 'Shown once, to be told by another way than the mail; null for a retry.',
      },
    },
    OPTIONAL,
  ),
  PacketLinkList: object({ items: listOf(object(LINK, OPTIONAL)) }),
  LinkStanding: object({
    state: { enum: LINK_STATES },
    opensBy: { enum: ['passcode', 'sign-in'] },
    triesLeft: count,
    until: instant,
  }),
  CollectionPasscode: { ...schemaOf(CollectionDto), examples: [{ passcode: '7km2x-0pq4t' }] },
  Collection: object({
    reference: text,
    sender: text,
    to: text,
    purpose: text,
    madeAt: instant,
    until: instant,
    files: count,
    head: object({ size: count, root: hash }),
  }),
};
