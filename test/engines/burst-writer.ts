import { writeSync } from 'node:fs';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { openDatabase } from '../../src/server/platform/database/open-database.js';
import { aNote, NoteRow, NOTES } from './notes.js';

/**
 * Writes pairs of notes, twenty at a time, until it is killed, and names each pair on standard output once the unit of
 * work that wrote it has been acknowledged: node run-typescript.mjs burst-writer.ts TARGET
 */
const target = JSON.parse(process.argv[3] ?? '') as DatabaseTarget;
const { unitOfWork } = await openDatabase(target, NOTES.rows, { report: console.error });

async function writePairs(writer: number): Promise<void> {
  for (let pair = 1; ; pair += 1) {
    const name = `${writer}-${pair}`;
    await unitOfWork.run(async () => {
      await unitOfWork.manager.insert(NoteRow, aNote({ id: `first ${name}`, title: `first ${name}` }));
      await unitOfWork.manager.insert(NoteRow, aNote({ id: `second ${name}`, title: `second ${name}` }));
    });
    writeSync(process.stdout.fd, `${name}\n`);
  }
}

await Promise.all(Array.from({ length: 20 }, (_, writer) => writePairs(writer)));
