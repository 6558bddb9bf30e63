import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { afterAll, beforeAll } from 'vitest';
import type { Role } from '../../shared/kernel/role.js';
import type { Actor, PersonActor } from '../../src/server/accounts/accounts.api.js';
import { AccountsService } from '../../src/server/accounts/accounts.service.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import type { Desk } from '../support/databases.js';
import { person, startRecordApp } from './record-app.js';

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

  /** Somebody who has an account, signed in. */
  async account(role: Role, name: string): Promise<PersonActor> {
    const draft = { name, signInName: `${name} ${randomUUID()}`, role };
    const { id } = await this.app.get(AccountsService, { strict: false }).create(draft, randomUUID());
    return { ...person(role, name), accountId: id };
  }

  /** The codes of the faults that a check of the record finds. */
  async faults(): Promise<string[]> {
    return (await this.check()).map(({ code }) => code);
  }

  async check() {
    return (await verifyRecord(this.desk.unitOfWork, this.headsFile)).faults;
  }
}
