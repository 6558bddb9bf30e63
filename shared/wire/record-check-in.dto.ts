import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import {
  RENTER_ANSWERS,
  type CheckInFinding,
  type CheckInSection,
  type RenterAnswer,
} from '../record/check-in-section.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { id, instant, line, lines, oneOf, ternary, text } from './record-values.js';

class CheckInFindingDto implements CheckInFinding {
  @Needed(id)
  id: string;

  @Value(id)
  craft?: string;

  @Value(line)
  where?: string;

  @Value(text)
  what?: string;

  @KnownFact(ternary)
  shownAtCheckOut?: Known<Ternary>;

  @KnownFact(oneOf(RENTER_ANSWERS))
  renterAnswer?: Known<RenterAnswer>;

  @Value(lines)
  photographs?: string[];

  @Value(id)
  damageLine?: string;
}

export class CheckInDto implements CheckInSection {
  @KnownFact(instant)
  departedAt?: Known<string>;

  @KnownFact(instant)
  returnedAt?: Known<string>;

  @Value(stamp)
  inspected?: Stamp;

  @Value(line)
  by?: string;

  @Value(line)
  renter?: string;

  @Value(text)
  checkOutSheet?: string;

  @Items(() => CheckInFindingDto)
  findings?: CheckInFindingDto[];

  @KnownFact(text)
  found?: Known<string>;

  @KnownFact(oneOf(RENTER_ANSWERS))
  renterAnswer?: Known<RenterAnswer>;

  @Value(text)
  renterWords?: string;

  @Value(line)
  signature?: string;

  @Value(stamp)
  signed?: Stamp;
}
