import type { EvidenceSection } from '../../../../shared/record/evidence-section.js';
import type { UnitOfWork } from '../../platform/database/unit-of-work.js';

export interface EvidenceOfIncident {
  readonly reference: string;
  readonly section: EvidenceSection;
}

/** What the record says about evidence, incident by incident. The tables are the record's own; this only reads. */
export async function evidenceOfRecord(unitOfWork: UnitOfWork): Promise<EvidenceOfIncident[]> {
  const rows = await unitOfWork.manager.query<{ reference: string; document: string }[]>(
    `SELECT i."reference" AS "reference", s."document" AS "document" FROM "incident_section" s
      JOIN "incident" i ON i."id" = s."incident_id" WHERE s."section" = 'evidence' ORDER BY i."reference"`,
  );
  return rows.map(({ reference, document }) => ({
    reference,
    section: JSON.parse(document) as EvidenceSection,
  }));
}
