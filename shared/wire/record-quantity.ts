import { UNITS_OF, type Dimension, type Quantity, type Unit } from '../record/quantity-as-entered.js';
import { isObject } from './is-object.js';
import { Needed, type ValueRule } from './record-members.js';
import { number, oneOf } from './record-values.js';

const FEWEST: Readonly<Record<Dimension, number>> = {
  speed: 0,
  length: 0,
  temperature: -200,
  power: 0,
  duration: 0,
};

/**
 * A measure of one dimension: only its units are taken, so that no wind is given in feet.
 * @example quantityOf('speed').expected // 'a measure: {"amount", "unit": one of mph, kn, km/h, m/s}'
 */
export function quantityOf(dimension: Dimension): ValueRule {
  const units: readonly Unit[] = UNITS_OF[dimension];

  class QuantityDto implements Quantity {
    @Needed(number(FEWEST[dimension], 1_000_000))
    amount: number;

    @Needed(oneOf(units))
    unit: Unit;
  }

  const expected = `a measure: {"amount", "unit": one of ${units.join(', ')}}`;
  return {
    expected,
    faultOf: (value) => (isObject(value) ? null : `Must be ${expected}.`),
    schema: {},
    part: () => QuantityDto,
  };
}
