import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import {
  type ConcernedIncident,
  concerned,
  holdsToBegin,
  isOpen,
  type LegalRequest,
  ofIncident,
  type RequestKind,
  type RequestsSection,
} from '../../../shared/record/legal-request.js';
import { firstClock } from '../../../shared/record/legal-request-clocks.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { Holds, RecordSettings, ServiceSections } from '../record/record.api.js';
import type { LegalRequestRow } from './database/legal-request.row.js';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';

/** Before every instant: what nobody can date comes first. */
const UNDATED = '';

/** What brought a version about. */
export interface RequestChange {
  readonly what:
    | 'logged'
    | 'paper-served'
    | 'corrected'
    | 'incident-added'
    | 'incident-removed'
    | 'status'
    | 'produced'
    | 'objected';
  readonly reason?: string;
}

/** Writes requests: what stands now, every version, and their entry in the record of each incident they concern. */
@Injectable()
export class RequestBook {
  constructor(
    private readonly requests: LegalRequestsRepository,
    private readonly sections: ServiceSections,
    private readonly holds: Holds,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  /** The number of the next one: `R-2026-0004`. Within `ServiceSections.run`. */
  async nextNumber(): Promise<string> {
    const year = zoneClock(this.settings.timeZone).localDate(Date.parse(this.clock.now())).slice(0, 4);
    const before = await this.requests.countNumbered(`R-${year}-`);
    return `R-${year}-${String(before + 1).padStart(4, '0')}`;
  }

  /** Writes a version, within `ServiceSections.run`, and begins the holds that it calls for in the same unit of work. */
  async write(
    asked: LegalRequest,
    version: number,
    change: RequestChange,
    actor: Actor,
  ): Promise<LegalRequestRow> {
    const request = await this.beginHolds(asked, actor);
    const row: LegalRequestRow = {
      id: request.id,
      number: request.number,
      version,
      isOpen: isOpen(request),
      kind: request.details.kind,
      listOrder: this.orderOf(request),
      request,
    };
    const made = {
      id: randomUUID(),
      requestId: request.id,
      version,
      what: change.what,
      reason: change.reason ?? null,
      person: actor.personName,
      accountId: actor.accountId ?? null,
      at: this.clock.now(),
      request,
    };
    await this.requests.write(
      row,
      made,
      concerned(request).map(({ incident }) => incident),
    );
    // Of an incident that was taken out and found to be concerned again, the last word counts.
    const links = new Map(request.incidents.map((link) => [link.incident, link]));
    for (const link of links.values()) await this.enter(request, link, change.reason, actor);
    return row;
  }

  private async beginHolds(request: LegalRequest, actor: Actor): Promise<LegalRequest> {
    const begun = new Map<string, string>();
    for (const { incident } of holdsToBegin(request)) {
      const id = randomUUID();
      const reason = `${HOLD_WORDS[request.details.kind] ?? 'A paper'} came, ${request.number}: everything is kept.`;
      await this.holds.start(incident, [{ id, cause: 'request', of: [request.id], reason }], actor);
      begun.set(incident, id);
    }
    const incidents = request.incidents.map((link) => {
      const hold = link.ended === undefined ? begun.get(link.incident) : undefined;
      return hold === undefined ? link : { ...link, hold };
    });
    return { ...request, incidents };
  }

  /** Once it was found not to concern an incident, nothing more of it is written there. */
  private async enter(
    request: LegalRequest,
    link: ConcernedIncident,
    reason: string | undefined,
    actor: Actor,
  ): Promise<void> {
    const { requests = [] } = await this.sections.read<RequestsSection>(link.incident, 'requests');
    const before = requests.find(({ id }) => id === request.id);
    if (before?.ended !== undefined && link.ended !== undefined) return;
    const entry = ofIncident(request, link);
    const after =
      before === undefined
        ? [...requests, entry]
        : requests.map((one) => (one.id === request.id ? entry : one));
    await this.sections.write(link.incident, 'requests', { requests: after }, actor, reason);
  }

  private orderOf(request: LegalRequest): string {
    if (!isOpen(request)) return request.steps.at(-1)?.recordedAt ?? request.loggedAt;
    const due = firstClock(request, this.settings.timeZone);
    return due === null ? UNDATED : new Date(due).toISOString();
  }
}

const HOLD_WORDS: Partial<Record<RequestKind, string>> = {
  subpoena: 'A subpoena',
  'court-order': 'An order of a court',
  'preservation-letter': 'A letter that asks to keep everything',
};
