import type { Quantity, Unit } from './quantity-as-entered.js';

export type SiUnit = 'm/s' | 'm' | '°C' | 'W' | 's';

export interface SiQuantity {
  readonly amount: number;
  readonly unit: SiUnit;
}

/**
 * Each unit as a multiple of its SI unit. The international foot is 0.3048 m and the international nautical mile 1852 m,
 * both exact; a horsepower is 550 foot-pounds of force a second (NIST SP 811, appendix B; memory).
 */
const FACTORS: Readonly<Record<Exclude<Unit, '°F'>, readonly [number, SiUnit]>> = {
  mph: [0.44704, 'm/s'],
  kn: [1852 / 3600, 'm/s'],
  'km/h': [1 / 3.6, 'm/s'],
  'm/s': [1, 'm/s'],
  ft: [0.3048, 'm'],
  in: [0.0254, 'm'],
  yd: [0.9144, 'm'],
  mi: [1609.344, 'm'],
  nmi: [1852, 'm'],
  m: [1, 'm'],
  km: [1000, 'm'],
  '°C': [1, '°C'],
  hp: [745.69987158227022, 'W'],
  kW: [1000, 'W'],
  h: [3600, 's'],
  min: [60, 's'],
};

/**
 * A measure in SI units (temperatures in degrees Celsius), unrounded: what is kept stays as it was entered.
 * @example deriveSi({ amount: 20, unit: 'mph' }) // { amount: 8.9408, unit: 'm/s' }
 * @example deriveSi({ amount: 50, unit: '°F' }) // { amount: 10, unit: '°C' }
 */
export function deriveSi({ amount, unit }: Quantity): SiQuantity {
  if (unit === '°F') return { amount: ((amount - 32) * 5) / 9, unit: '°C' };
  const [factor, si] = FACTORS[unit];
  return { amount: amount * factor, unit: si };
}
