/** What is measured. */
export type Dimension = 'speed' | 'length' | 'temperature' | 'power' | 'duration';

/** The units of each dimension in which people here measure. */
export const UNITS_OF = {
  speed: ['mph', 'kn', 'km/h', 'm/s'],
  length: ['ft', 'in', 'yd', 'mi', 'nmi', 'm', 'km'],
  temperature: ['°F', '°C'],
  power: ['hp', 'kW'],
  duration: ['h', 'min'],
} as const satisfies Readonly<Record<Dimension, readonly string[]>>;

export type Unit = (typeof UNITS_OF)[Dimension][number];

/** A measure in the unit in which it was given; it is converted and banded only where a form asks for it. */
export interface Quantity {
  amount: number;
  unit: Unit;
}
