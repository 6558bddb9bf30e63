import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { Assessment, DamageItem, DamagedThing } from './incident-facts.js';

/** US dollars with at most two decimals, bounds, or not known. */
export type Amount = DamageItem['amount'];

/** One thing damaged or lost. Material and labour are kept apart, as laws differ on which of them counts. */
export interface DamageLine {
  id: string;
  of?: Known<DamagedThing>;
  /** Id of a craft of the section on craft. */
  craft?: string;
  owner?: string;
  what?: string;
  basis?: Known<NonNullable<DamageItem['basis']>>;
  /** In one figure, when nobody has told material from labour. */
  amount?: Known<Amount>;
  material?: Known<Amount>;
  labour?: Known<Amount>;
  /** Against what the check-out sheet showed. */
  newSinceCheckOut?: Known<Ternary>;
}

export type MoneyKind =
  | 'repair-estimate'
  | 'repair-invoice'
  | 'tow'
  | 'salvage'
  | 'storage'
  | 'deductible'
  | 'insurer-total'
  | 'deposit'
  | 'charge'
  | 'refund';

export const MONEY_KINDS: readonly MoneyKind[] = [
  'repair-estimate',
  'repair-invoice',
  'tow',
  'salvage',
  'storage',
  'deductible',
  'insurer-total',
  'deposit',
  'charge',
  'refund',
];

/** That a sum exists, and which paper shows it; how it was paid does not belong here. */
export interface MoneyFact {
  id: string;
  kind?: MoneyKind;
  /** For a deposit, a charge or a refund it is often enough that there is one. */
  exists?: Known<Ternary>;
  amount?: Known<Amount>;
  /** Id of a craft of the section on craft. */
  craft?: string;
  /** Id of the damage line that it is about. */
  line?: string;
  day?: string;
  from?: string;
  to?: string;
  paper?: string;
}

/** How long a craft earned nothing. */
export interface OutOfService {
  id: string;
  craft?: string;
  /** Days of the calendar, YYYY-MM-DD. */
  from?: string;
  until?: string;
  days?: Known<number>;
}

export interface DamageSection {
  /** Is all the damage listed? */
  assessment?: Known<Assessment>;
  lines?: DamageLine[];
  money?: MoneyFact[];
  daysOutOfService?: Known<number>;
  outOfService?: OutOfService[];
}
