import { describe, expect, it } from 'vitest';
import { TurnQueue } from '../../src/server/platform/database/turn-queue.js';

/** A piece of work that ends when the test says so. */
function held(): { work: () => Promise<void>; end: () => void } {
  let end: () => void = () => undefined;
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  return { work: () => ended, end };
}

describe('the turns', () => {
  it('come in the order of asking, one after the other where there is one place', async () => {
    const turns = new TurnQueue(1, 1_000);
    const seen: string[] = [];
    const one = (name: string): Promise<void> =>
      turns.hold(1, async () => {
        seen.push(`${name} begins`);
        await Promise.resolve();
        seen.push(`${name} ends`);
      });
    await Promise.all([one('first'), one('second'), one('third')]);
    expect(seen).toEqual(['first', 'second', 'third'].flatMap((name) => [`${name} begins`, `${name} ends`]));
  });

  it('let several in where there is room, and nobody past one that needs all of it', async () => {
    const turns = new TurnQueue(2, 1_000);
    const [a, b] = [held(), held()];
    const seen: string[] = [];
    const running = [
      turns.hold(1, a.work),
      turns.hold(1, b.work),
      turns.hold(2, () => Promise.resolve(seen.push('alone'))),
      turns.hold(1, () => Promise.resolve(seen.push('later'))),
    ];
    a.end();
    await running[0];
    expect(seen).toEqual([]);
    b.end();
    await Promise.all(running);
    expect(seen).toEqual(['alone', 'later']);
  });

  it('go on after work that failed', async () => {
    const turns = new TurnQueue(1, 1_000);
    await expect(turns.hold(1, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    await expect(turns.hold(1, () => Promise.resolve('next'))).resolves.toBe('next');
  });

  it('end for who has waited too long, with a clear word; those behind are not held up by the one who left', async () => {
    const turns = new TurnQueue(2, 20);
    const long = held();
    const holding = turns.hold(1, long.work);
    const alone = turns.hold(2, () => Promise.resolve());
    await expect(alone).rejects.toMatchObject({
      code: 'DATABASE.BUSY',
      message: expect.stringMatching(/20 ms/) as string,
    });
    await expect(turns.hold(1, () => Promise.resolve('fits beside'))).resolves.toBe('fits beside');
    long.end();
    await holding;
  });
});
