import { Injectable } from '@nestjs/common';
import { assignedAccounts, type AssignmentsSection } from '../../../../shared/record/assignments-section.js';
import {
  type CounselLinkDto,
  LINK_DAYS,
  type PacketLinkDto,
} from '../../../../shared/wire/packet-link-requests.dto.js';
import {
  AccountFinder,
  hashOf,
  newCode,
  newToken,
  Passwords,
  type PersonActor,
  readCode,
} from '../../accounts/accounts.api.js';
import { NoticeAddresses } from '../../follow-up/follow-up.api.js';
import { Clock } from '../../platform/clock.js';
import { CreateOnce } from '../../platform/database/create-once.js';
import { refuse } from '../../platform/http/refuse.js';
import { isMailAddress } from '../../platform/mail-config.js';
import { MailMessage } from '../../platform/mail/mail-message.js';
import { MailQueue } from '../../platform/mail/mail-queue.js';
import { IncidentAccess, RecordSettings, ServiceSections } from '../../record/record.api.js';
import { MOST_TRIES, PacketLinksRepository } from '../database/packet-links.repository.js';
import { HandOverBook, type KeptLink, type KeptPacket } from '../hand-over-book.js';
import { signedBy } from '../signed-by.js';
import { LinkSettings } from './link-settings.js';
import type { LinkView } from './link-views.js';
import { mailKeyOf } from './mailed-heads.js';
import { PacketLinks } from './packet-links.service.js';

const DAY_MS = 86_400_000;
const PASSCODE_LETTERS = 10;

type Letter = PacketLinkDto & { readonly counselAccount?: string };

/** Mails links to packets: to whoever is told the passcode, and, with notes in it, to the lawyer who signs in. */
@Injectable()
export class SendLinks {
  constructor(
    private readonly links: PacketLinksRepository,
    private readonly made: PacketLinks,
    private readonly book: HandOverBook,
    private readonly settings: LinkSettings,
    private readonly record: RecordSettings,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly addresses: NoticeAddresses,
    private readonly passwords: Passwords,
    private readonly queue: MailQueue,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /** The passcode is shown once, to be told by another way than the mail; a retry is not shown it again. */
  async toAnybody(
    at: { incident: string; packet: string },
    draft: PacketLinkDto,
    key: string,
    actor: PersonActor,
  ): Promise<LinkView & { passcode: string | null }> {
    const { id: incidentId } = await this.access.read(at.incident, actor);
    const packet = await this.made.packetOf(incidentId, at.packet);
    if (packet.privileged) refuse(403, FOR_COUNSEL);
    const passcode = newCode(PASSCODE_LETTERS, PASSCODE_LETTERS / 2);
    const sent = await this.send({ incidentId, packet }, draft, { passcode, key }, actor);
    return { ...(await this.made.view(incidentId, sent.id)), passcode: sent.again ? null : passcode };
  }

  /** Opens for that lawyer alone, signed in: there is no passcode that whoever sends it could see. */
  async toCounsel(
    at: { incident: string; packet: string },
    { counsel, ...draft }: CounselLinkDto,
    key: string,
    actor: PersonActor,
  ): Promise<LinkView> {
    const { id: incidentId } = await this.access.read(at.incident, actor);
    const packet = await this.made.packetOf(incidentId, at.packet);
    if (!packet.privileged) refuse(409, 'It holds no notes for counsel: send a link with a passcode.');
    const assigned = await this.sections.read<AssignmentsSection>(incidentId, 'assignments');
    const lawyer = assignedAccounts(assigned).includes(counsel) ? await this.accounts.find(counsel) : null;
    if (lawyer?.role !== 'counsel') return refuse(422, NOT_ASSIGNED, '/counsel');
    const address = draft.address ?? (await this.addresses.of(lawyer.id)).mail;
    if (address === null) return refuse(422, NO_MAIL, '/address');
    const letter = { ...draft, to: lawyer.name, address, counselAccount: lawyer.id };
    const sent = await this.send({ incidentId, packet }, letter, { passcode: newToken(), key }, actor);
    return this.made.view(incidentId, sent.id);
  }

  private async send(
    { incidentId, packet }: { incidentId: string; packet: KeptPacket },
    { to, address, days = LINK_DAYS.usual, head = 'yes', language = 'en', counselAccount }: Letter,
    { passcode, key }: { passcode: string; key: string },
    actor: PersonActor,
  ): Promise<{ id: string; again: boolean }> {
    if (this.settings.address === null) refuse(409, NO_ADDRESS);
    if (!isMailAddress(address)) refuse(422, 'Must be one plain mail address.', '/address');
    const passcodeHash = await this.passwords.hash(readCode(passcode));
    const token = newToken();
    const at = this.clock.now();
    const expiresAt = new Date(Date.parse(at) + days * DAY_MS).toISOString();
    const body = { to, address, days, head, language, counselAccount: counselAccount ?? null };
    return this.sections.run(() =>
      this.createOnce.run({ operation: `packet-link ${packet.id}`, key, body }, async (id) => {
        await this.links.add({
          ...{ id, incidentId, packetId: packet.id, tokenHash: hashOf(token), passcodeHash },
          ...{ triesLeft: MOST_TRIES, expiresAt, closed: null, permitHash: null, permitUntil: null },
          counselAccount: counselAccount ?? null,
        });
        const { links = [] } = await this.book.section(incidentId);
        const by = signedBy(actor);
        const link: KeptLink = { id, packet: packet.id, to, address, expiresAt, at, by, head };
        const kept = counselAccount === undefined ? link : { ...link, counselAccount };
        await this.book.writePart(incidentId, { links: [...links, kept] }, actor);
        const { reference } = await this.sections.outline(incidentId);
        const message = MailMessage.packet({
          ...{ reference, expiresAt, language, address: `${this.settings.address}/collect/${token}` },
          opensBy: counselAccount === undefined ? 'passcode' : 'sign-in',
          head: head === 'no' ? null : { ...packet.head, at: packet.madeAt },
          timeZone: this.record.timeZone,
        });
        await this.queue.enqueue({ to: address, message, incidentId, key: mailKeyOf(id) });
      }),
    );
  }
}

const FOR_COUNSEL =
  'It holds notes that a lawyer asked for: send it to an assigned lawyer, who signs in, or make a packet in which they stay.';
const NOT_ASSIGNED = 'Must be an open account of counsel that is assigned this incident.';
const NO_MAIL = 'They have not said in the desk where mail finds them: give an address.';
const NO_ADDRESS =
  'The service does not know the address at which strangers reach it: whoever runs it sets PUBLIC_ADDRESS.';
