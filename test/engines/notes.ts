import type { QueryRunner } from 'typeorm';
import { Entity, Index, Unique } from 'typeorm';
import {
  choice,
  cents,
  day,
  flag,
  id,
  instant,
  integer,
  json,
  number,
  reference,
  text,
} from '../../migrations/kit/columns.js';
import { Migration } from '../../migrations/kit/migration.js';
import { createTable } from '../../migrations/kit/tables.js';
import {
  CentsColumn,
  ChoiceColumn,
  DayColumn,
  FlagColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  NumberColumn,
  ReferenceColumn,
  TextColumn,
} from '../../src/server/platform/database/columns.js';

/** Two tables of these tests' own, with a column of every kind. */
export const KINDS = ['plain', "sailor's"] as const;

@Entity('shelf')
export class ShelfRow {
  @IdColumn() id: string;
}

@Entity('note')
@Unique(['shelfId', 'title'])
@Index(['writtenAt'])
@Index('ix_note_pinned', ['shelfId'], { unique: true, where: '"pinned"' })
export class NoteRow {
  @IdColumn() id: string;
  @ReferenceColumn('shelf') shelfId: string;
  @TextColumn() title: string;
  @ChoiceColumn(KINDS) kind: (typeof KINDS)[number];
  @InstantColumn() writtenAt: string;
  @DayColumn({ nullable: true }) dueOn: string | null;
  @CentsColumn({ nullable: true }) costCents: number | null;
  @IntegerColumn() version: number;
  @NumberColumn({ nullable: true }) latitude: number | null;
  @FlagColumn() pinned: boolean;
  @JsonColumn({ nullable: true }) detail: object | null;
}

export class CreateNotes4102444800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'shelf', [id()]);
    await createTable(
      runner,
      'note',
      [
        id(),
        reference('shelf_id', 'shelf'),
        text('title'),
        choice('kind', KINDS),
        instant('written_at'),
        day('due_on', { nullable: true }),
        cents('cost_cents', { nullable: true }),
        integer('version'),
        number('latitude', { nullable: true }),
        flag('pinned'),
        json('detail', { nullable: true }),
      ],
      {
        unique: [['shelf_id', 'title']],
        indexes: [
          { columns: ['written_at'] },
          { columns: ['shelf_id'], unique: true, where: '"pinned"', name: 'ix_note_pinned' },
        ],
      },
    );
  }
}

export const NOTES = { rows: [ShelfRow, NoteRow], migrations: [CreateNotes4102444800000] };

let count = 0;

/** A note on the shelf `s`, with an id of its own and whatever the test cares about. */
export function aNote(different: Partial<NoteRow> = {}): NoteRow {
  count += 1;
  return Object.assign(new NoteRow(), {
    id: `note-${count}`,
    shelfId: 's',
    title: `Title ${count}`,
    kind: 'plain',
    writtenAt: '2026-06-13T16:20:00.000Z',
    version: 1,
    pinned: false,
    ...different,
  });
}
