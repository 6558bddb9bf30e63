import { Injectable } from '@nestjs/common';
import type { CounselRequestDto, PrivilegedEntryDto } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import type { CounselRequestRow } from './database/aside.row.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import { assertRole, IncidentAccess } from './incident-access.js';
import { refuse } from './refuse.js';

/**
 * Notes that a lawyer asked for. They stand apart from the record: no section, list, search, draft or amendment holds
 * them, and only counsel that was assigned the incident reads them. Staff makes none.
 */
@Injectable()
export class PrivilegedService {
  constructor(
    private readonly privileged: PrivilegedRepository,
    private readonly access: IncidentAccess,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /** That counsel asked, by name and day; without it there is nothing to write a note under. */
  async request(incidentId: string, body: CounselRequestDto, key: string, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    await this.access.find(incidentId, actor);
    const { counsel, counselAccount = null, requestedOn } = body;
    const enteredAt = this.clock.now();
    const operation = `counsel-request ${incidentId}`;
    const { id } = await this.createOnce.run({ operation, key, body }, (made) =>
      this.privileged.addRequest({
        id: made,
        incidentId,
        counsel,
        counselAccount,
        requestedOn,
        enteredBy: actor.personName,
        enteredAt,
      }),
    );
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
    await this.access.find(incidentId, actor);
    await this.requestOf(incidentId, requestId);
    const writtenAt = this.clock.now();
    const operation = `privileged-entry ${requestId}`;
    const { id } = await this.createOnce.run({ operation, key, body }, (made) =>
      this.privileged.addEntry({
        id: made,
        requestId,
        writtenBy: actor.personName,
        writtenAt,
        words: body.words,
      }),
    );
    return { id, version: 1 };
  }

  async read(incidentId: string, actor: Actor) {
    assertRole(actor, 'counsel');
    await this.access.read(incidentId, actor);
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

  private async requestOf(incidentId: string, requestId: string): Promise<CounselRequestRow> {
    const requests = await this.privileged.requests(incidentId);
    return requests.find(({ id }) => id === requestId) ?? refuse(404, 'There is no such request of counsel.');
  }
}
