import type { IncidentRecord, RecordSections } from '../../../shared/record/incident-record.js';

/** `GET /api/incidents/:id/record` */
export interface RecordAnswer {
  readonly id: string;
  readonly reference: string;
  readonly version: number;
  /** The moment that was asked for; null for now. */
  readonly at: string | null;
  readonly sections: readonly { readonly section: string; readonly document: object }[];
}

/** A craft as `GET /api/craft` lists it. */
export interface FleetCraft {
  readonly id: string;
  readonly unitName: string;
  readonly type?: string;
  readonly colours?: readonly string[];
  readonly hullNumber?: string;
  readonly registrationNumber?: string;
  readonly make?: string;
  readonly model?: string;
  readonly modelYear?: number;
  readonly capacityPeople?: number;
}

/** The sections of a record by their names. */
export function sectionsOf({ sections }: RecordAnswer): Partial<RecordSections> {
  return Object.fromEntries(sections.map(({ section, document }) => [section, document]));
}

/** The zone in which its times are told: that of the place, or of the business while no place is known. */
export function zoneOf(answer: RecordAnswer): string | undefined {
  const place = sectionsOf(answer)['time-and-place']?.timeZone?.value;
  const head = answer.sections.find(({ section }) => section === 'incident')?.document;
  return place ?? (head as Partial<IncidentRecord['incident']> | undefined)?.timeZone;
}
