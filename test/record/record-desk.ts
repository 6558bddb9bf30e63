import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type DynamicModule, Module } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { afterAll, beforeAll } from 'vitest';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import type { Role } from '../../shared/kernel/role.js';
import type { Actor } from '../../src/server/accounts/accounts.api.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { DatabaseModule } from '../../src/server/platform/database/database.module.js';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { ProblemFilter } from '../../src/server/platform/http/problem.filter.js';
import { readJsonBodies } from '../../src/server/platform/http/read-json-bodies.js';
import { RouteTable } from '../../src/server/platform/http/route-table.js';
import { RECORD_ROWS, RecordSettings } from '../../src/server/record/record.api.js';
import { RecordModule } from '../../src/server/record/record.module.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import type { Desk } from '../support/databases.js';

/** For `describeEngines`: what the service of these tests maps. */
export const RECORD = { rows: [...RECORD_ROWS, CreateOnceRow] };

@Module({})
class RecordDesk {
  static with(target: DatabaseTarget, settings: RecordSettings): DynamicModule {
    const database = DatabaseModule.with({ target, rows: RECORD_ROWS, migrations: ALL_MIGRATIONS });
    return { module: RecordDesk, imports: [database, RecordModule.with(settings)] };
  }
}

/** The routes of the record alone, on a database; who asks stands in a header instead of a session. */
export async function startRecordApp(
  target: DatabaseTarget,
  headsFile: string,
): Promise<NestFastifyApplication> {
  const adapter = new FastifyAdapter();
  const server = adapter.getInstance();
  const routes = new RouteTable(server);
  readJsonBodies(server);
  server.addHook('onRequest', (request, _reply, done) => {
    request.actor = JSON.parse(String(request.headers['x-actor'])) as Actor;
    done();
  });
  const settings = new RecordSettings('America/Chicago', headsFile, await loadRulePacks(), loadGeography());
  const app = await NestFactory.create<NestFastifyApplication>(RecordDesk.with(target, settings), adapter, {
    bodyParser: false,
    logger: ['error', 'warn'],
    abortOnError: false,
  });
  app.useGlobalFilters(new ProblemFilter(routes));
  await app.init();
  await server.ready();
  return app;
}

export const person = (role: Role, personName: string = role): Actor => ({
  kind: 'person',
  accountId: `account-${personName}`,
  personName,
  role,
  sessionId: 'session',
});

export const DOCK_PHONE: Actor = {
  kind: 'device',
  deviceId: 'device-dock',
  deviceName: 'Dock phone',
  personName: 'Sam',
};

interface Answer {
  status: number;
  headers: Record<string, string | string[] | number | undefined>;
  // A test looks at members of whatever came back.
  body: Record<string, unknown>;
}

/** The service of one suite, spoken to over HTTP. */
export class Client {
  app: NestFastifyApplication;
  headsFile: string;

  constructor(private readonly desk: Desk) {
    let folder = '';
    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), 'desk-heads-'));
      this.headsFile = join(folder, 'heads');
      this.app = await startRecordApp(desk.target, this.headsFile);
    });
    afterAll(async () => {
      await this.app?.close();
      rmSync(folder, { recursive: true, force: true });
    });
  }

  async send(
    actor: Actor,
    method: 'GET' | 'POST' | 'PUT' | 'DELETE',
    path: string,
    body?: unknown,
    headers: Record<string, string> = {},
  ): Promise<Answer> {
    const answer = await this.app.inject({
      method,
      url: `/api/incidents${path}`,
      headers: {
        'x-actor': JSON.stringify(actor),
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...headers,
      },
      ...(body === undefined ? {} : { payload: JSON.stringify(body) }),
    });
    const text = answer.body;
    return {
      status: answer.statusCode,
      headers: answer.headers,
      body: text === '' ? {} : (JSON.parse(text) as Record<string, unknown>),
    };
  }

  get(actor: Actor, path: string): Promise<Answer> {
    return this.send(actor, 'GET', path);
  }

  open(actor: Actor, body: unknown, key: string = randomUUID()): Promise<Answer> {
    return this.send(actor, 'POST', '', body, { 'idempotency-key': key });
  }

  write(actor: Actor, path: string, body: unknown, version: number): Promise<Answer> {
    return this.send(actor, 'PUT', path, body, { 'if-match': `"${version}"` });
  }

  /** Opens an incident and gives its id. */
  async opened(actor: Actor, call: object = { said: 'help, PWC 7' }): Promise<string> {
    const { body } = await this.open(actor, { call });
    return String(body['id']);
  }

  /** The codes of the faults that a check of the record finds. */
  async faults(): Promise<string[]> {
    return (await this.check()).map(({ code }) => code);
  }

  async check() {
    return (await verifyRecord(this.desk.unitOfWork, this.headsFile)).faults;
  }
}
