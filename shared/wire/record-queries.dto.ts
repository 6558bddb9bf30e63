import type { IncidentStatus } from '../record/incident-record.js';
import { PageQueryDto } from './page-query.dto.js';
import { Value, type ValueRule } from './record-members.js';
import { instant, line, oneOf } from './record-values.js';
import { SECTION_SHAPES } from './record-sections.js';

const STATUSES: readonly IncidentStatus[] = ['open', 'closed'];
const section: ValueRule = oneOf([...Object.keys(SECTION_SHAPES), 'incident'], 'the name of a section');

const POINTER =
  'a pointer into the section, such as /people/p1/outcome (RFC 6901), beside the name of the section';
const pointer: ValueRule = {
  expected: POINTER,
  faultOf: (value) =>
    typeof value === 'string' && /^(\/([^~/]|~[01])*)+$/.test(value) && value.length <= 500
      ? null
      : `Must be ${POINTER}.`,
  schema: { type: 'string', pattern: '^(/([^~/]|~[01])*)+$' },
};

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

  /** A field of that section, or all below it: the history of one answer. */
  @Value(pointer)
  pointer?: string;
}

/** As of which moment the record is asked for; now, without one. */
export class AsOfDto {
  @Value(instant)
  at?: string;
}
