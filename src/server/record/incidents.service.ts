import { Injectable } from '@nestjs/common';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { callIsIncident } from '../../../shared/call/call-is-incident.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type {
  OpenIncidentDto,
  SameEventDto,
  SetStatusDto,
} from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { type PageRequest, pageOf } from '../platform/http/cursor.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import type { IncidentRow } from './database/incident.row.js';
import { type IncidentFilter, IncidentsRepository } from './database/incidents.repository.js';
import { LogRepository } from './database/log.repository.js';
import { assertMayWrite, assertRole, IncidentAccess } from './incident-access.js';
import {
  type IncidentLine,
  type IncidentOutline,
  lineOf,
  outlineOf,
  sectionOutline,
  withoutServiceSections,
} from './incident-views.js';
import type { SectionOutline } from './incident-views.js';
import { RecordLog } from './record-log.js';
import { RecordSettings } from './record-settings.js';
import { refuse } from '../platform/http/refuse.js';
import { HEAD_SECTION, headOf } from './incident-head.js';
import { SectionWriter, unwritten } from './section-writer.js';

export type IncidentQuery = Omit<IncidentFilter, 'counselAccount'>;
export type OpenedIncident = IncidentOutline & { sections: SectionOutline[] };

@Injectable()
export class IncidentsService {
  constructor(
    private readonly log: RecordLog,
    private readonly numbers: LogRepository,
    private readonly writer: SectionWriter,
    private readonly incidents: IncidentsRepository,
    private readonly access: IncidentAccess,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
    private readonly settings: RecordSettings,
  ) {}

  /** Opens an incident from whatever is known; a retry with the same key finds the one that was opened. */
  async open(body: OpenIncidentDto, key: string, actor: Actor): Promise<OpenedIncident> {
    assertMayWrite(actor);
    const { id } = await this.log.run(() =>
      this.createOnce.run({ operation: 'incident', key, body }, (made) =>
        this.create(body.id ?? made, body, actor),
      ),
    );
    return this.opened(body.id ?? id, actor);
  }

  async list(filter: IncidentQuery, page: PageRequest, actor: Actor) {
    const counsel = actor.kind === 'person' && actor.role === 'counsel';
    const rows = await this.incidents.list(
      { ...filter, counselAccount: counsel ? actor.accountId : undefined },
      page.after,
      page.limit,
    );
    const { items, next } = pageOf(rows, page, ({ openedAt, id }) => ({ sort: openedAt, id }));
    return { items: items.map(lineOf), next };
  }

  async read(id: string, actor: Actor): Promise<IncidentLine & { sections: SectionOutline[] }> {
    const incident = await this.access.read(id, actor);
    const sections = await this.incidents.sections(id);
    return { ...lineOf(incident), sections: withoutServiceSections(sections).map(sectionOutline) };
  }

  async setStatus(id: string, body: SetStatusDto, ifMatch: string | undefined, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    await this.log.run(async () => {
      const incident = await this.access.find(id, actor);
      assertFresh(ifMatch, lineOf(incident), body);
      await this.changeHead(incident, { status: body.status }, body.reason, actor);
    });
    return this.read(id, actor);
  }

  /** Says of both that they are one event. */
  async join(id: string, { incident: otherId, reason }: SameEventDto, actor: Actor) {
    assertRole(actor, 'staff', 'manager', 'administrator');
    if (id === otherId) refuse(422, 'Must be another incident than this one.', '/incident');
    await this.log.run(async () => {
      const [one, other] = [await this.access.find(id, actor), await this.incidents.find(otherId)];
      if (other === null) refuse(422, 'There is no such incident.', '/incident');
      await this.changeHead(one, { sameEventAs: other.id }, reason, actor);
      await this.changeHead(other, { sameEventAs: one.id }, reason, actor);
    });
    return this.read(id, actor);
  }

  private async opened(id: string, actor: Actor): Promise<OpenedIncident> {
    const incident = await this.access.find(id, actor);
    const sections = await this.incidents.sections(id);
    return { ...outlineOf(incident), sections: withoutServiceSections(sections).map(sectionOutline) };
  }

  private async create(id: string, { id: named, call = {} }: OpenIncidentDto, actor: Actor): Promise<void> {
    if (named !== undefined && (await this.incidents.exists(id)))
      refuse(409, 'There is an incident with this id already.', '/id');
    const openedAt = this.clock.now();
    const { timeZone } = this.settings;
    const year = zoneClock(timeZone).localDate(Date.parse(openedAt)).slice(0, 4);
    const number = await this.numbers.nextOfYear(Number(year));
    const reference = `${year}-${String(number).padStart(4, '0')}`;
    const head: JsonObject = { reference, openedAt, status: 'open', timeZone };
    const sections = new Map([[HEAD_SECTION, head]]);
    if (callIsIncident(call)) sections.set('call', call as unknown as JsonObject);
    await this.writer.open(id, sections, actor);
  }

  private async changeHead(
    incident: IncidentRow,
    { status, sameEventAs }: { status?: string; sameEventAs?: string },
    reason: string,
    actor: Actor,
  ): Promise<void> {
    const before =
      (await this.incidents.section(incident.id, HEAD_SECTION)) ?? unwritten(incident.id, HEAD_SECTION);
    const joined = headOf(before.document).sameEventAs ?? [];
    const document: JsonObject = {
      ...before.document,
      ...(status === undefined ? {} : { status }),
      ...(sameEventAs === undefined ? {} : { sameEventAs: [...new Set([...joined, sameEventAs])] }),
    };
    await this.writer.amend(incident, before, { document, reason }, actor);
  }
}
