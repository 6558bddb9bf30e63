import { Injectable } from '@nestjs/common';
import { hashOf } from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { refuse } from '../../platform/http/refuse.js';
import { ServiceSections } from '../../record/record.api.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';
import { PacketLinksRepository } from '../database/packet-links.repository.js';
import { HandOverBook, type KeptPacket } from '../hand-over-book.js';
import { PacketFileMissingError, PacketStore } from '../packet-store.js';
import { type PacketZip, writePacketZip } from '../write-packet-zip.js';
import { LinkLog } from './link-log.js';
import { type LinkState, stateOf } from './link-views.js';

/** How a link stands, for whoever has it: so that nobody is asked for a passcode which opens nothing. */
export interface LinkStanding {
  readonly state: LinkState;
  readonly opensBy: 'passcode' | 'sign-in';
  readonly triesLeft: number;
  /** RFC 3339. */
  readonly until: string;
}

/** What a recipient is told: who sent what, why, and until when. Nothing of the record itself. */
export interface Collection {
  readonly reference: string;
  readonly sender: string;
  readonly to: string;
  readonly purpose: string;
  readonly madeAt: string;
  readonly until: string;
  readonly files: number;
  readonly head: KeptPacket['head'];
}

/** An archive that leaves, and what to call once its last byte did. */
export interface LeavingArchive extends PacketZip {
  readonly name: string;
  readonly received: () => Promise<void>;
}

/** What a link leads to, whichever way it is opened. */
@Injectable()
export class LinkPackets {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly log: LinkLog,
    private readonly book: HandOverBook,
    private readonly store: PacketStore,
    private readonly sections: ServiceSections,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 404 for an address that never was one */
  async standing(token: string): Promise<LinkStanding> {
    const row = (await this.links.byToken(hashOf(token))) ?? refuse(404, NOTHING);
    const { counselAccount, triesLeft, expiresAt: until } = row;
    const opensBy = counselAccount === null ? 'passcode' : 'sign-in';
    return { state: stateOf(row, this.clock.now()), opensBy, triesLeft, until };
  }

  async tell(row: PacketLinkRow): Promise<Collection> {
    const { to, by } = await this.log.linkOf(row);
    const { purpose, madeAt, files, head } = await this.packetOf(row);
    const { reference } = await this.sections.outline(row.incidentId);
    return { reference, sender: by.person, to, purpose, madeAt, until: row.expiresAt, files, head };
  }

  /** The archive; that a download begins is written down before its first byte leaves. */
  async archive(row: PacketLinkRow): Promise<LeavingArchive> {
    const packet = await this.packetOf(row);
    const entries = await this.entriesOf(packet);
    await this.sections.run(() => this.log.note(row, 'download-began'));
    const { reference } = await this.sections.outline(row.incidentId);
    return {
      name: `incident-${reference}-${packet.recipient}-${packet.madeAt.slice(0, 10)}.zip`,
      ...writePacketZip(entries, packet.madeAt),
      received: () => this.sections.run(() => this.log.noteReceived(row)),
    };
  }

  private async packetOf({ incidentId, packetId }: PacketLinkRow): Promise<KeptPacket> {
    const packet = (await this.book.read(incidentId)).find(({ id }) => id === packetId);
    if (packet === undefined) throw new Error(`There is no packet ${packetId}.`);
    return packet;
  }

  private async entriesOf(packet: KeptPacket) {
    try {
      return await this.store.entries(packet);
    } catch (error) {
      if (!(error instanceof PacketFileMissingError)) throw error;
      return refuse(409, 'A file of it is no longer there: ask whoever sent it for a new packet.');
    }
  }
}

/** @throws ProblemException 404 where it opens nothing, 403 where it is locked */
export function assertOpen(row: PacketLinkRow | null, now: string): PacketLinkRow {
  if (row === null) return refuse(404, NOTHING);
  const state = stateOf(row, now);
  if (state === 'locked') return refuse(403, LOCKED);
  if (state !== 'open') return refuse(404, CLOSED[state]);
  return row;
}

const NOTHING =
  'There is nothing to collect at this address: it may have been cut off. Open the link of the mail whole.';
const CLOSED = {
  expired: 'The link has expired: ask whoever sent it for a new one.',
  revoked: 'The link was taken back: ask whoever sent it.',
} as const;
export const LOCKED =
  'The link is locked after too many wrong passcodes, and whoever sent it can see that: ask them for a new one.';
