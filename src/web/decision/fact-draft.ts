import { readWallClock } from '../../../shared/time/read-wall-clock.js';
import { facts as say } from '../words/facts.js';
import type { FactPlace } from './fact-place.js';
import type { FactValue } from './fact-value.js';

/** An answer while it is written; `high` is the upper end of a range of amounts. */
export interface FactDraft {
  readonly text: string;
  readonly high: string;
}

export const NO_DRAFT: FactDraft = { text: '', high: '' };

export type DraftReading = { readonly value: FactValue } | { readonly fault: string };

/**
 * What an answer says, or what is wrong with it in words.
 * @example readDraft({ kind: 'amount', … }, { text: '1200', high: '1800' }, zone) // { value: { low: 1200, high: 1800 } }
 */
export function readDraft(
  { kind, member }: FactPlace,
  { text, high }: FactDraft,
  zone: string,
): DraftReading {
  if (text.trim() === '') return { fault: say.nothingChosen };
  switch (kind) {
    case 'hours':
      return /^\d+(\.\d+)?$/.test(text.trim()) ? { value: Number(text) } : { fault: say.notAFigure };
    case 'instant': {
      const at = readWallClock(text, zone);
      return at === null ? { fault: say.notATime } : { value: at };
    }
    case 'amount':
      return readAmount(text, high);
    case 'state':
      return { value: member === 'states' ? [text] : text };
    case 'casualty':
      return { value: [text] };
    default:
      return { value: text.trim() };
  }
}

function readAmount(text: string, high: string): DraftReading {
  const low = dollars(text);
  const most = high.trim() === '' ? low : dollars(high);
  if (low === null || most === null) return { fault: say.notAFigure };
  if (most < low) return { fault: say.belowLow };
  return { value: most === low ? low : { low, high: most } };
}

/** People write `$1,250.50`. */
function dollars(text: string): number | null {
  const bare = text.replaceAll(/[$,\s]/g, '');
  return /^\d+(\.\d{1,2})?$/.test(bare) ? Number(bare) : null;
}
