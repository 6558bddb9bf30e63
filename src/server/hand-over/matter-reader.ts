import { Injectable } from '@nestjs/common';
import type { Attachments } from '../../../shared/hand-over/apply-to-attachments.js';
import type { EvidenceSection } from '../../../shared/record/evidence-section.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Determinations, type StoredDetermination } from '../determination/determination.api.js';
import { FollowUp, type TaskOfIncident } from '../follow-up/follow-up.api.js';
import { Clock } from '../platform/clock.js';
import {
  IncidentAccess,
  type IncidentProof,
  IncidentProofs,
  PrivilegedService,
  type ServiceSection,
  ServiceSections,
} from '../record/record.api.js';
import { HandOverBook, type KeptMailing, type KeptPacket } from './hand-over-book.js';

/** Sections of the service of which something may leave. */
const SECTIONS: readonly ServiceSection[] = [
  'evidence',
  'custody',
  'outside-evidence',
  'holds',
  'requests',
  'decisions',
  'filings',
  'reports',
  'assignments',
];

/** Everything there is about an incident, as of one moment: before anybody decided what of it leaves. */
export interface Matter {
  readonly incidentId: string;
  readonly record: IncidentRecord;
  /** RFC 3339. */
  readonly asOf: string;
  readonly attachments: Attachments;
  readonly evidence: EvidenceSection;
  readonly proof: IncidentProof;
  readonly determination: StoredDetermination | null;
  /** Requests of counsel with the notes under them. */
  readonly privileged: readonly object[];
  readonly tasks: readonly TaskOfIncident[];
  readonly packets: readonly KeptPacket[];
  readonly mailings: readonly KeptMailing[];
}

/** Reads an incident whole, in one unit of work, so that record and log agree. */
@Injectable()
export class MatterReader {
  constructor(
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly proofs: IncidentProofs,
    private readonly determinations: Determinations,
    private readonly privileged: PrivilegedService,
    private readonly followUp: FollowUp,
    private readonly book: HandOverBook,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 404 */
  async read(incidentId: string, actor: PersonActor): Promise<Matter> {
    const { id } = await this.access.read(incidentId, actor);
    return this.sections.run(async () => {
      const { packets = [], mailings = [] } = await this.book.section(id);
      const attachments: Record<string, JsonObject> = {};
      for (const section of SECTIONS) {
        const document = await this.sections.read<object>(id, section);
        if (Object.keys(document).length > 0) attachments[section] = document as JsonObject;
      }
      return {
        incidentId: id,
        record: await this.sections.record(id),
        asOf: this.clock.now(),
        attachments,
        evidence: attachments['evidence'] ?? {},
        proof: await this.proofs.read(id),
        determination: await this.determinations.current(id),
        privileged: await this.privileged.forCounsel(id),
        tasks: await this.followUp.tasksOfIncident(id),
        packets,
        mailings,
      };
    });
  }
}
