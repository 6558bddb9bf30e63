import { beforeAll, expect, it } from 'vitest';
import { Clock } from '../../src/server/platform/clock.js';
import { CreateOnce, KeyUsedBeforeError } from '../../src/server/platform/database/create-once.js';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';
import { NOTES, ShelfRow } from './notes.js';

const PARTS = { rows: [CreateOnceRow, ...NOTES.rows], migrations: NOTES.migrations };

describeEngines('a create with a key', PARTS, (desk) => {
  let createOnce: CreateOnce;
  beforeAll(() => {
    createOnce = new CreateOnce(desk.unitOfWork, new Clock());
  });
  const shelves = () => desk.unitOfWork.manager.count(ShelfRow);
  const makeShelf = (id: string) => desk.unitOfWork.manager.insert(ShelfRow, { id }).then(() => undefined);
  const request = (key: string, body: unknown = { name: 'A' }, operation = 'shelf') => ({
    operation,
    key,
    body,
  });

  it('has a table that is what the row declares', async () => {
    expect(await schemaDrift(desk.target, PARTS.rows)).toEqual([]);
  });

  it('is done once, and a retry is told what the first one made', async () => {
    const before = await shelves();
    const first = await createOnce.run(request('key-of-a-retry'), makeShelf);
    expect(first.again).toBe(false);
    expect(await createOnce.run(request('key-of-a-retry'), makeShelf)).toEqual({ id: first.id, again: true });
    expect(await shelves()).toBe(before + 1);
  });

  it('is done once when twenty retries arrive together', async () => {
    const before = await shelves();
    const answers = await Promise.all(
      Array.from({ length: 20 }, () => createOnce.run(request('key-of-a-burst'), makeShelf)),
    );
    expect(new Set(answers.map(({ id }) => id)).size).toBe(1);
    expect(answers.filter(({ again }) => !again)).toHaveLength(1);
    expect(await shelves()).toBe(before + 1);
  });

  it('keeps no key of a create that failed, so that the retry creates', async () => {
    const fails = () => Promise.reject(new Error('not today'));
    await expect(createOnce.run(request('key-of-a-failure'), fails)).rejects.toThrow('not today');
    expect(await createOnce.run(request('key-of-a-failure'), makeShelf)).toMatchObject({ again: false });
  });

  it('refuses a key that comes again with another body, and creates nothing', async () => {
    await createOnce.run(request('key-used-twice'), makeShelf);
    const before = await shelves();
    const other = createOnce.run(request('key-used-twice', { name: 'B' }), makeShelf);
    await expect(other).rejects.toBeInstanceOf(KeyUsedBeforeError);
    expect(await shelves()).toBe(before);
  });

  it('counts a key within its operation', async () => {
    await createOnce.run(request('key-of-two-operations'), makeShelf);
    const other = await createOnce.run(request('key-of-two-operations', {}, 'other'), makeShelf);
    expect(other.again).toBe(false);
  });

  it('keeps nothing of what was sent', async () => {
    await createOnce.run(request('key-of-a-secret', { born: '1990-04-01' }), makeShelf);
    const rows = await desk.plainSql('SELECT * FROM create_once');
    expect(JSON.stringify(rows)).not.toContain('1990-04-01');
  });
});
