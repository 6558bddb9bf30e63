import { AdoptedHouseRulesRow } from './adopted-house-rules.row.js';
import { CalendarFeedRow } from './calendar-feed.row.js';
import { ClaimStartRow } from './claim-start.row.js';
import { NoticeAddressRow } from './notice-address.row.js';
import { ShiftHandOverRow } from './shift-hand-over.row.js';
import { TaskEventRow } from './task-event.row.js';
import { TaskRow } from './task.row.js';

/** Every row of follow-up. */
export const FOLLOW_UP_ROWS = [
  TaskRow,
  TaskEventRow,
  ClaimStartRow,
  ShiftHandOverRow,
  AdoptedHouseRulesRow,
  NoticeAddressRow,
  CalendarFeedRow,
];
