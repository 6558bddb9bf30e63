import { beforeAll, describe, expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { aNote, NoteRow, NOTES, ShelfRow } from './notes.js';

describeEngines('outside a unit of work', NOTES, (desk) => {
  const manager = () => desk.unitOfWork.manager;
  const note = aNote({
    kind: "sailor's",
    writtenAt: '2026-06-13T11:20:00-05:00',
    dueOn: '2028-02-29',
    costCents: 2_147_483_647,
    latitude: 30.267153,
    pinned: true,
    detail: { who: 'Zoë', how: [1, null, 0.1] },
  });

  beforeAll(() =>
    desk.unitOfWork.run(async () => {
      await manager().insert(ShelfRow, { id: 's' });
      await manager().insert(NoteRow, note);
    }),
  );

  it('every kind of column comes back as it went in, an instant in UTC', async () => {
    expect(await manager().findOneBy(NoteRow, { id: note.id })).toEqual({
      ...note,
      writtenAt: '2026-06-13T16:20:00.000Z',
    });
  });

  it('an instant of any offset finds its row, and order is the order of time', async () => {
    expect(await manager().existsBy(NoteRow, { writtenAt: '2026-06-13T18:20:00+02:00' })).toBe(true);
  });

  it.each<[string, () => Promise<unknown>]>([
    ['insert', () => manager().insert(NoteRow, aNote())],
    ['save', () => manager().save(NoteRow, aNote())],
    ['update', () => manager().update(NoteRow, { id: note.id }, { version: 2 })],
    ['delete', () => manager().delete(NoteRow, { id: note.id })],
    ['plain SQL', () => manager().query('DELETE FROM note')],
  ])('%s is refused', async (_way, write) => {
    await expect(write()).rejects.toMatchObject({ code: 'DATABASE.READ_ONLY' });
    expect(await manager().find(NoteRow)).toMatchObject([{ id: note.id, version: 1 }]);
  });

  describe('a condition on nothing is an error, not a condition less', () => {
    const nothing = [undefined, null] as unknown as string[];
    it.each(nothing)('find by %s', async (id) => {
      await expect(manager().findBy(NoteRow, { id })).rejects.toThrow(/undefined|null/i);
      await expect(manager().findOneBy(NoteRow, { id })).rejects.toThrow(/undefined|null/i);
      await expect(manager().countBy(NoteRow, { id })).rejects.toThrow(/undefined|null/i);
    });

    it.each(nothing)('change by %s', async (id) => {
      const change = (way: () => Promise<unknown>) => desk.unitOfWork.run(way);
      await expect(change(() => manager().update(NoteRow, { id }, { version: 2 }))).rejects.toThrow();
      await expect(change(() => manager().delete(NoteRow, { id }))).rejects.toThrow();
      await expect(change(() => manager().increment(NoteRow, { id }, 'version', 1))).rejects.toThrow();
      expect(await manager().find(NoteRow)).toMatchObject([{ id: note.id, version: 1 }]);
    });
  });
});
