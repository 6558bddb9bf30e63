import { BASIS_WORDS } from '../../../shared/law/name-law-terms.js';
import type { RetentionKind, RetentionPeriod } from '../../../shared/retention/retention-form.js';
import type { RetentionLine, ToldPeriod } from '../../../shared/retention/retention-line.js';
import { tellDay } from '../lists/tell-day.js';
import { retention as say } from '../words/en/retention.js';

export interface KindPeriod extends RetentionPeriod {
  readonly chosenMonths: number | null;
  readonly chosenWhy: string | null;
  readonly version: number;
}

export interface Kind extends Omit<RetentionKind, 'periods'> {
  readonly periods: readonly KindPeriod[];
}

export interface KindsAnswer {
  readonly majority: { readonly citation: string };
  readonly kinds: readonly Kind[];
}

/** `Medical detail: 2026-0004` */
export function nameOf({ kind, reference, month }: Named, kinds: readonly Kind[]): string {
  const title = kinds.find(({ id }) => id === kind)?.title ?? kind;
  return say.of(title, reference ?? (month === null ? '' : say.month(month)));
}

type Named = Pick<RetentionLine, 'kind' | 'reference' | 'month'>;

/** Until when it has to be kept, as far as anybody can tell. */
export function tellKept({ earliest, latest }: Pick<RetentionLine, 'earliest' | 'latest'>): string {
  if (latest === null) return say.keptNobodyKnows(earliest === null ? '…' : tellDay(earliest));
  if (earliest === null || earliest === latest) return say.kept(tellDay(latest));
  return say.keptBetween(tellDay(earliest), tellDay(latest));
}

/** Why, and by which source, how that was read. */
export function tellSource({ citation, basis }: Pick<ToldPeriod, 'citation' | 'basis'>): string {
  if (basis === 'choice') return say.choice;
  return `${citation ?? ''}, ${basis === 'memory' ? '' : 'read '}${BASIS_WORDS[basis]}`;
}

export function tellHolds(holds: RetentionLine['holds']): string {
  return Object.entries(holds)
    .filter(([, count]) => count > 0)
    .map(([name, count]) => say.counts[name]?.(count) ?? `${count} ${name}`)
    .join(', ');
}
