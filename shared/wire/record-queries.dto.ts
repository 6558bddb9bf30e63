import type { IncidentStatus } from '../record/incident-record.js';
import { PageQueryDto } from './page-query.dto.js';
import { Value, type ValueRule } from './record-members.js';
import { instant, line, oneOf } from './record-values.js';
import { SECTION_SHAPES } from './record-sections.js';

const STATUSES: readonly IncidentStatus[] = ['open', 'closed'];
const section: ValueRule = oneOf([...Object.keys(SECTION_SHAPES), 'incident'], 'the name of a section');

/** Which incidents are asked for; latest first. */
export class ListIncidentsDto extends PageQueryDto {
  @Value(oneOf(STATUSES))
  status?: IncidentStatus;

  /** Opened at this instant or later. */
  @Value(instant)
  openedFrom?: string;

  /** Opened before this instant. */
  @Value(instant)
  openedUntil?: string;

  /** Words that all must be somewhere in the record. */
  @Value(line)
  q?: string;
}

/** Which amendments of an incident are asked for; newest first. */
export class ListAmendmentsDto extends PageQueryDto {
  @Value(section)
  section?: string;
}

/** As of which moment the record is asked for; now, without one. */
export class AsOfDto {
  @Value(instant)
  at?: string;
}
