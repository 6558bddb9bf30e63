import { OUTCOME_WORDS } from '../../../shared/determination/duty-words.js';
import type { RegisterFilter } from '../../../shared/wire/register-queries.dto.js';

/** What an export holds, in a sentence: `nameFilter({ status: 'open' })` is `'Only incidents that are open.'` */
export function nameFilter({ status, openedFrom, openedUntil, outcome, reports, q }: RegisterFilter): string {
  const parts = [
    status === undefined ? null : `that are ${status}`,
    openedFrom === undefined ? null : `opened from ${openedFrom}`,
    openedUntil === undefined ? null : `opened before ${openedUntil}`,
    outcome === undefined ? null : `with a duty of which the outcome is "${OUTCOME_WORDS[outcome]}"`,
    reports === undefined ? null : `with reports that are ${reports}`,
    q === undefined ? null : `in whose record stands: ${q}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'All incidents.' : `Only incidents ${parts.join(', ')}.`;
}
