import type { CustodyItem, HandOver } from '../record/evidence-section.js';
import { ids } from './evidence-values.js';
import { account, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { instant, line } from './record-values.js';

/** A thing kept as evidence. It may be entered with gaps, which are then named. */
export class CustodyItemDto implements Omit<CustodyItem, 'id' | 'version' | 'handOvers'> {
  @Needed(account('what it is', 2000))
  what: string;

  @Value(line)
  foundWhere?: string;

  @Value(instant)
  foundAt?: string;

  @Value(line)
  foundBy?: string;

  @Value(line)
  keptWhere?: string;

  @Value(line)
  seal?: string;

  /** Ids of photographs of it, taken before it was moved. */
  @Value(ids)
  photographs?: string[];
}

/** Each is added and never changed: a wrong one gets another behind it. */
export class HandOverDto implements Omit<HandOver, 'id'> {
  @Needed(words('who gave it'))
  from: string;

  @Needed(words('who took it'))
  to: string;

  @Needed(instant)
  at: string;

  @Needed(account('why', 2000))
  why: string;

  @Value(line)
  seal?: string;

  @Value(line)
  keptWhere?: string;
}
