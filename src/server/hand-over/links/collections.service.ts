import { timingSafeEqual } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { PERMIT_MS } from '../../../../shared/wire/packet-link-requests.dto.js';
import { hashOf, newToken, Passwords, readCode } from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { refuse } from '../../platform/http/refuse.js';
import { ServiceSections } from '../../record/record.api.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';
import { MOST_TRIES, PacketLinksRepository } from '../database/packet-links.repository.js';
import { LinkLog } from './link-log.js';
import { assertOpen, type Collection, type LeavingArchive, LinkPackets, LOCKED } from './link-packets.js';

/** Collects a packet by its link and passcode, for somebody who has no account. */
@Injectable()
export class Collections {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly log: LinkLog,
    private readonly packets: LinkPackets,
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
    if (open.counselAccount !== null) refuse(403, FOR_COUNSEL);
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
    return { collection: await this.packets.tell(open), permit };
  }

  /** @throws ProblemException 404 where nothing opens; 403 without a permit */
  async archive(token: string, permit: string | undefined): Promise<LeavingArchive> {
    const row = assertOpen(await this.links.byToken(hashOf(token)), this.clock.now());
    if (!fitsPermit(row, permit, this.clock.now())) refuse(403, 'Give the passcode first, then download.');
    return this.packets.archive(row);
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
}

function fitsPermit(
  { permitHash, permitUntil }: PacketLinkRow,
  permit: string | undefined,
  now: string,
): boolean {
  if (permit === undefined || permitHash === null || permitUntil === null || permitUntil <= now) return false;
  return timingSafeEqual(Buffer.from(hashOf(permit)), Buffer.from(permitHash));
}

const FOR_COUNSEL =
  'It holds notes that a lawyer asked for: that lawyer opens it by signing in, and nobody by a passcode.';
