import { randomUUID } from 'node:crypto';
import { writeSync } from 'node:fs';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { IncidentsService, SectionsService } from '../../src/server/record/record.api.js';
import { DOCK_PHONE, startRecordApp } from './record-app.js';

/**
 * Opens incidents and amends their calls, ten at a time, until it is killed, and names on standard output what has been
 * acknowledged: node run-typescript.mjs burst-service.ts TARGET HEADS_FILE
 */
const app = await startRecordApp(JSON.parse(process.argv[3] ?? '') as DatabaseTarget, process.argv[4] ?? '');
const [incidents, sections] = [app.get(IncidentsService), app.get(SectionsService)];

async function work(writer: number): Promise<void> {
  for (let n = 1; ; n += 1) {
    const said = `call-${writer}-${n}`;
    const { id } = await incidents.open({ call: { said: 'help' } }, randomUUID(), DOCK_PHONE);
    await sections.write(id, 'call', { document: { said } }, '"1"', DOCK_PHONE);
    writeSync(process.stdout.fd, `${id} ${said}\n`);
  }
}

await Promise.all(Array.from({ length: 10 }, (_, writer) => work(writer)));
