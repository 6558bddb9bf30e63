import type { Known } from '../call/known.js';
import type { Quantity } from './quantity-as-entered.js';

/**
 * Weather and water as they were said or measured, each measure in its own unit. Nothing is put into a band here: forms
 * band the same wind differently, and `deriveSi` gives them one figure to begin from.
 */
export interface ConditionsSection {
  /** When this was so (RFC 3339), where it was not at the time of the occurrence. */
  observedAt?: Known<string>;
  weather?: Known<string>;
  water?: Known<string>;
  waves?: Known<Quantity>;
  wind?: Known<Quantity>;
  gusts?: Known<Quantity>;
  windFrom?: Known<string>;
  visibility?: Known<string>;
  visibilityDistance?: Known<Quantity>;
  light?: Known<string>;
  airTemperature?: Known<Quantity>;
  waterTemperature?: Known<Quantity>;
  waterDepth?: Known<Quantity>;
  waterLevel?: Known<string>;
  current?: Known<string>;
  currentSpeed?: Known<Quantity>;
  traffic?: Known<string>;
  hazards?: Known<string>;
  /** 33 CFR 173.57 asks for both: what the operator could have had, and what was used. */
  forecastAvailable?: Known<string>;
  forecastUsed?: Known<string>;
}
