import { randomUUID } from 'node:crypto';
import type { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { Injectable } from '@nestjs/common';
import { NO_CHOICES } from '../../../../shared/hand-over/sender-choices.js';
import type { ClaimDto, FirstNoticeDto } from '../../../../shared/wire/first-notice-requests.dto.js';
import type { PersonActor } from '../../accounts/accounts.api.js';
import { Fleet } from '../../fleet/fleet.api.js';
import { Clock } from '../../platform/clock.js';
import { CreateOnce } from '../../platform/database/create-once.js';
import { refuse } from '../../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../../record/record.api.js';
import { HandOverBook, type KeptNotice } from '../hand-over-book.js';
import { HandOverForms } from '../hand-over-forms.js';
import { type Matter, MatterReader } from '../matter-reader.js';
import { zoneOf } from '../zone-of.js';
import { PacketStore } from '../packet-store.js';
import { planPacket } from '../plan-packet.js';
import { signedBy } from '../signed-by.js';
import { coverageOf } from './covered-craft.js';
import { drawNoticePage } from './draw-notice-page.js';

/** First notices: one page for each policy that holds, and what the insurer answered. */
@Injectable()
export class FirstNoticesService {
  constructor(
    private readonly forms: HandOverForms,
    private readonly store: PacketStore,
    private readonly reader: MatterReader,
    private readonly book: HandOverBook,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly fleet: Fleet,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /** The policies that held for our craft on the day, the notices that were made, and the claims as they stand. */
  async list(incidentId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const record = await this.sections.record(id);
    const { policies, uncovered } = await coverageOf(record, this.fleet);
    const { notices = [], claims = [] } = await this.book.section(id);
    const nameOf = (craft: string): string =>
      record.sections.craft?.craft?.find((one) => one.id === craft)?.name ?? craft;
    return {
      reference: record.incident.reference,
      policies: policies.map(({ policy, craft }) => ({
        id: policy.id,
        number: policy.number,
        insurer: policy.insurer,
        covers: policy.covers,
        firstDay: policy.firstDay,
        lastDay: policy.lastDay,
        noticePhone: policy.noticePhone,
        noticeMail: policy.noticeMail,
        noticeTerms: policy.noticeTerms,
        craft: craft.map(nameOf),
        claim: claims.findLast((claim) => claim.policy === policy.id) ?? null,
      })),
      uncovered: uncovered.map(nameOf),
      notices,
      claims,
    };
  }

  /** Makes the page and keeps it as it is. The section says who made it; telling the insurer is for a person. */
  async make(
    incidentId: string,
    body: FirstNoticeDto,
    key: string,
    actor: PersonActor,
  ): Promise<KeptNotice & { version: number }> {
    const matter = await this.reader.read(incidentId, actor);
    const { policies } = await coverageOf(matter.record, this.fleet);
    const covering =
      policies.find(({ policy }) => policy.id === body.policy) ??
      refuse(422, 'No such policy held on that day for a craft of ours in this incident.', '/policy');
    const number = randomUUID();
    const content = await this.draw(matter, { ...body, covering, number }, actor);
    const { sha256, size } = await this.store.keep(number, { path: PAPER, type: 'application/pdf', content });
    const { policy } = covering;
    const notice = {
      number,
      policy: policy.id,
      policyNumber: policy.number,
      insurer: policy.insurer,
      seenAt: body.seenAt,
      callName: body.callName,
      callNumber: body.callNumber,
      madeAt: matter.asOf,
      by: signedBy(actor),
      sha256,
      size,
    };
    const id = matter.incidentId;
    const made = await this.sections.run(() =>
      this.createOnce.run({ operation: `first notice ${id}`, key, body }, async (own) => {
        const { notices = [] } = await this.book.section(id);
        await this.book.writePart(id, { notices: [...notices, { id: own, ...notice }] }, actor);
      }),
    );
    if (made.again) await this.store.drop(number, [], sha256);
    return { ...(await this.find(id, made.id)), version: 1 };
  }

  async paper(
    incidentId: string,
    noticeId: string,
    actor: PersonActor,
  ): Promise<{ name: string; content: Readable }> {
    const { id } = await this.access.read(incidentId, actor);
    const { number, sha256, size, policyNumber, deleted } = await this.find(id, noticeId);
    if (deleted !== undefined) refuse(409, 'The paper was deleted when its time was over.');
    if ((await this.store.sizeOfMade(number, sha256)) !== size)
      refuse(409, 'The paper is no longer there, or was changed: make a new one.');
    const { reference } = await this.sections.outline(id);
    const name = `first-notice-${reference}-${policyNumber.replaceAll(/[^A-Za-z0-9-]/g, '')}.pdf`;
    return { name, content: this.store.read(number, { source: 'made', sha256 }) };
  }

  /** What the insurer answered: the number of its claim, and who works on it. The latest of a policy stands. */
  async claim(incidentId: string, body: ClaimDto, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const { number, adjuster, phone, mail } = body;
    if (number === undefined && adjuster === undefined)
      refuse(422, 'Enter the number of the claim, or the adjuster, or both.', '/number');
    const { policies } = await coverageOf(await this.sections.record(id), this.fleet);
    if (!policies.some(({ policy }) => policy.id === body.policy))
      refuse(422, 'No such policy held on that day for a craft of ours in this incident.', '/policy');
    const told = Object.entries({ number, adjuster, phone, mail }).filter(([, value]) => value !== undefined);
    const claim = {
      id: randomUUID(),
      policy: body.policy,
      ...Object.fromEntries(told),
      at: this.clock.now(),
      by: signedBy(actor),
    };
    await this.sections.run(async () => {
      const { claims = [] } = await this.book.section(id);
      await this.book.writePart(id, { claims: [...claims, claim] }, actor);
    });
    return this.list(id, actor);
  }

  /** What an insurer gets by its profile, and nothing by choice: nobody has looked at each line of it. */
  private draw(
    matter: Matter,
    notice: Pick<
      Parameters<typeof drawNoticePage>[0],
      'covering' | 'number' | 'seenAt' | 'callName' | 'callNumber'
    >,
    actor: PersonActor,
  ): Promise<Buffer> {
    const insurer = this.forms.profiles.find(({ recipient }) => recipient === 'insurer');
    if (insurer === undefined) throw new Error('There is no profile for an insurer.');
    const { record } = planPacket(matter, this.forms, { profile: insurer, name: insurer.title }, NO_CHOICES);
    const about = { record, timeZone: zoneOf(record), madeAt: matter.asOf, madeBy: actor.personName };
    return buffer(drawNoticePage({ ...notice, ...about }));
  }

  private async find(incidentId: string, noticeId: string): Promise<KeptNotice> {
    const { notices = [] } = await this.book.section(incidentId);
    return notices.find(({ id }) => id === noticeId) ?? refuse(404, 'There is no such first notice.');
  }
}

const PAPER = 'first-notice.pdf';
