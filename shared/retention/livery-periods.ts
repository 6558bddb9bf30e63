import type { RulePack } from '../law/rule-pack.js';
import type { RetentionForm, RetentionPeriod } from './retention-form.js';

/** A month of rental records is kept for at least as many days as this. */
const DAYS_OF_A_MONTH = 28;

/**
 * The form with what states ask of rental records, for every state that was read: a craft may be rented out in any of
 * them. Days are counted as whole months, never fewer. From when a state counts was not read; the return of the craft
 * is the latest day of a rental.
 * @example withLiveryPeriods(form, packs).periods.at(-1)?.citation // 'S.C. Code 50-21-…'
 */
export function withLiveryPeriods(form: RetentionForm, packs: readonly RulePack[]): RetentionForm {
  const livery = packs
    .filter(({ subject }) => subject === undefined)
    .flatMap(({ jurisdiction, name, liveryDuties }) =>
      liveryDuties.flatMap(({ kind, keptFor, citation, basis }, place): RetentionPeriod[] => {
        if (kind !== 'records' || keptFor === undefined || keptFor === null) return [];
        const months = 'months' in keptFor ? keptFor.months : Math.ceil(keptFor.days / DAYS_OF_A_MONTH);
        const reason = `${name} has rental records kept; from when that counts was not read.`;
        return [
          {
            id: `livery-${jurisdiction.toLowerCase()}-${place}`,
            months,
            from: 'return',
            reason,
            citation,
            basis,
          },
        ];
      }),
    );
  const kinds = form.kinds.map((kind) =>
    kind.of === 'outings' ? { ...kind, periods: [...kind.periods, ...livery.map(({ id }) => id)] } : kind,
  );
  return { ...form, kinds, periods: [...form.periods, ...livery] };
}
