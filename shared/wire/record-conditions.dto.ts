import type { Known } from '../call/known.js';
import type { ConditionsSection } from '../record/conditions-section.js';
import type { Quantity } from '../record/quantity-as-entered.js';
import { quantityOf } from './record-quantity.js';
import { KnownFact } from './record-members.js';
import { instant, line, text } from './record-values.js';

const length = quantityOf('length');
const speed = quantityOf('speed');
const temperature = quantityOf('temperature');

export class ConditionsDto implements ConditionsSection {
  @KnownFact(instant)
  observedAt?: Known<string>;

  @KnownFact(line)
  weather?: Known<string>;

  @KnownFact(line)
  water?: Known<string>;

  @KnownFact(length)
  waves?: Known<Quantity>;

  @KnownFact(speed)
  wind?: Known<Quantity>;

  @KnownFact(speed)
  gusts?: Known<Quantity>;

  @KnownFact(line)
  windFrom?: Known<string>;

  @KnownFact(line)
  visibility?: Known<string>;

  @KnownFact(length)
  visibilityDistance?: Known<Quantity>;

  @KnownFact(line)
  light?: Known<string>;

  @KnownFact(temperature)
  airTemperature?: Known<Quantity>;

  @KnownFact(temperature)
  waterTemperature?: Known<Quantity>;

  @KnownFact(length)
  waterDepth?: Known<Quantity>;

  @KnownFact(line)
  waterLevel?: Known<string>;

  @KnownFact(line)
  current?: Known<string>;

  @KnownFact(speed)
  currentSpeed?: Known<Quantity>;

  @KnownFact(line)
  traffic?: Known<string>;

  @KnownFact(text)
  hazards?: Known<string>;

  @KnownFact(text)
  forecastAvailable?: Known<string>;

  @KnownFact(text)
  forecastUsed?: Known<string>;
}
