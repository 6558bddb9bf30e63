import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { PacketLinksRepository } from './database/packet-links.repository.js';
import { HandOverBook } from './hand-over-book.js';
import { PacketStore } from './packet-store.js';

/** Deletes what was made for the packets and first notices of an incident; that it was made and for whom stays. */
@Injectable()
export class PacketDeletion {
  constructor(
    private readonly book: HandOverBook,
    private readonly store: PacketStore,
    private readonly links: PacketLinksRepository,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** Within `ServiceSections.run`; files go after the commit. @returns how many packets and papers went */
  async ofIncident(incidentId: string, actor: Actor): Promise<number> {
    const { packets = [], notices = [] } = await this.book.section(incidentId);
    const deleted = { at: this.clock.now(), by: actor.personName };
    const gonePackets = packets.filter((one) => one.deleted === undefined);
    const goneNotices = notices.filter((one) => one.deleted === undefined);
    if (gonePackets.length + goneNotices.length === 0) return 0;
    await this.links.closeOf(incidentId);
    await this.book.writePart(
      incidentId,
      {
        ...(packets.length > 0 && { packets: packets.map((one) => ({ deleted, ...one })) }),
        ...(notices.length > 0 && { notices: notices.map((one) => ({ deleted, ...one })) }),
      },
      actor,
    );
    this.unitOfWork.afterCommit(async () => {
      for (const { number, manifest } of gonePackets) await this.store.forget(number, manifest);
      for (const { number, sha256 } of goneNotices) await this.store.drop(number, [], sha256);
    });
    return gonePackets.length + goneNotices.length;
  }
}
