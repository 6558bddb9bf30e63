import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import type {
  AuthoritiesSection,
  EmergencyResponseSection,
  HandedOver,
  HelpCall,
  Officer,
  Responder,
} from '../record/response-sections.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { count, id, line, lines, ternary, text } from './record-values.js';

class HelpCallDto implements HelpCall {
  @Needed(id)
  id: string;

  @Value(line)
  to?: string;

  @Value(line)
  number?: string;

  @Value(line)
  by?: string;

  @Value(stamp)
  made?: Stamp;

  @Value(line)
  theirReference?: string;

  @Value(text)
  said?: string;
}

class ResponderDto implements Responder {
  @Needed(id)
  id: string;

  @Value(line)
  who?: string;

  @Value(line)
  craft?: string;

  @Value(stamp)
  left?: Stamp;

  @Value(stamp)
  onScene?: Stamp;

  @Value(stamp)
  careBegun?: Stamp;

  @Value(stamp)
  handedOver?: Stamp;

  @KnownFact(text)
  care?: Known<string>;

  @Value(line)
  handedTo?: string;

  @Value(line)
  hospital?: string;

  @Value(lines)
  gearUsed?: string[];
}

export class EmergencyResponseDto implements EmergencyResponseSection {
  @KnownFact(ternary)
  emergencyServicesCalled?: Known<Ternary>;

  @Items(() => HelpCallDto)
  calls?: HelpCallDto[];

  @Items(() => ResponderDto)
  responders?: ResponderDto[];

  @KnownFact(count)
  headcountExpected?: Known<number>;

  @KnownFact(count)
  headcountFound?: Known<number>;
}

class OfficerDto implements Officer {
  @Needed(id)
  id: string;

  @Value(line)
  name?: string;

  @Value(line)
  badge?: string;

  @Value(line)
  agency?: string;

  @Value(line)
  reportNumber?: string;

  @Value(stamp)
  arrived?: Stamp;

  @KnownFact(ternary)
  filedReport?: Known<Ternary>;

  @KnownFact(text)
  tests?: Known<string>;

  @KnownFact(text)
  citations?: Known<string>;

  @KnownFact(ternary)
  askedNotToInterview?: Known<Ternary>;
}

class HandedOverDto implements HandedOver {
  @Needed(id)
  id: string;

  @Value(text)
  what?: string;

  @Value(line)
  to?: string;

  @Value(line)
  by?: string;

  @Value(stamp)
  at?: Stamp;
}

export class AuthoritiesDto implements AuthoritiesSection {
  @KnownFact(ternary)
  officerAtScene?: Known<Ternary>;

  @KnownFact(ternary)
  officerFiledReport?: Known<Ternary>;

  @Items(() => OfficerDto)
  officers?: OfficerDto[];

  @Items(() => HandedOverDto)
  handedOver?: HandedOverDto[];
}
