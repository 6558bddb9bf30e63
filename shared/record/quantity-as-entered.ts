/** A measure in the unit in which it was given; it is converted and banded only where a form asks for it. */
export interface Quantity {
  amount: number;
  unit: Unit;
}

export type Unit = 'mph' | 'kn' | 'km/h' | 'm/s' | 'ft' | 'in' | 'm' | '°F' | '°C' | 'hp' | 'kW' | 'h';

export const UNITS: readonly Unit[] = [
  'mph',
  'kn',
  'km/h',
  'm/s',
  'ft',
  'in',
  'm',
  '°F',
  '°C',
  'hp',
  'kW',
  'h',
];
