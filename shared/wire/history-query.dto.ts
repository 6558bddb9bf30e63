import { Needed } from './record-members.js';
import { day } from './record-values.js';

/** The period of an incident history: days of the calendar, both within it. */
export class HistoryQueryDto {
  @Needed(day)
  from: string;

  @Needed(day)
  until: string;
}
