import { Injectable } from '@nestjs/common';
import { hashOf, type PersonActor } from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { refuse } from '../../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../../record/record.api.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';
import { PacketLinksRepository } from '../database/packet-links.repository.js';
import { LinkLog } from './link-log.js';
import { assertOpen, type Collection, type LeavingArchive, LinkPackets } from './link-packets.js';

/**
 * Collects a packet with notes that a lawyer asked for. It opens for the one account of counsel that it was sent to, as
 * long as that is assigned the incident: whoever sends it sees the address of the mail, and would see a passcode.
 */
@Injectable()
export class CounselCollections {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly log: LinkLog,
    private readonly packets: LinkPackets,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 404 where nothing opens; 403 for anybody but that lawyer */
  async look(token: string, actor: PersonActor): Promise<Collection> {
    const row = await this.openFor(token, actor);
    await this.sections.run(() => this.log.note(row, 'looked'));
    return this.packets.tell(row);
  }

  /** @throws ProblemException as above */
  async archive(token: string, actor: PersonActor): Promise<LeavingArchive> {
    return this.packets.archive(await this.openFor(token, actor));
  }

  private async openFor(token: string, actor: PersonActor): Promise<PacketLinkRow> {
    const row = assertOpen(await this.links.byToken(hashOf(token)), this.clock.now());
    if (row.counselAccount === null) refuse(403, 'This link opens with the passcode that you were told.');
    if (row.counselAccount !== actor.accountId) refuse(403, ANOTHER);
    await this.access.read(row.incidentId, actor);
    return row;
  }
}

const ANOTHER = 'It was sent to another lawyer, and opens for them alone.';
