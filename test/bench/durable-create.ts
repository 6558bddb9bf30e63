import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AddressInfo } from 'node:net';
import fastify from 'fastify';
import type { Call } from '../../shared/call/call.js';
import { determine } from '../../shared/determination/determine.js';
import { appendLeaf, EMPTY_FRONTIER, frontierHead } from '../../shared/proof/merkle-frontier.js';
import { findChanges } from '../../shared/record/find-changes.js';
import type { JsonObject } from '../../shared/record/json-value.js';
import { recordToFacts } from '../../shared/record/record-to-facts.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';
import { makeAmendment } from '../../src/server/record/make-amendment.js';
import { captureStatements, type Statement } from './capture-statements.js';
import { drive, type Sent } from './drive.js';
import { HandDatabase } from './hand-database.js';
import { openDesk } from './open-desk.js';

const CLIENTS = 50;
const ROUNDS = 5;
const CREATES = 400;
const BODY = JSON.stringify({ call: { kind: 'now', channel: 'phone', said: 'help, two in the water' } });

type Pairs = (readonly [number, number])[];

/**
 * Incidents that 50 clients open, each acknowledged when it is on the disk, against the statements of the same create
 * written by hand on bare Fastify: one transaction after the other, the head of the log on the disk as well.
 *
 * Two yardsticks send the same statements. `bare` does nothing else. `lawful` also determines the call once, under every
 * pack as no place is known, and commits to each field and hashes the leaf: no create may be acknowledged without them,
 * whoever writes it, and the determination has a figure of its own. It still checks no input and plans no task. Both
 * replay the statements that ours sends, so that a statement saved makes them faster too: compare the rates of two runs,
 * not only their ratios.
 * @returns creates per second of ours and of the yardstick, a pair a round, for each yardstick
 */
export async function durableCreate(): Promise<{ bare: Pairs; lawful: Pairs }> {
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
  const byHand = async (name: string, work: () => void) => {
    const file = join(folder, `${name}.sqlite`);
    await desk.copyTo(file);
    return handWritten(file, statements.slice(0, begin), statements.slice(begin), work);
  };
  const hands = {
    bare: await byHand('bare', () => undefined),
    lawful: await byHand('lawful', await lawfulWork()),
  };
  const pairs: { bare: Pairs; lawful: Pairs } = { bare: [], lawful: [] };
  for (let round = 0; round <= ROUNDS; round += 1) {
    const ours = await drive(desk.port, CLIENTS, CREATES, 201, create);
    for (const name of ['bare', 'lawful'] as const) {
      const yardstick = await drive(hands[name].port, CLIENTS, CREATES, 201, create);
      if (round > 0) pairs[name].push([ours, yardstick]);
    }
  }
  await hands.bare.close();
  await hands.lawful.close();
  await desk.close();
  rmSync(folder, { recursive: true, force: true });
  return pairs;
}

/** What the law and the proof ask of a create, by the functions that have figures and tests of their own. */
async function lawfulWork(): Promise<() => void> {
  const packs = await loadRulePacks();
  const geography = loadGeography();
  const incident = {
    reference: '2026-0001',
    openedAt: '2026-06-13T16:20:00.000Z',
    status: 'open' as const,
    timeZone: 'America/Chicago',
  };
  const { call } = JSON.parse(BODY) as { call: Call };
  const author = { who: randomUUID(), device: null, person: 'Max Bench' };
  const sections = { incident, call };
  return () => {
    determine(recordToFacts({ incident, sections: { call } }), { packs, geography, source: 'bench' });
    let frontier = EMPTY_FRONTIER;
    for (const [section, document] of Object.entries(sections)) {
      const edits = findChanges({}, document as JsonObject);
      const one = makeAmendment({ incidentId: author.who, section, edits }, author, 1, incident.openedAt);
      frontier = appendLeaf(frontier, one.leafHash);
    }
    frontierHead(frontier);
  };
}

async function handWritten(
  file: string,
  before: readonly Statement[],
  statements: readonly Statement[],
  work: () => void,
): Promise<{ port: number; close: () => Promise<void> }> {
  const [reader, writer] = [await HandDatabase.open(file), await HandDatabase.open(file)];
  const heads = await open(`${file}.heads`, 'a');
  const fresh = freshValues();
  let turn: Promise<unknown> = Promise.resolve();
  const app = fastify();
  app.post('/api/incidents', async (_request, reply) => {
    for (const statement of before) await reader.all(statement.sql, statement.parameters);
    const id = randomUUID();
    work();
    const written = turn.then(async () => {
      for (const statement of fresh(statements)) await writer.all(statement.sql, statement.parameters);
    });
    turn = written;
    await written;
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
