import type { ItemState } from '../../../../shared/report/filled-report.js';
import type { Paper } from '../../platform/paper/paper.js';

export const STATE_WORDS: Readonly<Record<ItemState, string>> = {
  answered: 'Answered',
  unknown: 'Not known',
  missing: 'Missing',
};

const EDGE = 10;

/** The square of the house: full where answered, half where nobody knows, empty where nothing is there. */
export function drawSign({ document }: Paper, state: ItemState, left: number, top: number): void {
  document.lineWidth(1.4).rect(left, top, EDGE, EDGE).stroke('#000000');
  if (state === 'answered') document.rect(left, top, EDGE, EDGE).fill('#000000');
  if (state === 'unknown') {
    document.polygon([left, top], [left + EDGE, top], [left, top + EDGE]).fill('#000000');
  }
}
