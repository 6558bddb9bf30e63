import { OUTCOME_WORDS } from '../../../shared/determination/duty-words.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import { casualtyTypes } from '../../../shared/vocabulary/casualty-types.js';
import type { RegisterFilter } from '../../../shared/wire/register-queries.dto.js';

/** What an export holds, in a sentence: `nameFilter({ status: 'open' })` is `'Only incidents that are open.'` */
export function nameFilter(filter: RegisterFilter): string {
  const { status, openedFrom, openedUntil, outcome, reports, craft, station, casualty, hurt, q } = filter;
  const parts = [
    status === undefined ? null : `that are ${status}`,
    openedFrom === undefined ? null : `opened from ${openedFrom}`,
    openedUntil === undefined ? null : `opened before ${openedUntil}`,
    outcome === undefined ? null : `with a duty of which the outcome is "${OUTCOME_WORDS[outcome]}"`,
    reports === undefined ? null : `with reports that are ${reports}`,
    craft === undefined ? null : `with the craft ${craft}`,
    station === undefined ? null : `with a craft of the station ${station}`,
    casualty === undefined ? null : `of the kind "${labelOf(casualty)}"`,
    hurt === undefined ? null : HURT_WORDS[hurt],
    q === undefined ? null : `in whose record stands: ${q}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'All incidents.' : `Only incidents ${parts.join(', ')}.`;
}

const HURT_WORDS: Readonly<Record<Ternary, string>> = {
  yes: 'in which somebody was hurt, died or was missing',
  no: 'in which nobody was hurt',
  unknown: 'of which it is not known whether anybody was hurt',
};

const labelOf = (slug: string): string => casualtyTypes.find((type) => type.slug === slug)?.label ?? slug;
