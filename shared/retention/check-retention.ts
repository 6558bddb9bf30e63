import type { FieldKinds } from '../hand-over/hand-over-profile.js';
import type { PeriodStart, RetentionForm, RetentionKind } from './retention-form.js';

const STARTS: Readonly<Record<RetentionKind['of'], readonly PeriodStart[]>> = {
  incident: ['occurrence', 'majority', 'year-end', 'closing', 'employment-end', 'packet-made', 'saved'],
  outings: ['return'],
  mails: ['queued'],
};

/**
 * What in a form does not fit together, in words: a period that nobody has, one that cannot count for its kind, a kind
 * of field that there is not, an id that is given twice.
 * @example checkRetention(form, fieldKinds) // []
 */
export function checkRetention({ periods, kinds }: RetentionForm, fields: FieldKinds['kinds']): string[] {
  const byId = new Map(periods.map((period) => [period.id, period]));
  const named = new Set(fields.map(({ kind }) => kind));
  const used = new Set(kinds.flatMap((kind) => kind.periods));
  return [
    ...twice(periods.map(({ id }) => id)).map((id) => `There are two periods ${id}.`),
    ...twice(kinds.map(({ id }) => id)).map((id) => `There are two kinds ${id}.`),
    ...periods.filter(({ id }) => !used.has(id)).map(({ id }) => `No kind is kept for ${id}.`),
    ...kinds.flatMap((kind) => [
      ...(kind.fields === undefined || kind.fields === 'all' ? [] : kind.fields)
        .filter((field) => !named.has(field))
        .map((field) => `${kind.id} names ${field}, and no field of the record is of that kind.`),
      ...kind.periods.flatMap((id) => {
        const period = byId.get(id);
        if (period === undefined) return [`${kind.id} is kept for ${id}, and there is no such period.`];
        return STARTS[kind.of].includes(period.from)
          ? []
          : [`${kind.id} is kept for ${id}, which counts from a day that it does not have.`];
      }),
    ]),
  ];
}

function twice(ids: readonly string[]): string[] {
  return [...new Set(ids.filter((id, place) => ids.indexOf(id) !== place))];
}
