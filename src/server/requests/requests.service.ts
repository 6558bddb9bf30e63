import { Injectable } from '@nestjs/common';
import { concerned } from '../../../shared/record/legal-request.js';
import { RequestQueryDto } from '../../../shared/wire/legal-requests.dto.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { AccountFinder, type PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { Holds, IncidentAccess, RecordSettings, ServiceSections } from '../record/record.api.js';
import type { LegalRequestRow } from './database/legal-request.row.js';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';
import { lineOf, type ViewOptions, viewOf } from './request-views.js';

/** Requests as they are read: by managers all, by counsel those that concern an incident they were assigned. */
@Injectable()
export class RequestsService {
  constructor(
    private readonly requests: LegalRequestsRepository,
    private readonly sections: ServiceSections,
    private readonly holds: Holds,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown, actor: PersonActor) {
    const { state, kind, ...paging } = readInput(readPageQuery(query, RequestQueryDto), 'query');
    const request = pageRequest(paging);
    const only = await this.access.assignedTo(actor);
    const filter = {
      isOpen: state !== 'closed',
      ...(kind !== undefined && { kind }),
      ...(only !== null && { incidents: only }),
    };
    const rows = await this.requests.page(filter, request);
    const { items, next } = pageOf(rows, request, ({ listOrder, id }) => ({ sort: listOrder, id }));
    const options = await this.optionsFor(items, only);
    return { items: items.map((row) => lineOf(row, options)), next };
  }

  async ofIncident(incidentId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const rows = await this.requests.ofIncident(id);
    const options = await this.optionsFor(rows, await this.access.assignedTo(actor));
    return { items: rows.map((row) => lineOf(row, options)) };
  }

  /** @throws ProblemException 404 for counsel that was assigned none of its incidents, too */
  async read(id: string, actor: PersonActor) {
    const row = await this.find(id, actor);
    const options = await this.optionsFor([row], await this.access.assignedTo(actor));
    const held = new Set<string>();
    for (const { incident } of concerned(row.request)) {
      if (await this.holds.isHeld(incident)) held.add(incident);
    }
    return viewOf(row, held, options);
  }

  /** Every version with who brought it about, the newest first. */
  async versions(id: string, actor: PersonActor) {
    const row = await this.find(id, actor);
    const versions = await this.requests.versions(row.id);
    return {
      items: versions.map(({ version, what, reason, person, at, request }) => {
        return { version, what, reason, person, at, details: request.details };
      }),
    };
  }

  async find(id: string, actor: PersonActor): Promise<LegalRequestRow> {
    const row = await this.requests.find(id);
    const only = await this.access.assignedTo(actor);
    const mayKnow =
      only === null || concerned(row?.request ?? NONE).some(({ incident }) => only.includes(incident));
    return row === null || !mayKnow ? refuse(404, 'There is no such request.') : row;
  }

  private async optionsFor(
    rows: readonly LegalRequestRow[],
    only: readonly string[] | null,
  ): Promise<ViewOptions> {
    const incidents = rows.flatMap(({ request }) => request.incidents.map(({ incident }) => incident));
    const handlers = rows.flatMap(({ request }) => request.details.handler ?? []);
    return {
      now: this.clock.now(),
      zone: this.settings.timeZone,
      references: await this.sections.references([...new Set(incidents)]),
      names: await this.accounts.names([...new Set(handlers)]),
      only,
    };
  }
}

const NONE = { incidents: [] };
