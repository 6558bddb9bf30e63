import { Injectable } from '@nestjs/common';
import type { Role } from '../../../shared/kernel/role.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { SectionName } from '../../../shared/record/incident-record.js';
import { uuid } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { IncidentRow } from './database/incident.row.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { refuse } from '../platform/http/refuse.js';

/** Who may do what with an incident. The gate of the service asks by route; this asks again by incident. */
@Injectable()
export class IncidentAccess {
  constructor(private readonly incidents: IncidentsRepository) {}

  /**
   * The incident, for somebody who may know of it: counsel knows of those assigned to it, and of no other whether it
   * is there.
   * @throws ProblemException 404
   */
  async find(id: string, actor: Actor): Promise<IncidentRow> {
    const incident = uuid.faultOf(id) === null ? await this.incidents.find(id) : null;
    if (incident === null || !(await this.mayKnow(incident.id, actor))) {
      refuse(404, 'There is no incident at this address.');
    }
    return incident;
  }

  /** @throws ProblemException 403 for a device and for counsel that was not assigned (404) */
  async read(id: string, actor: Actor): Promise<IncidentRow> {
    if (actor.kind === 'device') refuse(403, 'A device adds to the record and does not show it: sign in.');
    return this.find(id, actor);
  }

  /** Ids of the incidents that somebody of counsel was assigned; null for whoever reads all. */
  async assignedTo(actor: Actor): Promise<string[] | null> {
    return hasRole(actor, ['counsel']) ? this.incidents.assignedTo(actor.accountId ?? '') : null;
  }

  private async mayKnow(id: string, actor: Actor): Promise<boolean> {
    return !hasRole(actor, ['counsel']) || this.incidents.isAssigned(id, actor.accountId ?? '');
  }
}

function hasRole(actor: Actor, roles: readonly Role[]): boolean {
  return actor.kind === 'person' && roles.includes(actor.role);
}

/** @throws ProblemException 403 unless the actor signed in with one of the roles */
export function assertRole(actor: Actor, ...roles: readonly Role[]): void {
  if (!hasRole(actor, roles)) refuse(403, `This is for ${roles.join(' and ')}, signed in.`);
}

/** @throws ProblemException 403 for counsel, which reads and changes nothing */
export function assertMayWrite(actor: Actor): void {
  if (hasRole(actor, ['counsel'])) refuse(403, 'Counsel reads the record and changes nothing.');
}

/** @throws ProblemException 404 naming the sections that there are */
export function sectionNamed(name: string): SectionName {
  return isSectionName(name) ? name : refuse(404, 'There is no such section of a record.');
}
