import fc from 'fast-check';
import { Entity, type QueryRunner } from 'typeorm';
import { beforeAll, describe, expect, it } from 'vitest';
import { id, reference, text } from '../../migrations/kit/columns.js';
import { indexWords } from '../../migrations/kit/index-words.js';
import { Migration } from '../../migrations/kit/migration.js';
import { createTable } from '../../migrations/kit/tables.js';
import { IdColumn, ReferenceColumn, TextColumn } from '../../src/server/platform/database/columns.js';
import { withWords, wordsOf } from '../../src/server/platform/database/with-words.js';
import { describeEngine, describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';

@Entity('book')
class BookRow {
  @IdColumn() id: string;
}

@Entity('page')
class PageRow {
  @ReferenceColumn('book', { primary: true }) bookId: string;
  @TextColumn({ primary: true }) part: string;
  @TextColumn() words: string;
}

class CreateBooks4102444800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'book', [id()]);
    const page = [reference('book_id', 'book'), text('part'), text('words')];
    await createTable(runner, 'page', page, { primary: ['book_id', 'part'] });
    await runner.query(`INSERT INTO book (id) VALUES ('before')`);
    await runner.query(`INSERT INTO page (book_id, part, words) VALUES ('before', 'a', 'already these')`);
    await indexWords(runner, { table: 'page', key: ['book_id', 'part'], column: 'words' });
  }
}

const BOOKS = { rows: [BookRow, PageRow], migrations: [CreateBooks4102444800000] };

/** Texts as `searchable` leaves them: lower case, without accents. */
const PAGES: [book: string, part: string, words: string][] = [
  ['whale', 'a', 'the will to sail: leaking boiler at o’hare, unit 7a'],
  ['whale', 'b', 'zolw at&t (512) 555-0100, seat b/12, mail ana.ruiz@example.org'],
  ['gull', 'a', 'the gull, hull abc12345d404; boilers 1e5 -7 3.5 0007'],
  ['gull', 'b', 'may waved "stop" / col:umn http://dock.example/a_b'],
];

describeEngines('a search for words', BOOKS, (desk) => {
  const find = async (phrase: string): Promise<string[]> => {
    const query = desk.unitOfWork.manager.createQueryBuilder(BookRow, 'b').orderBy('b.id');
    const of = { table: 'page', column: 'words', owner: 'book_id', id: 'b.id' };
    return (await withWords(query, of, phrase).getMany()).map((book) => book.id);
  };
  const change = (work: () => Promise<unknown>) => desk.unitOfWork.run(work);
  const manager = () => desk.unitOfWork.manager;

  beforeAll(() =>
    change(async () => {
      await manager().insert(BookRow, [{ id: 'whale' }, { id: 'gull' }]);
      await manager().insert(
        PageRow,
        PAGES.map(([bookId, part, words]) => ({ bookId, part, words })),
      );
    }),
  );

  it.each<[phrase: string, books: string[]]>([
    ['leaking', ['whale']],
    ['boiler', ['gull', 'whale']],
    ['boilers', ['gull']],
    ['will', ['whale']],
    ['the', ['before', 'gull', 'whale']],
    ['May', ['gull']],
    ['Żołw', []],
    ['ZÓLW', ['whale']],
    ['AT&T', ['whale']],
    ["O'Hare", ['whale']],
    ['hare-unit', ['whale']],
    ['555-0100', ['whale']],
    ['(512) 555', ['whale']],
    ['b/12', ['whale']],
    ['ruiz', ['whale']],
    ['example', ['gull', 'whale']],
    ['ABC12345', ['gull']],
    ['12345', []],
    ['1e5', ['gull']],
    ['7', ['gull', 'whale']],
    ['3.5', ['gull']],
    ['0007', ['gull']],
    ['a"b', ['gull', 'whale']],
    ['col:', ['gull']],
    ['umn', ['gull']],
    ['dock', ['gull']],
    ['stop leaking', []],
    ['zolw boiler', ['whale']],
    ['NEAR(gull', []],
    ['gull OR nothing', []],
    ['already', ['before']],
    ['&|!()*"\'', []],
    ['', []],
  ])('%j finds %j', async (phrase, books) => {
    expect(await find(phrase)).toEqual(books);
  });

  it('takes any text for a phrase', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 40 }), async (phrase) => {
        expect(await find(`${phrase} leaking`)).toEqual(
          wordsOf(phrase).length === 0 ? ['whale'] : await find(`leaking ${phrase}`),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('follows a change, and forgets what has been taken out', async () => {
    await change(() => manager().insert(BookRow, { id: 'crab' }));
    const page = { bookId: 'crab', part: 'a' };
    await change(() => manager().insert(PageRow, { ...page, words: 'secretword here' }));
    expect(await find('secretword')).toEqual(['crab']);
    await change(() => manager().update(PageRow, page, { words: 'withdrawn now' }));
    expect([await find('secretword'), await find('withdrawn')]).toEqual([[], ['crab']]);
    await change(() => manager().delete(PageRow, page));
    expect(await find('withdrawn')).toEqual([]);
  });

  it('leaves no drift', async () => {
    expect(await schemaDrift(desk.target, BOOKS.rows)).toEqual([]);
  });
});

// Only SQLite numbers rows anew.
describeEngine('sqlite', 'a search after the file was packed', BOOKS, (desk) => {
  it('still finds what it found', async () => {
    const write = (sql: string) => desk.plainSql(sql);
    await write(`INSERT INTO page VALUES ('before', 'b', 'gone soon'), ('before', 'c', 'stays here')`);
    await write(`DELETE FROM page WHERE part = 'b'`);
    await write('VACUUM');
    await write(`UPDATE page SET words = 'moved there' WHERE part = 'c'`);
    const query = desk.unitOfWork.manager.createQueryBuilder(PageRow, 'p');
    const of = { table: 'page', column: 'words', owner: 'part', id: 'p.part' };
    expect(await withWords(query.clone(), of, 'moved').getMany()).toMatchObject([{ part: 'c' }]);
    expect(await withWords(query.clone(), of, 'stays').getMany()).toEqual([]);
    const integrity = write(
      `INSERT INTO page_search_fts(page_search_fts, rank) VALUES ('integrity-check', 1)`,
    );
    await expect(integrity).resolves.toBeDefined();
  });
});

describe('words', () => {
  it('are letters and digits', () => {
    expect(wordsOf("  AT&T, O'Hare-x Ünïcode 7½ ")).toEqual([
      'at',
      't',
      'o',
      'hare',
      'x',
      'unicode',
      '71',
      '2',
    ]);
  });
});
