import { photographs, words } from './fleet-values.js';
import { Needed, Value, type ValueRule } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { instant, number, oneOf } from './record-values.js';

const kind = (word: string): ValueRule => oneOf([word]);
const reason = words('the reason', 500);
const person = words('the name of a person', 120);
const hours = number(0, 1_000_000, 'a number of hours');
const receipt = words('the number of the receipt', 120);

/** Out for upkeep; an incident takes its craft out by itself. `at` is when it was so, where that is not now. */
export class TakenOutDto {
  @Needed(kind('taken-out'))
  kind: 'taken-out';

  @Value(instant)
  at?: string;

  @Needed(reason)
  reason: string;
}

/** `incident` is left out where the craft is out for upkeep; so it is in the two below. */
export class PhotographedDto {
  @Needed(kind('photographed'))
  kind: 'photographed';

  @Value(instant)
  at?: string;

  @Value(uuid)
  incident?: string;

  @Needed(photographs)
  photographs: string[];
}

export class ReleasedDto {
  @Needed(kind('released'))
  kind: 'released';

  @Value(instant)
  at?: string;

  @Value(uuid)
  incident?: string;

  @Value(photographs)
  photographs?: string[];

  @Value(words('a remark', 500))
  remark?: string;
}

export class ClearedDto {
  @Needed(kind('cleared'))
  kind: 'cleared';

  @Value(instant)
  at?: string;

  @Needed(uuid)
  incident: string;

  @Needed(oneOf(['counsel', 'insurer']))
  by: 'counsel' | 'insurer';

  @Needed(person)
  person: string;

  @Needed(words('how it was given: by letter, by mail of which day, by telephone', 300))
  how: string;

  @Value(words('their reference', 120))
  reference?: string;
}

export class HeldByAgencyDto {
  @Needed(kind('held-by-agency'))
  kind: 'held-by-agency';

  @Value(instant)
  at?: string;

  @Needed(words('the agency', 120))
  agency: string;

  @Value(person)
  officer?: string;

  @Value(words('the number on the badge', 60))
  badge?: string;

  @Value(receipt)
  receipt?: string;

  /** Taken before it was handed over. */
  @Value(photographs)
  photographs?: string[];

  @Value(hours)
  hourMeter?: number;

  @Value(words('where the agency keeps it', 200))
  keptWhere?: string;
}

export class ReturnedByAgencyDto {
  @Needed(kind('returned-by-agency'))
  kind: 'returned-by-agency';

  @Value(instant)
  at?: string;

  @Value(person)
  handedOverBy?: string;

  @Value(receipt)
  receipt?: string;

  @Value(photographs)
  photographs?: string[];

  @Value(hours)
  hourMeter?: number;
}

export class DoNotStartDto {
  @Needed(kind('do-not-start'))
  kind: 'do-not-start';

  @Value(instant)
  at?: string;

  @Needed(reason)
  reason: string;
}

export class StartAllowedDto {
  @Needed(kind('start-allowed'))
  kind: 'start-allowed';

  @Value(instant)
  at?: string;

  @Needed(reason)
  reason: string;
}
