import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';

/** What dispatch logged, by its own clock (RFC 3339): read off its log or told by it, beside our times. */
export interface DispatchTimes {
  received?: Known<string>;
  sent?: Known<string>;
  onScene?: Known<string>;
  atHospital?: Known<string>;
  cleared?: Known<string>;
}

export type ResponderKind =
  'our-crew' | 'coast-guard' | 'warden' | 'police' | 'fire' | 'ambulance' | 'tow' | 'passer-by' | 'other';

export const RESPONDER_KINDS: readonly ResponderKind[] = [
  'our-crew',
  'coast-guard',
  'warden',
  'police',
  'fire',
  'ambulance',
  'tow',
  'passer-by',
  'other',
];

/** One call of ours for help: to whom, when, what was said. */
export interface HelpCall {
  id: string;
  to?: string;
  number?: string;
  /** Telephone, VHF channel 16. */
  channel?: string;
  by?: string;
  made?: Stamp;
  answered?: Stamp;
  /** Whom we spoke to there. */
  answeredBy?: string;
  theirReference?: string;
  said?: string;
  dispatch?: DispatchTimes;
}

/** One crew or service that came: ours, Coast Guard, wardens, ambulance, a passer-by. */
export interface Responder {
  id: string;
  who?: string;
  kind?: ResponderKind;
  crew?: string[];
  /** What they came with. */
  craft?: string;
  left?: Stamp;
  onScene?: Stamp;
  careBegun?: Stamp;
  handedOver?: Stamp;
  atHospital?: Stamp;
  back?: Stamp;
  /** Ids of the people whom they cared for. */
  patients?: string[];
  care?: Known<string>;
  handedTo?: string;
  hospital?: string;
  gearUsed?: string[];
  dispatch?: DispatchTimes;
}

export interface EmergencyResponseSection {
  emergencyServicesCalled?: Known<Ternary>;
  calls?: HelpCall[];
  responders?: Responder[];
  headcountExpected?: Known<number>;
  headcountFound?: Known<number>;
  headcountDone?: Stamp;
  headcountBy?: string;
}

export interface Officer {
  id: string;
  name?: string;
  badge?: string;
  agency?: string;
  reportNumber?: string;
  phone?: string;
  arrived?: Stamp;
  left?: Stamp;
  filedReport?: Known<Ternary>;
  tests?: Known<string>;
  citations?: Known<string>;
  askedNotToInterview?: Known<Ternary>;
  /** Whom not, until when: in the officer's words. */
  instructions?: Known<string>;
}

/** What an officer is given on one sheet, as it stood when it was given. */
export interface OfficerSheet {
  owner?: string;
  hullNumber?: string;
  registrationNumber?: string;
  operator?: string;
  riders?: string[];
  agreement?: string;
  insurer?: string;
}

export type HandOverBasis = 'asked' | 'offered' | 'subpoena' | 'warrant';

export const HAND_OVER_BASES: readonly HandOverBasis[] = ['asked', 'offered', 'subpoena', 'warrant'];

/** Something given to an authority, logged as given: it is not altered afterwards. */
export interface HandedOver {
  id: string;
  what?: string;
  /** Id of an officer of this section, where it is one of them. */
  officer?: string;
  to?: string;
  by?: string;
  at?: Stamp;
  basis?: HandOverBasis;
  receipt?: string;
  sheet?: OfficerSheet;
}

export interface AuthoritiesSection {
  officerAtScene?: Known<Ternary>;
  officerFiledReport?: Known<Ternary>;
  officers?: Officer[];
  handedOver?: HandedOver[];
}
