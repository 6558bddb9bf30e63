import { writeSync } from 'node:fs';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { openDatabase } from '../../src/server/platform/database/open-database.js';
import { carrierTo, MailHouse, MAILS } from './mail-house.js';

/**
 * A service of its own until it is killed: it queues three mails, says so, and begins to send them:
 * node run-typescript.mjs mail-process.ts TARGET PORT
 */
const [target, port] = [JSON.parse(process.argv[3] ?? '') as DatabaseTarget, Number(process.argv[4])];
const { unitOfWork } = await openDatabase(target, MAILS.rows, { report: console.error });
const house = new MailHouse(unitOfWork, carrierTo(port, 60_000));
for (const name of ['a', 'b', 'c']) await house.enqueue(name, `${name}@rental.example`);
writeSync(process.stdout.fd, 'queued\n');
await house.round();
