import { AsyncLocalStorage } from 'node:async_hooks';
import { beforeAll, describe, expect, it } from 'vitest';
import { describeEngine, describeEngines } from '../support/databases.js';
import { aNote, NoteRow, NOTES, ShelfRow } from './notes.js';

class Refused extends Error {}

const reasonOf = (outcome: PromiseSettledResult<unknown>): string =>
  outcome.status === 'rejected' ? String(outcome.reason) : 'it was let through';

describeEngines('a unit of work', NOTES, (desk) => {
  const run = <T>(work: () => Promise<T>): Promise<T> => desk.unitOfWork.run(work);
  const write = async (note: NoteRow): Promise<void> => {
    await desk.unitOfWork.manager.insert(NoteRow, note);
  };
  const isKept = (note: NoteRow): Promise<boolean> =>
    desk.unitOfWork.manager.existsBy(NoteRow, { id: note.id });

  beforeAll(() => run(async () => void (await desk.unitOfWork.manager.insert(ShelfRow, { id: 's' }))));

  it('leaves exactly what was promised by 200 at once, every third of which fails half-way', async () => {
    const counter = aNote({ version: 0 });
    await run(() => write(counter));
    const pairs = Array.from({ length: 200 }, () => [aNote(), aNote()] as const);

    const outcomes = await Promise.allSettled(
      pairs.map(([first, second], place) =>
        run(async () => {
          await write(first);
          const { version } = await desk.unitOfWork.manager.findOneByOrFail(NoteRow, { id: counter.id });
          await desk.unitOfWork.manager.update(NoteRow, { id: counter.id }, { version: version + 1 });
          if (place % 3 === 2) throw new Refused();
          await write(second);
        }),
      ),
    );

    const promised = pairs.filter((_, place) => outcomes[place]?.status === 'fulfilled');
    expect(promised).toHaveLength(134);
    for (const outcome of outcomes) {
      if (outcome.status === 'rejected') expect(outcome.reason).toBeInstanceOf(Refused);
    }
    const kept = await desk.unitOfWork.manager.find(NoteRow, { select: { id: true } });
    const ids = new Set(kept.map(({ id }) => id));
    expect(ids.delete(counter.id)).toBe(true);
    expect([...ids].sort()).toEqual(promised.flatMap((pair) => pair.map(({ id }) => id)).sort());
    expect(await desk.unitOfWork.manager.findOneBy(NoteRow, { id: counter.id })).toMatchObject({
      version: 134,
    });
  });

  it('is not seen from outside before it is committed, and is seen at once afterwards', async () => {
    const note = aNote();
    const outside = AsyncLocalStorage.snapshot();
    await run(async () => {
      await write(note);
      expect(await isKept(note)).toBe(true);
      expect(await outside(() => isKept(note))).toBe(false);
    });
    expect(await isKept(note)).toBe(true);
  });

  describe('within another', () => {
    it('joins it: what the inner one wrote goes when the outer one fails', async () => {
      const note = aNote();
      const outer = run(async () => {
        await run(() => write(note));
        throw new Refused();
      });
      await expect(outer).rejects.toThrow(Refused);
      expect(await isKept(note)).toBe(false);
    });

    it('undoes the whole when it fails, even if the outer one goes on as if it had not', async () => {
      const [before, inner] = [aNote(), aNote()];
      const outer = run(async () => {
        await write(before);
        await run(async () => {
          await write(inner);
          throw new Refused();
        }).catch(() => undefined);
      });
      await expect(outer).rejects.toThrow(Refused);
      expect([await isKept(before), await isKept(inner)]).toEqual([false, false]);
    });
  });

  describe('is refused and leaves nothing', () => {
    it('when a statement failed and the work went on as if it had not', async () => {
      const [first, twin] = [aNote(), aNote()];
      const careless = run(async () => {
        await write(first);
        await write({ ...twin, id: first.id }).catch(() => undefined);
      });
      await expect(careless).rejects.toMatchObject({ code: 'DATABASE.UNIQUE', constraint: 'pk_note' });
      expect(await isKept(first)).toBe(false);
    });

    it('when a statement was begun and not awaited', async () => {
      const [first, forgotten] = [aNote(), aNote()];
      const careless = run(async () => {
        await write(first);
        void write(forgotten);
      });
      await expect(careless).rejects.toThrow('not awaited');
      expect([await isKept(first), await isKept(forgotten)]).toEqual([false, false]);
    });
  });

  describe('that has ended', () => {
    it('takes no late write, by whatever way it comes', async () => {
      const [first, late, next] = [aNote(), aNote(), aNote()];
      let ended: () => void = () => undefined;
      const end = new Promise<void>((resolve) => {
        ended = resolve;
      });
      const ways: Promise<unknown>[] = [];
      await run(async () => {
        const held = desk.unitOfWork.manager;
        const later = <T>(way: () => Promise<T>): unknown => ways.push(end.then(way));
        later(() => held.insert(NoteRow, late));
        later(() => held.save(NoteRow, late));
        later(() => held.query('DELETE FROM note'));
        later(() => write(late));
        later(() => run(() => write(late)));
        later(() => Promise.resolve(desk.unitOfWork.afterCommit(() => undefined)));
        await write(first);
      });
      const outcomes = await run(async () => {
        await write(next);
        ended();
        return Promise.allSettled(ways);
      });
      expect(outcomes).toHaveLength(6);
      for (const outcome of outcomes) expect(reasonOf(outcome)).toMatch(/already (ended|released)/);
      expect([await isKept(first), await isKept(next), await isKept(late)]).toEqual([true, true, false]);
    });
  });

  describe('has effects', () => {
    it('that happen after the commit, in their order, where the row is there for everyone', async () => {
      const [note, fromEffect] = [aNote(), aNote()];
      const happened: unknown[] = [];
      await run(async () => {
        desk.unitOfWork.afterCommit(async () => happened.push(await isKept(note)));
        await run(async () => {
          desk.unitOfWork.afterCommit(() => run(() => write(fromEffect)));
          await write(note);
        });
        desk.unitOfWork.afterCommit(async () => happened.push(await isKept(fromEffect)));
        expect(happened).toEqual([]);
      });
      expect(happened).toEqual([true, true]);
    });

    it('that never happen when it fails', async () => {
      let happened = false;
      const failing = run(async () => {
        desk.unitOfWork.afterCommit(() => (happened = true));
        await write(aNote());
        throw new Refused();
      });
      await expect(failing).rejects.toThrow(Refused);
      expect(happened).toBe(false);
    });

    it('of which one that throws is reported and undoes nothing, not even the next one', async () => {
      const note = aNote();
      let happened = false;
      await run(async () => {
        desk.unitOfWork.afterCommit(() => Promise.reject(new Refused()));
        desk.unitOfWork.afterCommit(() => (happened = true));
        await write(note);
      });
      expect(desk.reported).toEqual([expect.any(Refused)]);
      expect([await isKept(note), happened]).toEqual([true, true]);
    });

    it('only inside: outside there is no commit to wait for', () => {
      expect(() => desk.unitOfWork.afterCommit(() => undefined)).toThrow('inside UnitOfWork.run');
    });
  });
});

// PostgreSQL has a place for the second one.
describeEngine('sqlite', 'a unit of work that waits for itself', { ...NOTES, waitLimitMs: 50 }, (desk) => {
  it('is told after the wait, and the next one has its turn', async () => {
    const lost = AsyncLocalStorage.snapshot();
    const { unitOfWork } = desk;
    const stuck = unitOfWork.run(() => lost(() => unitOfWork.run(() => Promise.resolve())));
    const message: unknown = expect.stringContaining('Waited 50 ms for the turn to write');
    await expect(stuck).rejects.toMatchObject({ code: 'DATABASE.BUSY', message });
    await expect(unitOfWork.run(() => Promise.resolve('next'))).resolves.toBe('next');
  });
});
