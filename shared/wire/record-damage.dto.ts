import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import {
  MONEY_KINDS,
  type Amount,
  type DamageLine,
  type DamageSection,
  type MoneyFact,
  type MoneyKind,
  type OutOfService,
} from '../record/damage-section.js';
import type { Assessment, DamagedThing, DamageItem } from '../record/incident-facts.js';
import { ASSESSMENTS } from './record-people.dto.js';
import { amount } from './record-compounds.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { count, day, id, line, oneOf, ternary, text } from './record-values.js';

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

class DamageLineDto implements DamageLine {
  @Needed(id)
  id: string;

  @KnownFact(oneOf(THINGS))
  of?: Known<DamagedThing>;

  @Value(id)
  craft?: string;

  @Value(line)
  owner?: string;

  @Value(text)
  what?: string;

  @KnownFact(oneOf(BASES))
  basis?: Known<Basis>;

  @KnownFact(amount)
  amount?: Known<Amount>;

  @KnownFact(amount)
  material?: Known<Amount>;

  @KnownFact(amount)
  labour?: Known<Amount>;

  @KnownFact(ternary)
  newSinceCheckOut?: Known<Ternary>;
}

class MoneyFactDto implements MoneyFact {
  @Needed(id)
  id: string;

  @Value(oneOf(MONEY_KINDS))
  kind?: MoneyKind;

  @KnownFact(ternary)
  exists?: Known<Ternary>;

  @KnownFact(amount)
  amount?: Known<Amount>;

  @Value(id)
  craft?: string;

  @Value(id)
  line?: string;

  @Value(day)
  day?: string;

  @Value(line)
  from?: string;

  @Value(line)
  to?: string;

  @Value(line)
  paper?: string;
}

class OutOfServiceDto implements OutOfService {
  @Needed(id)
  id: string;

  @Value(id)
  craft?: string;

  @Value(day)
  from?: string;

  @Value(day)
  until?: string;

  @KnownFact(count)
  days?: Known<number>;
}

export class DamageSectionDto implements DamageSection {
  @KnownFact(oneOf(ASSESSMENTS))
  assessment?: Known<Assessment>;

  @Items(() => DamageLineDto)
  lines?: DamageLineDto[];

  @Items(() => MoneyFactDto)
  money?: MoneyFactDto[];

  @KnownFact(count)
  daysOutOfService?: Known<number>;

  @Items(() => OutOfServiceDto)
  outOfService?: OutOfServiceDto[];
}
