import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { ServiceActor } from '../../accounts/accounts.api.js';
import { NoticeAddresses } from '../../follow-up/follow-up.api.js';
import { Clock } from '../../platform/clock.js';
import { MailMessage, type PacketNotice } from '../../platform/mail/mail-message.js';
import { MailQueue } from '../../platform/mail/mail-queue.js';
import { RecordSettings, ServiceSections } from '../../record/record.api.js';
import { HandOverBook, type KeptCollection, type KeptLink } from '../hand-over-book.js';
import type { PacketLinkRow } from '../database/packet-link.row.js';

/** Writes into the record's own log what happens at a link, and tells whoever sent it what they should know. */
@Injectable()
export class LinkLog {
  constructor(
    private readonly book: HandOverBook,
    private readonly sections: ServiceSections,
    private readonly addresses: NoticeAddresses,
    private readonly queue: MailQueue,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  /** The link as it was written down when it was made. */
  async linkOf({ incidentId, id }: PacketLinkRow): Promise<KeptLink> {
    const { links = [] } = await this.book.section(incidentId);
    const link = links.find((one) => one.id === id);
    if (link === undefined) throw new Error(`No link ${id} stands in the log.`);
    return link;
  }

  /** Writes down a look, a download or a lock. Within `ServiceSections.run`. */
  async note(row: PacketLinkRow, what: KeptCollection['what']): Promise<void> {
    const link = await this.linkOf(row);
    const { collections = [] } = await this.book.section(row.incidentId);
    const one: KeptCollection = {
      id: randomUUID(),
      link: row.id,
      packet: row.packetId,
      at: this.clock.now(),
      what,
    };
    await this.book.writePart(row.incidentId, { collections: [...collections, one] }, actorOf(link));
  }

  /**
   * The packet is out whole: whoever has it also has the head of the log, which later packets are proven against. The
   * sender is told the first time. Within `ServiceSections.run`.
   */
  async noteReceived(row: PacketLinkRow): Promise<void> {
    const link = await this.linkOf(row);
    await this.note(row, 'downloaded');
    const { packets = [], collections = [] } = await this.book.section(row.incidentId);
    if (collections.filter((one) => one.link === row.id && one.what === 'downloaded').length > 1) return;
    const { to, by } = link;
    const delivery = {
      id: randomUUID(),
      to,
      way: row.counselAccount === null ? BY_PASSCODE : BY_SIGN_IN,
      at: this.clock.now(),
      by,
    };
    const received = packets.map((packet) =>
      packet.id === row.packetId ? { ...packet, deliveries: [...packet.deliveries, delivery] } : packet,
    );
    await this.book.write(row.incidentId, received, actorOf(link));
    await this.tellSender(row, 'packet-collected');
  }

  /** By mail, where they have said where; it stands in the list of links in any case. Within a unit of work. */
  async tellSender(row: PacketLinkRow, notice: PacketNotice): Promise<void> {
    const { by } = await this.linkOf(row);
    const { mail } = await this.addresses.of(by.account);
    if (mail === null) return;
    const { reference } = await this.sections.outline(row.incidentId);
    const about = { reference, at: this.clock.now(), timeZone: this.settings.timeZone };
    await this.queue.enqueue({
      to: mail,
      message: MailMessage.ofPacket(notice, about),
      incidentId: row.incidentId,
      key: `${notice}/${row.id}`,
    });
  }
}

const BY_PASSCODE = 'collected by link, with the passcode';
const BY_SIGN_IN = 'collected by link, signed in';

const actorOf = ({ to }: KeptLink): ServiceActor => ({
  kind: 'service',
  personName: `the service, for ${to} at a link`,
});
