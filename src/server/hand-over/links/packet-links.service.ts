import { Injectable } from '@nestjs/common';
import { LINK_DAYS, type PacketLinkDto } from '../../../../shared/wire/packet-link-requests.dto.js';
import {
  hashOf,
  newCode,
  newToken,
  Passwords,
  type PersonActor,
  readCode,
} from '../../accounts/accounts.api.js';
import { Clock } from '../../platform/clock.js';
import { CreateOnce } from '../../platform/database/create-once.js';
import { refuse } from '../../platform/http/refuse.js';
import { isMailAddress } from '../../platform/mail-config.js';
import { MailMessage } from '../../platform/mail/mail-message.js';
import { MailQueue } from '../../platform/mail/mail-queue.js';
import { IncidentAccess, RecordSettings, ServiceSections } from '../../record/record.api.js';
import { HandOverBook, type KeptPacket } from '../hand-over-book.js';
import { signedBy } from '../signed-by.js';
import { LinkSettings } from './link-settings.js';
import { type LinkView, viewOfLink } from './link-views.js';
import { MOST_TRIES, PacketLinksRepository } from '../database/packet-links.repository.js';

const DAY_MS = 86_400_000;
const PASSCODE_LETTERS = 10;

/** Links by which somebody without an account collects a packet: made, listed and taken back by those who send. */
@Injectable()
export class PacketLinks {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly book: HandOverBook,
    private readonly settings: LinkSettings,
    private readonly record: RecordSettings,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly passwords: Passwords,
    private readonly queue: MailQueue,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /** The passcode is shown once, to be told by another way than the mail; a retry is not shown it again. */
  async make(
    at: { incident: string; packet: string },
    draft: PacketLinkDto,
    key: string,
    actor: PersonActor,
  ): Promise<LinkView & { passcode: string | null }> {
    const { id: incidentId } = await this.access.read(at.incident, actor);
    const packet = await this.packetOf(incidentId, at.packet);
    if (packet.privileged) refuse(403, FOR_COUNSEL);
    const { address } = this.settings;
    if (address === null) refuse(409, NO_ADDRESS);
    if (!isMailAddress(draft.address)) refuse(422, 'Must be one plain mail address.', '/address');
    const passcode = newCode(PASSCODE_LETTERS, PASSCODE_LETTERS / 2);
    const passcodeHash = await this.passwords.hash(readCode(passcode));
    const token = newToken();
    const now = this.clock.now();
    const expiresAt = new Date(Date.parse(now) + (draft.days ?? LINK_DAYS.usual) * DAY_MS).toISOString();
    const operation = `packet-link ${packet.id}`;
    const made = await this.sections.run(() =>
      this.createOnce.run({ operation, key, body: draft }, async (id) => {
        await this.links.add({
          id,
          incidentId,
          packetId: packet.id,
          tokenHash: hashOf(token),
          passcodeHash,
          triesLeft: MOST_TRIES,
          expiresAt,
          closed: null,
          permitHash: null,
          permitUntil: null,
        });
        const { links = [] } = await this.book.section(incidentId);
        const link = {
          id,
          packet: packet.id,
          to: draft.to,
          address: draft.address,
          expiresAt,
          at: now,
          by: signedBy(actor),
        };
        await this.book.writePart(incidentId, { links: [...links, link] }, actor);
        const { reference } = await this.sections.outline(incidentId);
        const message = MailMessage.packet({
          reference,
          address: `${address}/collect/${token}`,
          expiresAt,
          head: draft.head === 'no' ? null : { ...packet.head, at: packet.madeAt },
          timeZone: this.record.timeZone,
        });
        await this.queue.enqueue({ to: draft.address, message, incidentId, key: `packet-link/${id}` });
      }),
    );
    return { ...(await this.view(incidentId, made.id)), passcode: made.again ? null : passcode };
  }

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

  private async view(incidentId: string, id: string): Promise<LinkView> {
    const { links = [], collections = [] } = await this.book.section(incidentId);
    const link = links.find((one) => one.id === id);
    const row = await this.links.find(id);
    if (link === undefined || row === null) throw new Error(`There is no link ${id}.`);
    return viewOfLink(link, row, collections, this.clock.now());
  }

  private async packetOf(incidentId: string, id: string): Promise<KeptPacket> {
    const packets = await this.book.read(incidentId);
    return packets.find((one) => one.id === id) ?? refuse(404, 'There is no such packet.');
  }
}

const FOR_COUNSEL =
  'It holds notes that a lawyer asked for, which counsel alone takes out: for a link, make a packet in which they stay.';
const NO_ADDRESS =
  'The service does not know the address at which strangers reach it: whoever runs it sets PUBLIC_ADDRESS.';
