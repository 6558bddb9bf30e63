import type { Ternary } from '../kernel/truth.js';
import { Items, Needed, Part, Value } from './record-members.js';
import { reason } from './record-requests.dto.js';
import { id, line, ternary } from './record-values.js';

class SubmitterDto {
  @Value(line)
  name?: string;

  @Value(line)
  address?: string;

  @Value(line)
  phone?: string;
}

class OpinionDto {
  @Needed(reason)
  text: string;

  @Needed(ternary)
  alcoholOrDrugs: Ternary;
}

class NotKnownDto {
  /** Of the item of the report: `7`, `WI-gear`. */
  @Needed(id)
  id: string;

  @Needed(reason)
  why: string;
}

/** What a report holds beside the record; what is left out is taken away. */
export class ReportNotesDto {
  @Part(() => SubmitterDto)
  submitter?: SubmitterDto;

  @Part(() => OpinionDto)
  opinion?: OpinionDto;

  @Items(() => NotKnownDto)
  notKnown?: NotKnownDto[];
}
