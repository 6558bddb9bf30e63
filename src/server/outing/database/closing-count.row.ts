import { Entity, Index } from 'typeorm';
import type { CountAnswer } from '../../../../shared/wire/outing-requests.dto.js';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What somebody answered for a craft at a count. */
export interface CountedCraft {
  readonly craftId: string;
  readonly unitName: string;
  readonly answer: CountAnswer;
  readonly where: string | null;
  readonly person: string;
  /** RFC 3339. */
  readonly at: string;
}

/** What closing a count set off, by units of craft. */
export interface CountOutcome {
  readonly opened: readonly string[];
  readonly markedBack: readonly string[];
  /** Counted in or elsewhere while "not back" is open: somebody has to end it. */
  readonly stillToEnd: readonly string[];
}

/** The count at closing: in or out for every craft, signed by who counted. */
@Entity('closing_count')
@Index(['day'])
@Index(['closedAt'])
export class ClosingCountRow {
  @IdColumn() id: string;
  @ReferenceColumn('station', { nullable: true }) stationId: string | null;
  @DayColumn() day: string;
  @JsonColumn() answers: CountedCraft[];
  @TextColumn() openedBy: string;
  @InstantColumn() openedAt: string;
  @TextColumn({ nullable: true }) closedById: string | null;
  @TextColumn({ nullable: true }) closedBy: string | null;
  @InstantColumn({ nullable: true }) closedAt: string | null;
  @JsonColumn({ nullable: true }) outcome: CountOutcome | null;
  @IntegerColumn() version: number;
}
