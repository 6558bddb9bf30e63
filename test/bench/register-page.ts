import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fastify from 'fastify';
import type { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { captureStatements, type Statement } from './capture-statements.js';
import { drive, type Sent } from './drive.js';
import { HandDatabase } from './hand-database.js';
import { openDesk } from './open-desk.js';

const INCIDENTS = 100_000;
const DUTIES = 2;
const TASKS = 6;
const CLIENTS = 8;
const ROUNDS = 7;
const PAGES = 150;

/**
 * The first page of the register, 25 incidents with people, craft, duties and tasks of 100,000, against the same page
 * by hand: bare Fastify, three statements, and the look-up of the session that both have.
 * @returns pages per second of ours and of the yardstick, a pair a round
 */
export async function registerPage(): Promise<(readonly [number, number])[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-register-'));
  const file = join(folder, 'desk.sqlite');
  const desk = await openDesk(file, join(folder, 'heads'));
  await seed(desk.unitOfWork);
  const get = (): Sent => ({ method: 'GET', path: '/api/register', headers: desk.headers });
  const statements = await captureStatements(() => drive(desk.port, 1, 1, 200, get));
  const session = statements.filter(({ sql }) => /FROM "(session|account)"/.test(sql));
  const hand = await handWritten(file, session);
  const rounds: (readonly [number, number])[] = [];
  for (let round = 0; round <= ROUNDS; round += 1) {
    const ours = await drive(desk.port, CLIENTS, PAGES, 200, get);
    const yardstick = await drive(hand.port, CLIENTS, PAGES, 200, get);
    if (round > 0) rounds.push([ours, yardstick]);
  }
  await hand.close();
  await desk.close();
  rmSync(folder, { recursive: true, force: true });
  return rounds;
}

interface Head {
  id: string;
  summary: string;
}

interface Of {
  incident_id: string;
}

async function handWritten(
  file: string,
  session: readonly Statement[],
): Promise<{ port: number; close: () => Promise<void> }> {
  const database = await HandDatabase.open(file);
  const app = fastify();
  app.get('/api/register', async () => {
    for (const { sql, parameters } of session) await database.all(sql, parameters);
    const heads = await database.all<Head>(HEADS);
    const page = heads.slice(0, 25);
    const ids = page.map(({ id }) => id);
    const marks = ids.map(() => '?').join();
    const duties = groupOf(await database.all<Of>(`${DUTIES_OF} (${marks}) ORDER BY due_order, id`, ids));
    const now = new Date().toISOString();
    const counts = `${COUNTS} (${marks}) GROUP BY incident_id`;
    const tasks = groupOf(await database.all<Of>(counts, [now, ...ids]));
    const items = page.map((head) => ({
      ...head,
      summary: JSON.parse(head.summary) as unknown,
      duties: duties.get(head.id) ?? [],
      tasks: tasks.get(head.id)?.[0] ?? null,
    }));
    return { items, next: heads.length > 25 ? (page.at(-1)?.id ?? null) : null };
  });
  await app.listen({ port: 0, host: '127.0.0.1' });
  return {
    port: (app.server.address() as AddressInfo).port,
    close: async () => {
      await app.close();
      await database.close();
    },
  };
}

const HEADS = `SELECT id, reference, status, opened_at, updated_at, version, summary
  FROM incident ORDER BY opened_at DESC, id DESC LIMIT 26`;
const DUTIES_OF = 'SELECT * FROM duty_state WHERE incident_id IN';
const COUNTS = `SELECT incident_id, SUM(state = 'open') AS open, SUM(state = 'done') AS done,
  SUM(state = 'open' AND due_at < ?) AS overdue FROM task WHERE incident_id IN`;

function groupOf<Row extends Of>(rows: readonly Row[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(row.incident_id);
    if (group === undefined) groups.set(row.incident_id, [row]);
    else group.push(row);
  }
  return groups;
}

/** Invented incidents, each with a call, duties and tasks, written by the engine itself. */
async function seed(unitOfWork: UnitOfWork): Promise<void> {
  const numbers = `WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ${INCIDENTS})`;
  const parts = (count: number) =>
    `${numbers}, m(j) AS (SELECT 1 UNION ALL SELECT j + 1 FROM m WHERE j < ${count})`;
  const id = (kind: string, own: string) => `printf('${kind}-0000-4000-8000-%012x', ${own})`;
  const incident = id('00000001', 'i');
  const at = "strftime('%Y-%m-%dT%H:%M:%fZ', '2010-01-01', printf('+%d minutes', i * 80))";
  await unitOfWork.run(async () => {
    const { manager } = unitOfWork;
    await manager.query(`${numbers} INSERT INTO incident
      (id, reference, opened_at, status, version, latest_amendment, updated_at, summary)
      SELECT ${incident}, printf('2010-%06d', i), ${at}, 'open', 5, i, ${at}, json_object(
        'call', json_object('said', 'help', 'craft', json_array('PWC ' || (i % 40)), 'kind', 'now'),
        'time-and-place', json_object('occurredAt', ${at}, 'where', 'north of the sandbar'),
        'craft', json_object('craft', json_array('PWC ' || (i % 40))),
        'people', json_object('people', 2, 'outcomes', json_array('injured', 'unhurt'))) FROM n`);
    await manager.query(`${parts(DUTIES)} INSERT INTO duty_state
      (id, incident_id, duty, vessel, outcome, immediate, due_at, overdue_after, decision, wait_until, filed,
       supplement_due, settled, due_order, changed_at, clock_since)
      SELECT ${id('00000002', `i * ${DUTIES} + j`)}, ${incident}, iif(j = 1, 'us/accident-report', 'us-tx/accident-report'),
        'PWC', 'required', 0, ${at}, ${at}, NULL, NULL, 0, 0, 0, ${at}, ${at}, ${at} FROM n, m`);
    await manager.query(`${parts(TASKS)} INSERT INTO task
      (id, incident_id, task_key, round, template, task_order, title, why, source, owner, assignee_id, state, due_at,
       due_order, due_why, evidence_asked, escalates, rests_on, duty, acknowledged_at, acknowledged_by, version,
       created_at, updated_at)
      SELECT ${id('00000003', `i * ${TASKS} + j`)}, ${incident}, 'task-' || j, 1, 'headcount', j, 'Count heads', 'Because',
        'common practice, no source', 'manager', NULL, iif(j < 3, 'done', 'open'), ${at}, ${at}, 'because', 'a note', 0,
        '[]', NULL, NULL, NULL, 1, ${at}, ${at} FROM n, m`);
  });
}
