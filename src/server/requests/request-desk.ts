import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import {
  callsForHold,
  type ConcernedIncident,
  concerned,
  type LegalRequest,
  type RequestDetails,
  type RequestStep,
} from '../../../shared/record/legal-request.js';
import type { EvidenceSection } from '../../../shared/record/evidence-section.js';
import {
  AddIncidentDto,
  CorrectRequestDto,
  LogRequestDto,
  readDetails,
  RemoveIncidentDto,
  RequestStatusDto,
} from '../../../shared/wire/legal-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { AccountFinder, type PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { Holds, IncidentAccess, ServiceSections } from '../record/record.api.js';
import { RequestBook, type RequestChange } from './request-book.js';
import { RequestsService } from './requests.service.js';
import { writtenBy } from './written-by.js';

/** A request of which version was read. */
export interface RequestAddress {
  readonly id: string;
  readonly ifMatch: string | undefined;
}

type LinkAsked = Pick<AddIncidentDto, 'id' | 'hold' | 'reason'>;

/** Where managers log a request, correct it, say which incidents it concerns and how it stands. */
@Injectable()
export class RequestDesk {
  constructor(
    private readonly book: RequestBook,
    private readonly requests: RequestsService,
    private readonly sections: ServiceSections,
    private readonly holds: Holds,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async log(body: unknown, key: string | undefined, actor: PersonActor) {
    const { incidents = [], ...details } = readInput(readDetails(LogRequestDto, body));
    const { id } = await this.sections.run(() =>
      this.createOnce.run({ operation: 'request', key: readIdempotencyKey(key), body }, async (made) => {
        const links: ConcernedIncident[] = [];
        for (const [place, asked] of incidents.entries()) {
          links.push(await this.linkOf(asked, details, made, `/incidents/${place}`, actor));
        }
        const request: LegalRequest = {
          id: made,
          number: await this.book.nextNumber(),
          loggedAt: this.clock.now(),
          by: writtenBy(actor),
          details,
          incidents: links,
          steps: [],
          productions: [],
          objections: [],
        };
        await this.assertSound(request);
        await this.book.write(request, 1, { what: 'logged' }, actor);
      }),
    );
    return this.requests.read(id, actor);
  }

  /** Puts other details in the place of those that stand; the ones before stay in the history. */
  correct(at: RequestAddress, body: unknown, actor: PersonActor) {
    const { reason, ...details } = readInput(readDetails(CorrectRequestDto, body));
    return this.change(at, details, { what: 'corrected', reason }, actor, (request) => ({
      ...request,
      details,
    }));
  }

  /** Says that it concerns an incident, or begins a hold in one that it is known to concern. */
  addIncident(at: RequestAddress, body: unknown, actor: PersonActor) {
    const asked = readInput(readRecordInput(AddIncidentDto, body));
    return this.change(at, asked, { what: 'incident-added' }, actor, async (request) => {
      const before = concerned(request).find(({ incident }) => incident === asked.id);
      if (before?.hold !== undefined) return request;
      const link = await this.linkOf(asked, request.details, request.id, '', actor);
      const others = request.incidents.filter((one) => one !== before);
      return { ...request, incidents: [...others, { ...link, since: before?.since ?? link.since }] };
    });
  }

  /** That it was found not to concern an incident. A hold that it began stands until counsel releases it. */
  removeIncident(at: RequestAddress, incident: string, body: unknown, actor: PersonActor) {
    const { reason } = readInput(readRecordInput(RemoveIncidentDto, body));
    return this.change(at, { reason }, { what: 'incident-removed', reason }, actor, (request) => {
      const link = concerned(request).find((one) => one.incident === incident);
      if (link === undefined) return refuse(404, 'It is not said to concern this incident.');
      const ended = { at: this.clock.now(), by: writtenBy(actor), reason };
      const incidents = request.incidents.map((one) => (one === link ? { ...one, ended } : one));
      return { ...request, incidents };
    });
  }

  /** How it stands. That it is closed ends no hold: that is a decision of its own. */
  setStatus(at: RequestAddress, body: unknown, actor: PersonActor) {
    const { status, at: when, reason } = readInput(readRecordInput(RequestStatusDto, body));
    return this.change(at, { status }, { what: 'status', reason }, actor, (request) => {
      const recordedAt = this.clock.now();
      if (when !== undefined && Date.parse(when) > Date.parse(recordedAt)) {
        refuse(422, 'It is recorded once it has happened.', '/at');
      }
      const step: RequestStep = {
        id: randomUUID(),
        status,
        at: when ?? recordedAt,
        recordedAt,
        by: writtenBy(actor),
        reason,
      };
      return { ...request, steps: [...request.steps, step] };
    });
  }

  private async change(
    { id, ifMatch }: RequestAddress,
    yours: object,
    change: RequestChange,
    actor: PersonActor,
    to: (request: LegalRequest) => LegalRequest | Promise<LegalRequest>,
  ) {
    await this.sections.run(async () => {
      const before = await this.requests.find(id, actor);
      assertFresh(ifMatch, { ...before.request.details, version: before.version }, yours);
      const after = await to(before.request);
      if (after === before.request) return;
      await this.assertSound(after);
      await this.book.write(after, before.version + 1, change, actor);
    });
    return this.requests.read(id, actor);
  }

  private async linkOf(
    { id, hold, reason }: LinkAsked,
    { kind }: RequestDetails,
    request: string,
    pointer: string,
    actor: PersonActor,
  ): Promise<ConcernedIncident> {
    const incident = await this.known(id, pointer, actor);
    const link = { incident, since: this.clock.now(), by: writtenBy(actor) };
    if (hold === false && callsForHold(kind)) {
      if (reason === undefined) refuse(422, 'Say why nothing is to be held there.', `${pointer}/reason`);
      return { ...link, notHeld: reason };
    }
    if (hold !== true || callsForHold(kind)) return link;
    const own = randomUUID();
    const why = reason ?? 'A request came, and a manager has everything kept.';
    await this.holds.start(incident, [{ id: own, cause: 'request', of: [request], reason: why }], actor);
    return { ...link, hold: own };
  }

  private async known(id: string, pointer: string, actor: PersonActor): Promise<string> {
    const found = await this.sections.references([id]);
    if (!found.has(id)) refuse(422, 'There is no incident with this id.', `${pointer}/id`);
    return (await this.access.find(id, actor)).id;
  }

  /** What it names is there: whoever sees to it, and the files that show the paper. */
  private async assertSound({ details, incidents }: LegalRequest): Promise<void> {
    const { handler, papers = [], receivedAt, counselSawAt } = details;
    const now = Date.parse(this.clock.now());
    if (Date.parse(receivedAt) > now) refuse(422, 'It is logged once it has come.', '/receivedAt');
    if (counselSawAt !== undefined && Date.parse(counselSawAt) > now) {
      refuse(422, 'It is recorded once counsel has seen it.', '/counselSawAt');
    }
    if (handler !== undefined) {
      const account = await this.accounts.find(handler);
      if (account === null || account.role === 'counsel') {
        refuse(422, 'There is no open account of staff with this id.', '/handler');
      }
    }
    const kept = new Set<string>();
    for (const { incident } of incidents) {
      const { files = [] } = await this.sections.read<EvidenceSection>(incident, 'evidence');
      for (const file of files) kept.add(file.id);
    }
    papers.forEach((paper, place) => {
      if (!kept.has(paper)) {
        refuse(422, 'It is no file of an incident that the request concerns.', `/papers/${place}`);
      }
    });
  }
}
