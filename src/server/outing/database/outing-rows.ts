import { ClosingCountRow } from './closing-count.row.js';
import { NotBackRow } from './not-back.row.js';
import { OutingEventRow } from './outing-event.row.js';
import { OutingRow } from './outing.row.js';

/** Every row of out and back. */
export const OUTING_ROWS = [OutingRow, NotBackRow, ClosingCountRow, OutingEventRow];
