import type { Known } from '../call/known.js';
import type { Amount, DamageLine } from '../record/damage-section.js';
import { tellMoney } from './tell-money.js';

/** US dollars; `unknown` counts what has no figure. */
export interface AmountSum {
  readonly low: number;
  readonly high: number;
  readonly unknown: number;
}

/**
 * Adds what has a figure, in cents, and counts what has none: an unknown is never a zero.
 * @example sumAmounts([{ value: 0.1, known: 'told' }, { value: 0.2, known: 'told' }]) // { low: 0.3, high: 0.3, unknown: 0 }
 */
export function sumAmounts(amounts: readonly (Known<Amount> | undefined)[]): AmountSum {
  let [low, high, unknown] = [0, 0, 0];
  for (const amount of amounts) {
    const value = amount?.value;
    if (typeof value === 'number') {
      low += centsOf(value);
      high += centsOf(value);
    } else if (typeof value === 'object') {
      low += centsOf(value.low);
      high += centsOf(value.high);
    } else unknown += 1;
  }
  return { low: low / 100, high: high / 100, unknown };
}

/** `tellSum({ low: 500, high: 900, unknown: 1 })` is `'$500 to $900, and 1 not known'`. */
export function tellSum({ low, high, unknown }: AmountSum): string {
  if (high === 0 && unknown > 0) return 'Not known';
  const sum = low === high ? tellMoney(low) : tellMoney({ low, high });
  return unknown === 0 ? sum : `${sum}, and ${unknown} not known`;
}

const centsOf = (dollars: number): number => Math.round(dollars * 100);

/** Of one line its figure, or its material and labour; nothing where it has neither. */
export function amountsOf({ amount, material, labour }: DamageLine): (Known<Amount> | undefined)[] {
  if (amount !== undefined) return [amount];
  const parts = [material, labour].filter((part) => part !== undefined);
  return parts.length === 0 ? [undefined] : parts;
}
