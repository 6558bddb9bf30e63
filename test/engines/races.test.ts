import { beforeAll, beforeEach, expect, it } from 'vitest';
import { describeEngine } from '../support/databases.js';
import { aNote, NoteRow, NOTES, ShelfRow } from './notes.js';

/** Everyone who comes waits until the last one is there; whoever comes again later passes. */
function meeting(size: number): () => Promise<void> {
  let arrived = 0;
  let open: () => void = () => undefined;
  const everyone = new Promise<void>((resolve) => {
    open = resolve;
  });
  return () => {
    arrived += 1;
    if (arrived === size) open();
    return everyone;
  };
}

// Only PostgreSQL lets two units run side by side: SQLite has none of these races to lose.
describeEngine('postgres', 'two units that race', NOTES, (desk) => {
  const manager = () => desk.unitOfWork.manager;
  const versionOf = async (id: string): Promise<number> =>
    (await manager().findOneByOrFail(NoteRow, { id })).version;
  const setVersion = async (id: string, version: number): Promise<void> => {
    await manager().update(NoteRow, { id }, { version });
  };

  let one: NoteRow, other: NoteRow;
  beforeAll(() => desk.unitOfWork.run(async () => void (await manager().insert(ShelfRow, { id: 's' }))));
  beforeEach(() =>
    desk.unitOfWork.run(async () => {
      [one, other] = [aNote({ version: 1 }), aNote({ version: 1 })];
      await manager().insert(NoteRow, [one, other]);
    }),
  );

  it('end as if one had come after the other, when each decides by what the other changes', async () => {
    const met = meeting(2);
    let attempts = 0;
    let effects = 0;
    // Two people on call, each allowed to leave while the other one stays.
    const leave = (mine: NoteRow): Promise<boolean> =>
      desk.unitOfWork.run(async () => {
        attempts += 1;
        desk.unitOfWork.afterCommit(() => (effects += 1));
        const stay = (await versionOf(one.id)) + (await versionOf(other.id));
        await met();
        if (stay < 2) return false;
        await setVersion(mine.id, 0);
        return true;
      });
    const left = await Promise.all([leave(one), leave(other)]);
    expect([...left].sort()).toEqual([false, true]);
    expect((await versionOf(one.id)) + (await versionOf(other.id))).toBe(1);
    expect({ attempts, effects }).toEqual({ attempts: 3, effects: 2 });
  });

  it('both succeed when each holds what the other waits for', async () => {
    const met = meeting(2);
    let attempts = 0;
    const addInOrder = (ids: string[]): Promise<void> =>
      desk.unitOfWork.run(async () => {
        attempts += 1;
        for (const id of ids) {
          await manager().increment(NoteRow, { id }, 'version', 1);
          await met();
        }
      });
    await Promise.all([addInOrder([one.id, other.id]), addInOrder([other.id, one.id])]);
    expect([await versionOf(one.id), await versionOf(other.id)]).toEqual([3, 3]);
    expect(attempts).toBe(3);
  });

  it('are told of the conflict when others win each time', async () => {
    let attempts = 0;
    const loser = desk.unitOfWork.run(async () => {
      attempts += 1;
      const version = await versionOf(one.id);
      await desk.plainSql('UPDATE note SET version = version + 1 WHERE id = $1', [one.id]);
      await setVersion(one.id, version + 1);
    });
    await expect(loser).rejects.toMatchObject({ code: 'DATABASE.CONFLICT' });
    expect([attempts, await versionOf(one.id)]).toEqual([8, 9]);
  });
});
