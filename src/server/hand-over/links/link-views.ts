import type { KeptCollection, KeptLink, KeptMailing } from '../hand-over-book.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';

export const LINK_STATES = ['open', 'expired', 'revoked', 'locked'] as const;
export type LinkState = (typeof LINK_STATES)[number];

/** A link as those see it who send: whether it opens, and everything that happened at it. */
export type LinkView = KeptLink & {
  readonly version: number;
  readonly state: LinkState;
  readonly triesLeft: number;
  /** When the sender's mail server took a mail with the head, and what it answered; null where it did not. */
  readonly mailing: Pick<KeptMailing, 'at' | 'answer'> | null;
  /** When the packet was first out whole (RFC 3339); null before. */
  readonly collectedAt: string | null;
  readonly collections: readonly Omit<KeptCollection, 'link' | 'packet'>[];
};

/** What happened at all links of an incident. */
interface Happened {
  readonly collections: readonly KeptCollection[];
  readonly mailings: readonly KeptMailing[];
}

export function viewOfLink(
  link: KeptLink,
  row: PacketLinkRow,
  { collections, mailings }: Happened,
  now: string,
): LinkView {
  const mailing = mailings.find((one) => one.link === link.id);
  const own = collections.filter((one) => one.link === link.id);
  return {
    ...link,
    version: 1 + own.length,
    state: stateOf(row, now),
    triesLeft: row.triesLeft,
    mailing: mailing === undefined ? null : { at: mailing.at, answer: mailing.answer },
    collectedAt: own.find(({ what }) => what === 'downloaded')?.at ?? null,
    collections: own.map(({ id, at, what }) => ({ id, at, what })),
  };
}

/** What was taken back or locked stays so; otherwise it opens until its end. */
export function stateOf({ closed, expiresAt }: PacketLinkRow, now: string): LinkState {
  if (closed !== null) return closed;
  return expiresAt <= now ? 'expired' : 'open';
}
