import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import {
  RESPONDER_KINDS,
  type DispatchTimes,
  type EmergencyResponseSection,
  type HelpCall,
  type Responder,
  type ResponderKind,
} from '../record/response-sections.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Part, Value } from './record-members.js';
import { count, id, ids, instant, line, lines, oneOf, ternary, text } from './record-values.js';

class DispatchTimesDto implements DispatchTimes {
  @KnownFact(instant)
  received?: Known<string>;

  @KnownFact(instant)
  sent?: Known<string>;

  @KnownFact(instant)
  onScene?: Known<string>;

  @KnownFact(instant)
  atHospital?: Known<string>;

  @KnownFact(instant)
  cleared?: Known<string>;
}

class HelpCallDto implements HelpCall {
  @Needed(id)
  id: string;

  @Value(line)
  to?: string;

  @Value(line)
  number?: string;

  @Value(line)
  channel?: string;

  @Value(line)
  by?: string;

  @Value(stamp)
  made?: Stamp;

  @Value(stamp)
  answered?: Stamp;

  @Value(line)
  answeredBy?: string;

  @Value(line)
  theirReference?: string;

  @Value(text)
  said?: string;

  @Part(() => DispatchTimesDto)
  dispatch?: DispatchTimesDto;
}

class ResponderDto implements Responder {
  @Needed(id)
  id: string;

  @Value(line)
  who?: string;

  @Value(oneOf(RESPONDER_KINDS))
  kind?: ResponderKind;

  @Value(lines)
  crew?: string[];

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

  @Value(stamp)
  atHospital?: Stamp;

  @Value(stamp)
  back?: Stamp;

  @Value(ids)
  patients?: string[];

  @KnownFact(text)
  care?: Known<string>;

  @Value(line)
  handedTo?: string;

  @Value(line)
  hospital?: string;

  @Value(lines)
  gearUsed?: string[];

  @Part(() => DispatchTimesDto)
  dispatch?: DispatchTimesDto;
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

  @Value(stamp)
  headcountDone?: Stamp;

  @Value(line)
  headcountBy?: string;
}
