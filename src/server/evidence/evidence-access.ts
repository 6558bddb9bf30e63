import { Injectable } from '@nestjs/common';
import { evidenceIsRestricted } from '../../../shared/record/evidence-restriction.js';
import type { EvidenceFile, EvidenceWords } from '../../../shared/record/evidence-section.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { Actor } from '../accounts/accounts.api.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess } from '../record/record.api.js';

/** Who sees which evidence: what the record allows, and of that the restricted files to few. */
@Injectable()
export class EvidenceAccess {
  constructor(private readonly incidents: IncidentAccess) {}

  /** @throws ProblemException 404 for an incident that is not there, or not this counsel's; 403 for a device */
  async read(incidentId: string, actor: Actor): Promise<void> {
    await this.incidents.read(incidentId, actor);
  }

  /** @throws ProblemException 404 */
  async add(incidentId: string, actor: Actor): Promise<void> {
    await this.incidents.find(incidentId, actor);
  }

  maySee(file: EvidenceFile, record: IncidentRecord, actor: Actor): boolean {
    return seesRestricted(actor) || !evidenceIsRestricted(file, record.sections.people ?? {});
  }

  /** @throws ProblemException 403 where somebody would open to all what may be somebody's death or statement */
  assertMaySay({ restricted }: EvidenceWords, actor: Actor): void {
    if (restricted !== false || decides(actor)) return;
    refuse(403, 'Only managers and administrators decide that everyone may see it.', '/about/restricted');
  }
}

function decides(actor: Actor): boolean {
  return actor.kind === 'person' && (actor.role === 'manager' || actor.role === 'administrator');
}

function seesRestricted(actor: Actor): boolean {
  return decides(actor) || (actor.kind === 'person' && actor.role === 'counsel');
}
