import { timingSafeEqual } from 'node:crypto';
import type { Readable } from 'node:stream';
import { Injectable } from '@nestjs/common';
import { hashOf, newToken, Passwords, readCode } from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { refuse } from '../../platform/http/refuse.js';
import { ServiceSections } from '../../record/record.api.js';
import { HandOverBook, type KeptPacket } from '../hand-over-book.js';
import { PacketFileMissingError, PacketStore } from '../packet-store.js';
import { writePacketZip } from '../write-packet-zip.js';
import { LinkLog } from './link-log.js';
import { stateOf } from './link-views.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';
import { MOST_TRIES, PacketLinksRepository } from '../database/packet-links.repository.js';

/** How long whoever gave the passcode may begin downloads without giving it again. */
export const PERMIT_MS = 30 * 60_000;

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

/** Collects a packet by its link, for somebody who has no account. */
@Injectable()
export class Collections {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly log: LinkLog,
    private readonly book: HandOverBook,
    private readonly store: PacketStore,
    private readonly sections: ServiceSections,
    private readonly passwords: Passwords,
    private readonly clock: Clock,
  ) {}

  /**
   * Looks, with the passcode; gives what it is and a permit for the download.
   * @throws ProblemException 404 where nothing opens; 403 for a wrong passcode, saying how many tries are left
   */
  async look(token: string, passcode: string): Promise<{ collection: Collection; permit: string }> {
    const row = await this.links.byToken(hashOf(token));
    // The same work for a link that never was, so that the time tells nothing.
    if (row === null) await this.passwords.fits(passcode, null);
    const open = assertOpen(row, this.clock.now());
    if (!(await this.sections.run(() => this.links.charge(open.id)))) refuse(403, LOCKED);
    if (!(await this.passwords.fits(readCode(passcode), open.passcodeHash))) return this.refuseTry(open);
    const permit = newToken();
    const permitUntil = new Date(Date.parse(this.clock.now()) + PERMIT_MS).toISOString();
    await this.sections.run(async () => {
      // It may have been taken back or locked while the passcode was looked at.
      assertOpen(await this.links.find(open.id), this.clock.now());
      await this.links.change({
        id: open.id,
        triesLeft: MOST_TRIES,
        permitHash: hashOf(permit),
        permitUntil,
      });
      await this.log.note(open, 'looked');
    });
    return { collection: await this.tell(open), permit };
  }

  /** The archive; that a download begins is written down before its first byte leaves. */
  async archive(
    token: string,
    permit: string | undefined,
  ): Promise<{ name: string; bytes: Readable; received: () => Promise<void> }> {
    const row = assertOpen(await this.links.byToken(hashOf(token)), this.clock.now());
    if (!fitsPermit(row, permit, this.clock.now())) refuse(403, 'Give the passcode first, then download.');
    const packet = await this.packetOf(row);
    const entries = await this.entriesOf(packet);
    await this.sections.run(() => this.log.note(row, 'download-began'));
    const { reference } = await this.sections.outline(row.incidentId);
    return {
      name: `incident-${reference}-${packet.recipient}-${packet.madeAt.slice(0, 10)}.zip`,
      bytes: writePacketZip(entries, packet.madeAt),
      received: () => this.sections.run(() => this.log.noteReceived(row)),
    };
  }

  private async refuseTry(link: PacketLinkRow): Promise<never> {
    const left = await this.sections.run(async () => {
      const now = await this.links.find(link.id);
      if (now === null || now.triesLeft > 0 || now.closed !== null) return now?.triesLeft ?? 0;
      await this.links.change({ id: link.id, closed: 'locked', permitHash: null, permitUntil: null });
      await this.log.note(link, 'locked');
      await this.log.tellSender(link, 'packet-link-locked');
      return 0;
    });
    if (left === 0) return refuse(403, LOCKED);
    return refuse(
      403,
      `That is not the passcode: ${left} ${left === 1 ? 'try is' : 'tries are'} left before the link locks.`,
      '/passcode',
    );
  }

  private async tell(row: PacketLinkRow): Promise<Collection> {
    const { to, by } = await this.log.linkOf(row);
    const { purpose, madeAt, files, head } = await this.packetOf(row);
    const { reference } = await this.sections.outline(row.incidentId);
    return { reference, sender: by.person, to, purpose, madeAt, until: row.expiresAt, files, head };
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

function assertOpen(row: PacketLinkRow | null, now: string): PacketLinkRow {
  if (row === null) return refuse(404, NOTHING);
  const state = stateOf(row, now);
  if (state === 'locked') return refuse(403, LOCKED);
  if (state !== 'open') return refuse(404, CLOSED[state]);
  return row;
}

function fitsPermit(
  { permitHash, permitUntil }: PacketLinkRow,
  permit: string | undefined,
  now: string,
): boolean {
  if (permit === undefined || permitHash === null || permitUntil === null || permitUntil <= now) return false;
  return timingSafeEqual(Buffer.from(hashOf(permit)), Buffer.from(permitHash));
}

const NOTHING =
  'There is nothing to collect at this address: it may have been cut off. Open the link of the mail whole.';
const CLOSED = {
  expired: 'The link has expired: ask whoever sent it for a new one.',
  revoked: 'The link was taken back: ask whoever sent it.',
} as const;
const LOCKED =
  'The link is locked after too many wrong passcodes, and whoever sent it can see that: ask them for a new one.';
