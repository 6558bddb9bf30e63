import { describe, expect, it } from 'vitest';
import { deriveSi } from '../../shared/record/derive-si.js';
import { UNITS_OF, type Quantity } from '../../shared/record/quantity-as-entered.js';

describe('a measure in SI units', () => {
  // International foot 0.3048 m, nautical mile 1852 m, mile 1609.344 m: exact (NIST SP 811, appendix B; memory).
  it.each<[Quantity, number, string]>([
    [{ amount: 20, unit: 'mph' }, 8.9408, 'm/s'],
    [{ amount: 10, unit: 'kn' }, 5.144444, 'm/s'],
    [{ amount: 36, unit: 'km/h' }, 10, 'm/s'],
    [{ amount: 4, unit: 'ft' }, 1.2192, 'm'],
    [{ amount: 6, unit: 'in' }, 0.1524, 'm'],
    [{ amount: 1, unit: 'nmi' }, 1852, 'm'],
    [{ amount: 1, unit: 'mi' }, 1609.344, 'm'],
    [{ amount: 32, unit: '°F' }, 0, '°C'],
    [{ amount: 212, unit: '°F' }, 100, '°C'],
    [{ amount: -40, unit: '°F' }, -40, '°C'],
    [{ amount: 1, unit: 'hp' }, 745.699872, 'W'],
    [{ amount: 1.5, unit: 'h' }, 5400, 's'],
  ])('%j is %d %s', (quantity, amount, unit) => {
    const si = deriveSi(quantity);
    expect(si.amount).toBeCloseTo(amount, 6);
    expect(si.unit).toBe(unit);
  });

  it.each(Object.entries(UNITS_OF))('has one unit for every %s', (_dimension, units) => {
    expect(new Set(units.map((unit) => deriveSi({ amount: 1, unit }).unit)).size).toBe(1);
  });
});
