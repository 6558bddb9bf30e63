import { Injectable } from '@nestjs/common';
import type { CounselRequestDto, PrivilegedEntryDto } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { AssignmentsService } from './assignments.service.js';
import { committedTo, newSalt, type PrivilegedSection } from './commit-privileged.js';
import type { CounselRequestRow, PrivilegedEntryRow } from './database/aside.row.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import { assertRole, IncidentAccess } from './incident-access.js';
import { ServiceSections } from './service-sections.js';
import { refuse } from '../platform/http/refuse.js';

/**
 * Notes that a lawyer asked for. They stand apart from the record: no section, list, search, draft or amendment holds
 * them, and only counsel that was assigned the incident reads them: whoever writes one is told that it was kept, and
 * cannot read it again. Staff makes none. The log holds a commitment to each, so that `verify` names one that was changed.
 */
@Injectable()
export class PrivilegedService {
  constructor(
    private readonly privileged: PrivilegedRepository,
    private readonly access: IncidentAccess,
    private readonly assignments: AssignmentsService,
    private readonly sections: ServiceSections,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /**
   * That counsel asked, by name and day; without it there is nothing to write a note under. Where the lawyer has an
   * account, it is assigned the incident.
   */
  async request(incidentId: string, body: CounselRequestDto, key: string, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    const { counsel, counselAccount = null, requestedOn } = body;
    const operation = `counsel-request ${incidentId}`;
    const { id } = await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      return this.createOnce.run({ operation, key, body }, async (made) => {
        const enteredAt = this.clock.now();
        const request = { id: made, incidentId, counsel, counselAccount, requestedOn };
        const row = { ...request, enteredBy: actor.personName, enteredAt, salt: newSalt() };
        await this.privileged.addRequest(row);
        await this.commit(incidentId, 'requests', row, actor);
        if (counselAccount === null) return;
        await this.assignments.add(incidentId, counselAccount, '/counselAccount', actor);
      });
    });
    return { id, version: 1, counsel, requestedOn };
  }

  async requests(incidentId: string, actor: Actor) {
    assertRole(actor, 'manager', 'administrator', 'counsel');
    await this.access.read(incidentId, actor);
    const rows = await this.privileged.requests(incidentId);
    return rows.map(({ id, counsel, requestedOn, enteredBy, enteredAt }) => ({
      id,
      counsel,
      requestedOn,
      enteredBy,
      enteredAt,
    }));
  }

  /** The answer does not repeat the words. */
  async write(incidentId: string, requestId: string, body: PrivilegedEntryDto, key: string, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    const operation = `privileged-entry ${requestId}`;
    const { id } = await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      await this.requestOf(incidentId, requestId);
      return this.createOnce.run({ operation, key, body }, async (made) => {
        const { words } = body;
        const written = { writtenBy: actor.personName, writtenAt: this.clock.now() };
        const row = { id: made, requestId, ...written, words, salt: newSalt() };
        await this.privileged.addEntry(row);
        await this.commit(incidentId, 'entries', row, actor);
      });
    });
    return { id, version: 1 };
  }

  async read(incidentId: string, actor: Actor) {
    assertRole(actor, 'counsel');
    await this.access.read(incidentId, actor);
    return this.forCounsel(incidentId);
  }

  /** The notes under their requests, for what goes to counsel and is opened by counsel alone. */
  async forCounsel(incidentId: string) {
    const requests = await this.privileged.requests(incidentId);
    const entries = await this.privileged.entries(requests.map(({ id }) => id));
    return requests.map(({ id, counsel, requestedOn }) => ({
      id,
      counsel,
      requestedOn,
      entries: entries
        .filter(({ requestId }) => requestId === id)
        .map((entry) => ({
          id: entry.id,
          writtenBy: entry.writtenBy,
          writtenAt: entry.writtenAt,
          words: entry.words,
        })),
    }));
  }

  private async commit(
    incidentId: string,
    kind: keyof PrivilegedSection,
    row: CounselRequestRow | PrivilegedEntryRow,
    actor: Actor,
  ): Promise<void> {
    const section = await this.sections.read<PrivilegedSection>(incidentId, 'privileged');
    const grown = { ...section, [kind]: [...(section[kind] ?? []), committedTo(kind, row)] };
    await this.sections.write(incidentId, 'privileged', grown, actor);
  }

  private async requestOf(incidentId: string, requestId: string): Promise<CounselRequestRow> {
    const requests = await this.privileged.requests(incidentId);
    return requests.find(({ id }) => id === requestId) ?? refuse(404, 'There is no such request of counsel.');
  }
}
