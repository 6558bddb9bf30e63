import type { DamagedThing, DamageItem } from '../record/incident-facts.js';
import { dollarsFault } from './check-dollars.js';
import { Fact, IdFact, MayBeAbsent, OneOf, TextFact } from './declare-fact.js';
import { isObject } from './is-object.js';

type Basis = NonNullable<DamageItem['basis']>;

const THINGS: readonly DamagedThing[] = [
  'vessel',
  'vessel-equipment',
  'boating-infrastructure',
  'navigation-aid',
  'other-property',
  'personal-property',
];
const BASES: readonly Basis[] = ['guess', 'estimate', 'quote', 'invoice'];

const AMOUNT = 'US dollars as a number, {"low", "high"} or unknown';

/** A range is an object, and the reader looks at it with its own class. */
function amountFault(value: unknown): string | null {
  if (value === 'unknown' || isObject(value)) return null;
  return typeof value === 'number' ? dollarsFault(value) : `Must be ${AMOUNT}.`;
}

/** One thing damaged or lost. */
export class DamageItemDto implements DamageItem {
  @IdFact()
  id: string;

  @OneOf(THINGS)
  of: DamagedThing;

  @MayBeAbsent()
  @TextFact()
  vessel?: string;

  @MayBeAbsent()
  @TextFact()
  owner?: string;

  @MayBeAbsent()
  @OneOf(BASES)
  basis?: Basis;

  @Fact(AMOUNT, amountFault)
  amount: DamageItem['amount'];
}

/** An amount known only within bounds. */
export class AmountRangeDto {
  @Fact('the least it can be, in US dollars', dollarsFault)
  low: number;

  @Fact('the most it can be, in US dollars', dollarsFault)
  high: number;
}
