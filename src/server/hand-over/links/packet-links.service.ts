import { Injectable } from '@nestjs/common';
import type { PersonActor } from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { refuse } from '../../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../../record/record.api.js';
import { PacketLinksRepository } from '../database/packet-links.repository.js';
import { HandOverBook, type KeptPacket } from '../hand-over-book.js';
import { signedBy } from '../signed-by.js';
import { type LinkView, viewOfLink } from './link-views.js';

/** Links that were sent: followed, and taken back. */
@Injectable()
export class PacketLinks {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly book: HandOverBook,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly clock: Clock,
  ) {}

  async list(at: { incident: string; packet: string }, actor: PersonActor): Promise<{ items: LinkView[] }> {
    const { id: incidentId } = await this.access.read(at.incident, actor);
    await this.packetOf(incidentId, at.packet);
    const { links = [] } = await this.book.section(incidentId);
    const items: LinkView[] = [];
    for (const { id, packet } of links) if (packet === at.packet) items.push(await this.view(incidentId, id));
    return { items };
  }

  /** From then on it opens nothing; what was downloaded before is out. Again, it changes nothing. */
  async revoke(
    at: { incident: string; packet: string; link: string },
    actor: PersonActor,
  ): Promise<LinkView> {
    const { id: incidentId } = await this.access.read(at.incident, actor);
    await this.sections.run(async () => {
      const { links = [] } = await this.book.section(incidentId);
      const link = links.find(({ id, packet }) => id === at.link && packet === at.packet);
      if (link === undefined) refuse(404, 'There is no such link.');
      if (link.revoked !== undefined) return;
      await this.links.change({ id: link.id, closed: 'revoked', permitHash: null, permitUntil: null });
      const revoked = { at: this.clock.now(), by: signedBy(actor) };
      const changed = links.map((one) => (one.id === link.id ? { ...one, revoked } : one));
      await this.book.writePart(incidentId, { links: changed }, actor);
    });
    return this.view(incidentId, at.link);
  }

  async view(incidentId: string, id: string): Promise<LinkView> {
    const { links = [], collections = [], mailings = [] } = await this.book.section(incidentId);
    const link = links.find((one) => one.id === id);
    const row = await this.links.find(id);
    if (link === undefined || row === null) throw new Error(`There is no link ${id}.`);
    return viewOfLink(link, row, { collections, mailings }, this.clock.now());
  }

  /** @throws ProblemException 404 */
  async packetOf(incidentId: string, id: string): Promise<KeptPacket> {
    const packets = await this.book.read(incidentId);
    return packets.find((one) => one.id === id) ?? refuse(404, 'There is no such packet.');
  }
}
