import { createHash, webcrypto } from 'node:crypto';
import { Injectable, Logger } from '@nestjs/common';
import type { PacketProof, Unstamped } from '../../../../shared/hand-over/packet.js';
import { headText } from '../../../../shared/proof/merkle-log.js';
import { verifyTimeStamp } from '../../../../shared/proof/verify-time-stamp.js';
import { askAuthority } from './ask-authority.js';
import { TimeStampSettings } from './time-stamp-settings.js';

/** What is kept with a packet of the time stamp of its head. */
export interface KeptStamp {
  /** In DER, as hex. */
  readonly token: string;
  /** RFC 3339, by the authority. */
  readonly at: string;
  readonly authority: string;
}

/** What came of asking for one; nothing at all where no authority was named. */
export interface Stamping {
  readonly stamp?: KeptStamp;
  readonly unstamped?: Unstamped;
}

/** Has heads of the log stamped. Of the record nothing leaves but the SHA-256 of a head; no failure stops a packet. */
@Injectable()
export class TimeStamps {
  private readonly logger = new Logger('TimeStamps');

  constructor(private readonly settings: TimeStampSettings) {}

  async stamp(head: PacketProof['head']): Promise<Stamping> {
    const { url } = this.settings;
    if (url === null) return {};
    const text = headText(head);
    const answer = await askAuthority(url, createHash('sha256').update(text).digest());
    if ('why' in answer) return this.without(answer.why, answer.words);
    const token = answer.token.toString('hex');
    const found = await verifyTimeStamp(token, text, { crypto: webcrypto as Crypto, roots: [] });
    if (!found.ok) return this.without('unfit', found.problem);
    const { at, authority } = found.stamp;
    return { stamp: { token, at, authority } };
  }

  private without(unstamped: Unstamped, words: string): Stamping {
    this.logger.warn(`There is no time stamp for a packet: ${words}`);
    return { unstamped };
  }
}

/** The proof with what came of it. */
export function withStamp(proof: PacketProof, { stamp, unstamped }: Stamping): PacketProof {
  if (unstamped !== undefined) return { ...proof, unstamped };
  if (stamp === undefined) return proof;
  const own = { head: proof.head, token: stamp.token, consistency: [] };
  return { ...proof, stamped: [...(proof.stamped ?? []), own] };
}
