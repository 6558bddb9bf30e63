import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Profile } from '../../../shared/hand-over/hand-over-profile.js';
import {
  type Manifest,
  MANIFEST_FORMAT,
  type ManifestFile,
  PACKET_FILES,
} from '../../../shared/hand-over/packet.js';
import {
  choicesOf,
  type PacketDeliveryDto,
  type PacketDraftDto,
} from '../../../shared/wire/hand-over-requests.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { assertNamed, overridesOf } from './assert-choices.js';
import { HandOverBook, type KeptPacket, type Override } from './hand-over-book.js';
import { HandOverForms } from './hand-over-forms.js';
import { MatterReader, type Matter } from './matter-reader.js';
import { packFiles } from './pack-files.js';
import { asJson, packetDocuments } from './packet-documents.js';
import { packetSums } from './packet-readme.js';
import { PacketFileMissingError, PacketStore } from './packet-store.js';
import { paperPictures } from './paper-pictures.js';
import { keptCautions, packetView, previewOf } from './packet-views.js';
import { type PacketPlan, planPacket } from './plan-packet.js';
import { signedBy } from './signed-by.js';
import { TimeStamps, withStamp } from './time-stamp/time-stamps.js';
import { type PacketZip, writePacketZip } from './write-packet-zip.js';

interface Planned {
  readonly matter: Matter;
  readonly profile: Profile;
  readonly plan: PacketPlan;
}

