import type { Known } from '../call/known.js';
import type { Amount } from '../record/damage-section.js';

/** Material and labour apart, where nobody gave one figure. */
interface Parts {
  readonly material?: Known<Amount>;
  readonly labour?: Known<Amount>;
}

/**
 * An amount in words; `'unknown'` where nobody knows any of it.
 * @example tellMoney(1500) // '$1,500'
 * @example tellMoney({ low: 500, high: 900 }) // '$500 to $900'
 * @example tellMoney({ material: { value: 150, known: 'told' } }) // 'material $150; labour not recorded'
 */
export function tellMoney(value: unknown): string {
  if (typeof value === 'number') return dollars(value);
  if (typeof value !== 'object' || value === null) return 'unknown';
  if ('low' in value) {
    const { low, high } = value as { low: number; high: number };
    return `${dollars(low)} to ${dollars(high)}`;
  }
  const { material, labour } = value as Parts;
  const told = [part('material', material), part('labour', labour)];
  return material?.value === 'unknown' && labour?.value === 'unknown' ? 'unknown' : told.join('; ');
}

function part(name: string, fact: Known<Amount> | undefined): string {
  if (fact === undefined) return `${name} not recorded`;
  return `${name} ${fact.value === 'unknown' ? 'not known' : tellMoney(fact.value)}`;
}

function dollars(amount: number): string {
  const [whole = '', cents] = (Number.isInteger(amount) ? String(amount) : amount.toFixed(2)).split('.');
  return `$${whole.replaceAll(/\B(?=(\d{3})+$)/g, ',')}${cents === undefined ? '' : `.${cents}`}`;
}
