import type { KeptCollection, KeptLink } from '../hand-over-book.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';

export const LINK_STATES = ['open', 'expired', 'revoked', 'locked'] as const;
export type LinkState = (typeof LINK_STATES)[number];

/** A link as those see it who send: whether it opens, and everything that happened at it. */
export type LinkView = KeptLink & {
  readonly version: number;
  readonly state: LinkState;
  readonly triesLeft: number;
  /** When the packet was first out whole (RFC 3339); null before. */
  readonly collectedAt: string | null;
  readonly collections: readonly Omit<KeptCollection, 'link' | 'packet'>[];
};

export function viewOfLink(
  link: KeptLink,
  row: PacketLinkRow,
  collections: readonly KeptCollection[],
  now: string,
): LinkView {
  const own = collections.filter((one) => one.link === link.id);
  return {
    ...link,
    version: 1 + own.length,
    state: stateOf(row, now),
    triesLeft: row.triesLeft,
    collectedAt: own.find(({ what }) => what === 'downloaded')?.at ?? null,
    collections: own.map(({ id, at, what }) => ({ id, at, what })),
  };
}

/** What was taken back or locked stays so; otherwise it opens until its end. */
export function stateOf({ closed, expiresAt }: PacketLinkRow, now: string): LinkState {
  if (closed !== null) return closed;
  return expiresAt <= now ? 'expired' : 'open';
}
