import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';

/** One call of ours for help: to whom, when, what was said. */
export interface HelpCall {
  id: string;
  to?: string;
  number?: string;
  by?: string;
  made?: Stamp;
  theirReference?: string;
  said?: string;
}

/** One crew or service that came: ours, Coast Guard, wardens, ambulance, a passer-by. */
export interface Responder {
  id: string;
  who?: string;
  craft?: string;
  left?: Stamp;
  onScene?: Stamp;
  careBegun?: Stamp;
  handedOver?: Stamp;
  care?: Known<string>;
  handedTo?: string;
  hospital?: string;
  gearUsed?: string[];
}

export interface EmergencyResponseSection {
  emergencyServicesCalled?: Known<Ternary>;
  calls?: HelpCall[];
  responders?: Responder[];
  headcountExpected?: Known<number>;
  headcountFound?: Known<number>;
}

export interface Officer {
  id: string;
  name?: string;
  badge?: string;
  agency?: string;
  reportNumber?: string;
  arrived?: Stamp;
  filedReport?: Known<Ternary>;
  tests?: Known<string>;
  citations?: Known<string>;
  askedNotToInterview?: Known<Ternary>;
}

/** Something given to an authority, logged as given. */
export interface HandedOver {
  id: string;
  what?: string;
  to?: string;
  by?: string;
  at?: Stamp;
}

export interface AuthoritiesSection {
  officerAtScene?: Known<Ternary>;
  officerFiledReport?: Known<Ternary>;
  officers?: Officer[];
  handedOver?: HandedOver[];
}
