import { nameAmount, nameTime } from './name-law-terms.js';
import type { LimitTime, RulePack, Trigger } from './rule-pack.js';
import { titleOfNotice } from './tell-rule-pack.js';

/** The law of a jurisdiction, or on one other matter, in a line. */
export interface PackSummary {
  /** What may be due: the written report first, then each notice. */
  readonly duties: readonly string[];
  /** Amounts of damage that call for something, the best-read first; what was superseded is left out. */
  readonly amounts: readonly string[];
  /** Times, the shortest first. */
  readonly clocks: readonly string[];
}

/**
 * @example summarizePack(texas) // { duties: ['Accident report', …], amounts: ['more than $2,000'], clocks: ['At once', …] }
 */
export function summarizePack({ report, notices }: Pick<RulePack, 'report' | 'notices'>): PackSummary {
  const rules = [...(report === null ? [] : [report]), ...notices];
  const limits = rules.flatMap((rule) => rule.limits.map(({ time }) => time));
  return {
    duties: [...(report === null ? [] : ['Accident report']), ...notices.map(titleOfNotice)],
    amounts: unique(rules.flatMap(({ triggers }) => triggers.flatMap(amountsOf))),
    clocks: unique([...limits].sort((a, b) => lengthOf(a) - lengthOf(b)).map(nameTime)),
  };
}

function amountsOf({ test, readings = [] }: Trigger): string[] {
  if (test === 'damage-any') return ['any amount'];
  if (!test.startsWith('damage-')) return [];
  return readings
    .filter(({ basis }) => basis !== 'superseded')
    .map(({ amountUsd, comparison }) => nameAmount(amountUsd, comparison));
}

/** In hours, as an order: a time that is not stated stands last. */
function lengthOf(time: LimitTime | null): number {
  if (time === null) return Infinity;
  if ('immediate' in time) return 0;
  return 'hours' in time ? time.hours : time.days * 24;
}

function unique(words: readonly string[]): string[] {
  return [...new Set(words)];
}
