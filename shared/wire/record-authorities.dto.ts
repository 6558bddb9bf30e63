import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import {
  HAND_OVER_BASES,
  type AuthoritiesSection,
  type HandedOver,
  type HandOverBasis,
  type Officer,
  type OfficerSheet,
} from '../record/response-sections.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Part, Value } from './record-members.js';
import { id, line, lines, oneOf, ternary, text } from './record-values.js';

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

  @Value(line)
  phone?: string;

  @Value(stamp)
  arrived?: Stamp;

  @Value(stamp)
  left?: Stamp;

  @KnownFact(ternary)
  filedReport?: Known<Ternary>;

  @KnownFact(text)
  tests?: Known<string>;

  @KnownFact(text)
  citations?: Known<string>;

  @KnownFact(ternary)
  askedNotToInterview?: Known<Ternary>;

  @KnownFact(text)
  instructions?: Known<string>;
}

class OfficerSheetDto implements OfficerSheet {
  @Value(line)
  owner?: string;

  @Value(line)
  hullNumber?: string;

  @Value(line)
  registrationNumber?: string;

  @Value(line)
  operator?: string;

  @Value(lines)
  riders?: string[];

  @Value(line)
  agreement?: string;

  @Value(line)
  insurer?: string;
}

class HandedOverDto implements HandedOver {
  @Needed(id)
  id: string;

  @Value(text)
  what?: string;

  @Value(id)
  officer?: string;

  @Value(line)
  to?: string;

  @Value(line)
  by?: string;

  @Value(stamp)
  at?: Stamp;

  @Value(oneOf(HAND_OVER_BASES))
  basis?: HandOverBasis;

  @Value(line)
  receipt?: string;

  @Part(() => OfficerSheetDto)
  sheet?: OfficerSheetDto;
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
