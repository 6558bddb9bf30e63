import {
  CALL_CHANNELS,
  CALL_KINDS,
  OVERDUE_ENDS,
  type Call,
  type CallChannel,
  type CallKind,
  type LateNotice,
  type Overdue,
  type OverdueEnd,
  type Party,
} from '../call/call.js';
import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Part, Value } from './record-members.js';
import { count, id, instant, line, lines, oneOf, ternary, text } from './record-values.js';

class PartyDto implements Party {
  @Value(line)
  name?: string;

  @Value(line)
  role?: string;

  @Value(line)
  callBack?: string;

  @Value(line)
  address?: string;
}

class OtherPartyDto implements Party {
  @Needed(id)
  id: string;

  @Value(line)
  name?: string;

  @Value(line)
  role?: string;

  @Value(line)
  callBack?: string;

  @Value(line)
  address?: string;
}

class LateNoticeDto implements LateNotice {
  @KnownFact(text)
  whyNow?: Known<string>;

  @KnownFact(line)
  toldThen?: Known<string>;

  @KnownFact(instant)
  toldThenAt?: Known<string>;

  @KnownFact(text)
  careSince?: Known<string>;

  @KnownFact(text)
  keeps?: Known<string>;
}

class OverdueDto implements Overdue {
  @KnownFact(instant)
  dueBackAt?: Known<string>;

  @KnownFact(instant)
  lastSeenAt?: Known<string>;

  @KnownFact(line)
  lastSeenWhere?: Known<string>;

  @KnownFact(instant)
  lastSpokenAt?: Known<string>;

  @KnownFact(text)
  plan?: Known<string>;

  @Value(lines)
  tried?: string[];

  @Value(stamp)
  searchBegan?: Stamp;

  @KnownFact(oneOf(OVERDUE_ENDS))
  ended?: Known<OverdueEnd>;

  @KnownFact(instant)
  endedAt?: Known<string>;

  @KnownFact(text)
  endedHow?: Known<string>;
}

export class CallDto implements Call {
  @Value(oneOf(CALL_KINDS))
  kind?: CallKind;

  @Value(oneOf(CALL_CHANNELS))
  channel?: CallChannel;

  @Value(stamp)
  taken?: Stamp;

  @Value(line)
  takenBy?: string;

  @Value(line)
  takenWhere?: string;

  @Part(() => PartyDto)
  caller?: PartyDto;

  @Items(() => OtherPartyDto)
  otherParties?: OtherPartyDto[];

  @Value(text)
  said?: string;

  @Value(lines)
  craftNamed?: string[];

  @KnownFact(text)
  happenedWhere?: Known<string>;

  @KnownFact(line)
  happenedWhen?: Known<string>;

  @KnownFact(count)
  peopleInWater?: Known<number>;

  @KnownFact(ternary)
  inDangerNow?: Known<Ternary>;

  @KnownFact(ternary)
  emergencyServicesTold?: Known<Ternary>;

  @Part(() => LateNoticeDto)
  late?: LateNoticeDto;

  @Part(() => OverdueDto)
  overdue?: OverdueDto;
}
