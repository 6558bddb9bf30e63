import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { Occurred, Position, TimeAndPlace } from '../record/time-and-place.js';
import { occurred, position } from './record-compounds.js';
import { KnownFact, Value } from './record-members.js';
import { line, states, ternary, text, timeZone } from './record-values.js';

export class TimeAndPlaceDto implements TimeAndPlace {
  @KnownFact(occurred)
  occurred?: Known<Occurred>;

  @KnownFact(timeZone)
  timeZone?: Known<string>;

  @KnownFact(position)
  position?: Known<Position>;

  @KnownFact(states)
  states?: Known<string[]>;

  @KnownFact(line)
  waterBody?: Known<string>;

  @KnownFact(line)
  nearestTown?: Known<string>;

  @KnownFact(line)
  county?: Known<string>;

  @KnownFact(text)
  description?: Known<string>;

  @Value(line)
  namedPlace?: string;

  @KnownFact(ternary)
  federalWaters?: Known<Ternary>;
}