/** Packets: what would leave, what left, and the archive itself. */
@Injectable()
export class PacketsService {
  constructor(
    private readonly forms: HandOverForms,
    private readonly store: PacketStore,
    private readonly reader: MatterReader,
    private readonly book: HandOverBook,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly timeStamps: TimeStamps,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async preview(incidentId: string, draft: PacketDraftDto, actor: PersonActor) {
    const { matter, profile, plan } = await this.plan(incidentId, draft, actor);
    const { reference } = matter.record.incident;
    return {
      reference,
      asOf: matter.asOf,
      recipient: draft.recipient,
      ...previewOf(plan, profile, this.forms.kinds),
    };
  }

  /** Makes a packet and keeps it: from then on it is the same whatever becomes of record, profile and program. */
  async make(incidentId: string, draft: PacketDraftDto, key: string, actor: PersonActor) {
    const planned = await this.plan(incidentId, draft, actor);
    const overrides = overridesOf(planned.plan, choicesOf(draft), actor);
    const { packet, files } = await this.pack(planned, overrides, draft, actor);
    const { incidentId: id } = planned.matter;
    const operation = `packet ${id}`;
    const made = await this.sections.run(() =>
      this.createOnce.run({ operation, key, body: draft }, async (own) => {
        await this.book.write(id, [...(await this.book.read(id)), { id: own, ...packet }], actor);
      }),
    );
    if (made.again) await this.store.drop(packet.number, files, packet.manifest);
    return packetView(await this.find(id, made.id));
  }

  async list(incidentId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    return { items: (await this.book.read(id)).map(packetView) };
  }

  /** The archive, for delivery by hand. That it was taken out is written down before its first byte leaves. */
  async archive(
    incidentId: string,
    packetId: string,
    actor: PersonActor,
  ): Promise<PacketZip & { name: string }> {
    const { id } = await this.access.read(incidentId, actor);
    const packet = await this.find(id, packetId);
    if (packet.privileged && actor.role !== 'counsel') {
      refuse(403, FOR_COUNSEL);
    }
    if (packet.deleted !== undefined) refuse(409, DELETED);
    const entries = await this.entriesOf(packet);
    await this.change(id, packetId, actor, (one) => ({
      ...one,
      looks: [...one.looks, { id: randomUUID(), at: this.clock.now(), by: signedBy(actor) }],
    }));
    const { reference } = await this.sections.outline(id);
    const name = `incident-${reference}-${packet.recipient}-${packet.madeAt.slice(0, 10)}.zip`;
    return { name, ...writePacketZip(entries, packet.madeAt) };
  }

  /** That somebody outside has it: with it they have the head of the log, and later packets are proven against that. */
  async deliver(incidentId: string, packetId: string, { to, way }: PacketDeliveryDto, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    await this.find(id, packetId);
    const delivery = { id: randomUUID(), to, way, at: this.clock.now(), by: signedBy(actor) };
    await this.change(id, packetId, actor, (one) => ({ ...one, deliveries: [...one.deliveries, delivery] }));
    return packetView(await this.find(id, packetId));
  }

  private async plan(incidentId: string, draft: PacketDraftDto, actor: PersonActor): Promise<Planned> {
    const { recipient, name } = draft;
    const profile =
      this.forms.profiles.find((one) => one.recipient === recipient) ??
      refuse(422, 'There is no such recipient.');
    const matter = await this.reader.read(incidentId, actor);
    const sender = choicesOf(draft);
    const plan = planPacket(matter, this.forms, { profile, name }, sender);
    assertNamed(sender, matter, plan, this.forms);
    return { matter, profile, plan };
  }

  private async pack(
    { matter, profile, plan }: Planned,
    overrides: Override[],
    { recipient, name, purpose, read = [] }: PacketDraftDto,
    actor: PersonActor,
  ): Promise<{ packet: Omit<KeptPacket, 'id'>; files: ManifestFile[] }> {
    const number = randomUUID();
    const madeAt = matter.asOf;
    const by = signedBy(actor);
    const about = {
      format: MANIFEST_FORMAT,
      packet: number,
      reference: matter.record.incident.reference,
      recipient: { kind: recipient, name },
      purpose,
      madeAt,
      madeBy: actor.personName,
      head: plan.proof.head,
    } as const;
    const stamping = await this.timeStamps.stamp(about.head);
    const stamped = { ...plan, proof: withStamp(plan.proof, stamping) };
    const tellAuthors = profile.decisions['author']?.does === 'goes';
    const evidence = await packFiles(plan.files, this.store, {
      packet: number,
      madeAt,
      madeBy: by.person,
      tellAuthors,
    });
    const custody = [{ at: madeAt, by: by.person, what: 'made for this packet from the record' }];
    const files: ManifestFile[] = [];
    const pictures = await paperPictures(evidence, this.store, number);
    for (const document of await packetDocuments(
      about,
      stamped,
      profile,
      { evidence, pictures },
      this.forms,
    )) {
      files.push({ ...(await this.store.keep(number, document)), source: 'made', custody });
    }
    files.push(...evidence);
    const sums = { path: PACKET_FILES.sums, type: 'text/plain', content: Buffer.from(packetSums(files)) };
    files.push({ ...(await this.store.keep(number, sums)), source: 'made', custody });
    const manifest: Manifest = { ...about, files };
    const kept = await this.store.keep(number, asJson(PACKET_FILES.manifest, manifest));
    const privileged = plan.record.attachments['privileged'] !== undefined;
    const packet = {
      ...{ number, recipient, name, purpose, madeAt, by, head: about.head, privileged, overrides },
      cautions: keptCautions(plan.cautions, read),
      ...{
        manifest: kept.sha256,
        manifestSize: kept.size,
        files: files.length + 1,
        ...stamping,
        deliveries: [],
        looks: [],
      },
    };
    return { packet, files };
  }

  private async entriesOf(packet: KeptPacket) {
    try {
      return await this.store.entries(packet);
    } catch (error) {
      if (!(error instanceof PacketFileMissingError)) throw error;
      return refuse(409, `${error.message} is no longer there, or was withdrawn since: make a new packet.`);
    }
  }

  private async find(incidentId: string, packetId: string): Promise<KeptPacket> {
    const packets = await this.book.read(incidentId);
    return packets.find(({ id }) => id === packetId) ?? refuse(404, 'There is no such packet.');
  }

  private async change(
    incidentId: string,
    packetId: string,
    actor: PersonActor,
    to: (packet: KeptPacket) => KeptPacket,
  ): Promise<void> {
    await this.sections.run(async () => {
      const packets = await this.book.read(incidentId);
      await this.book.write(
        incidentId,
        packets.map((one) => (one.id === packetId ? to(one) : one)),
        actor,
      );
    });
  }
}

const DELETED = 'Its files were deleted when their time was over: when, and by whom, stands in the list.';
const FOR_COUNSEL =
  'It holds notes that a lawyer asked for: counsel takes it out. To deliver it by hand, make one in which they stay.';
