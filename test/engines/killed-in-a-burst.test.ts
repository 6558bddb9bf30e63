import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { NoteRow, NOTES, ShelfRow } from './notes.js';

const RUN = join(import.meta.dirname, '..', 'support', 'run-typescript.mjs');
const ENOUGH = 100;
/** Starting the other process takes seconds on a busy machine. */
const PATIENCE_MS = 90_000;

/** The names that the writer acknowledged, up to the last one that left it before it was killed in its burst. */
async function killAfter(enough: number, target: unknown): Promise<string[]> {
  const writer = spawn(process.execPath, [RUN, '/test/engines/burst-writer.ts', JSON.stringify(target)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const acknowledged: string[] = [];
  const closed = once(writer, 'close');
  for await (const name of createInterface(writer.stdout)) {
    acknowledged.push(name);
    if (acknowledged.length === enough) writer.kill('SIGKILL');
  }
  expect(await closed).toEqual([null, 'SIGKILL']);
  return acknowledged;
}

describeEngines('a service killed in a burst of writes', NOTES, (desk) => {
  it(
    'has lost nothing that it acknowledged, and left nothing by halves',
    async () => {
      await desk.unitOfWork.run(
        async () => void (await desk.unitOfWork.manager.insert(ShelfRow, { id: 's' })),
      );
      const acknowledged = await killAfter(ENOUGH, desk.target);
      expect(acknowledged.length).toBeGreaterThanOrEqual(ENOUGH);

      const kept = await desk.unitOfWork.manager.find(NoteRow, { select: { id: true } });
      const namesOf = (half: string): string[] =>
        kept.flatMap(({ id }) => (id.startsWith(half) ? [id.slice(half.length)] : [])).sort();
      expect(namesOf('first ')).toEqual(namesOf('second '));
      expect(namesOf('first ')).toEqual(expect.arrayContaining(acknowledged));
      if (desk.engine === 'sqlite') {
        expect(await desk.plainSql('PRAGMA integrity_check')).toEqual([{ integrity_check: 'ok' }]);
      }
    },
    PATIENCE_MS,
  );
});
