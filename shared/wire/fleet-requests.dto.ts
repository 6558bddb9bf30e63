import { PageQueryDto } from './page-query.dto.js';
import { Fact, MayBeAbsent, OneOf } from './declare-fact.js';
import { account, cents } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { day, number, oneOf } from './record-values.js';

export const NOTE_SUBJECTS = ['maintenance', 'prior-trip', 'inspection'] as const;

/** What was done to a craft or noticed about it. A prior-trip note is what came back with an earlier renter. */
export class CraftNoteDto {
  @Needed(oneOf(NOTE_SUBJECTS))
  about: (typeof NOTE_SUBJECTS)[number];

  @Needed(account('the note', 4000))
  text: string;

  /** The day it is about, where that is not today. */
  @Value(day)
  day?: string;

  @Value(number(0, 1_000_000, 'a number of hours'))
  hourMeter?: number;
}

/** Below this amount a shift lead releases a craft after damage alone. */
export class ReleaseAmountDto {
  @Needed(cents)
  amountCents: number;
}

/** Lists of the fleet leave out what is retired unless it is asked for. */
export class FleetQueryDto extends PageQueryDto {
  @MayBeAbsent()
  @OneOf(['yes', 'no'])
  retired?: string;
}

const LONGEST_CALL = 2000;
const WORDS = `the words of the caller, at most ${LONGEST_CALL} characters`;

export class CraftWordsDto {
  @Fact(WORDS, (value) =>
    typeof value === 'string' && value.length <= LONGEST_CALL ? null : `Must be ${WORDS}.`,
  )
  words: string;
}
