import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AddressInfo } from 'node:net';
import fastify from 'fastify';
import { captureStatements, type Statement } from './capture-statements.js';
import { drive, type Sent } from './drive.js';
import { HandDatabase } from './hand-database.js';
import { openDesk } from './open-desk.js';

const CLIENTS = 50;
const ROUNDS = 5;
const CREATES = 400;
const BODY = JSON.stringify({ call: { kind: 'now', channel: 'phone', said: 'help, two in the water' } });

/**
 * Incidents that 50 clients open, each acknowledged when it is on the disk, against the statements of the same create
 * written by hand on bare Fastify: one transaction after the other, the head of the log on the disk as well, and
 * nothing checked, hashed or determined.
 * @returns creates per second of ours and of the yardstick, a pair a round
 */
export async function durableCreate(): Promise<(readonly [number, number])[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-create-'));
  const desk = await openDesk(join(folder, 'ours.sqlite'), join(folder, 'ours.heads'));
  const create = (): Sent => ({
    method: 'POST',
    path: '/api/incidents',
    headers: { ...desk.headers, 'content-type': 'application/json', 'idempotency-key': randomUUID() },
    body: BODY,
  });
  await drive(desk.port, 1, 3, 201, create);
  const statements = await captureStatements(() => drive(desk.port, 1, 1, 201, create));
  // The session is looked up by both, outside of the transaction.
  const begin = statements.findIndex(({ sql }) => sql.startsWith('BEGIN'));
  const copy = join(folder, 'hand.sqlite');
  await desk.copyTo(copy);
  const hand = await handWritten(copy, statements.slice(0, begin), statements.slice(begin), folder);
  const rounds: (readonly [number, number])[] = [];
  for (let round = 0; round <= ROUNDS; round += 1) {
    const ours = await drive(desk.port, CLIENTS, CREATES, 201, create);
    const yardstick = await drive(hand.port, CLIENTS, CREATES, 201, create);
    if (round > 0) rounds.push([ours, yardstick]);
  }
  await hand.close();
  await desk.close();
  rmSync(folder, { recursive: true, force: true });
  return rounds;
}

async function handWritten(
  file: string,
  before: readonly Statement[],
  statements: readonly Statement[],
  folder: string,
): Promise<{ port: number; close: () => Promise<void> }> {
  const [reader, writer] = [await HandDatabase.open(file), await HandDatabase.open(file)];
  const heads = await open(join(folder, 'hand.heads'), 'a');
  const fresh = freshValues();
  let turn: Promise<unknown> = Promise.resolve();
  const app = fastify();
  app.post('/api/incidents', async (_request, reply) => {
    for (const statement of before) await reader.all(statement.sql, statement.parameters);
    const id = randomUUID();
    const work = turn.then(async () => {
      for (const statement of fresh(statements)) await writer.all(statement.sql, statement.parameters);
    });
    turn = work;
    await work;
    await heads.appendFile(`${JSON.stringify({ size: 1, root: 'f'.repeat(64) })}\n`);
    await heads.datasync();
    return reply.status(201).send({ id, reference: '2026-0001', status: 'open', sections: [] });
  });
  await app.listen({ port: 0, host: '127.0.0.1' });
  return {
    port: (app.server.address() as AddressInfo).port,
    close: async () => {
      await app.close();
      await heads.close();
      await Promise.all([reader.close(), writer.close()]);
    },
  };
}

const UUID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/;
const REFERENCE = /^\d{4}-\d{4,}$/;

/** The statements with new ids, references and numbers in the log, so that none is refused as a twin. */
function freshValues(): (statements: readonly Statement[]) => Statement[] {
  let [reference, sequence] = [1_000_000, 1_000_000];
  return (statements) => {
    const ids = new Map<unknown, string>();
    reference += 1;
    return statements.map(({ sql, parameters }) => ({
      // TypeORM writes whole numbers into the text of a statement, the number in the log first in its row.
      sql: sql.startsWith('INSERT INTO "amendment"')
        ? sql.replaceAll(/\(\d+, \?/g, () => `(${(sequence += 1)}, ?`)
        : sql,
      parameters: parameters.map((value) => {
        if (typeof value !== 'string') return value;
        if (REFERENCE.test(value)) return `2026-${reference}`;
        if (!UUID.test(value)) return value;
        const id = ids.get(value) ?? randomUUID();
        ids.set(value, id);
        return id;
      }),
    }));
  };
}
