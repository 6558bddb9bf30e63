import { randomUUID } from 'node:crypto';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import request from 'supertest';
import { afterAll, beforeAll, describe } from 'vitest';
import type { Role } from '../../shared/kernel/role.js';
import { AccountsService } from '../../src/server/accounts/accounts.service.js';
import { AccountsRepository } from '../../src/server/accounts/database/accounts.repository.js';
import { Passwords } from '../../src/server/accounts/passwords.js';
import { Clock } from '../../src/server/platform/clock.js';
import { writingSource } from '../../src/server/platform/database/data-source.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { ENGINES } from '../support/databases.js';
import { openApp, type TestApp } from '../support/app.js';

/** A browser with its cookies. */
export type Browser = ReturnType<typeof request.agent>;

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

export const PASSWORD = 'three herons on a pier';

/** Hashed once for all people of all tests: that is slow on purpose, and sign-in.test.ts chooses one over HTTP. */
let chosen: Promise<string> | undefined;

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly signInName: string;
  readonly role: Role;
}

/** A running service and the people of a test. */
export class House {
  private constructor(
    private readonly opened: TestApp,
    private readonly clock: { aheadMs: number },
  ) {}

  static async open(
    engine: (typeof ENGINES)[number],
    config: Parameters<typeof openApp>[1] = {},
  ): Promise<House> {
    const opened = await openApp(engine, config);
    const clock = { aheadMs: 0 };
    Object.assign(opened.app.get(Clock), { now: () => new Date(Date.now() + clock.aheadMs).toISOString() });
    return new House(opened, clock);
  }

  get app(): NestFastifyApplication {
    return this.opened.app;
  }

  get database(): TestApp['database'] {
    return this.opened.database;
  }

  close(): Promise<void> {
    return this.opened.close();
  }

  now(): string {
    return this.app.get(Clock).now();
  }

  /** Moves the clock of the service. */
  letPass(ms: number): void {
    this.clock.aheadMs += ms;
  }

  browser(): Browser {
    return request.agent(this.app.getHttpServer());
  }

  /** Plain SQL past the service. */
  async plainSql(sql: string): Promise<unknown> {
    const source = await writingSource(this.opened.database, {}).initialize();
    try {
      return await source.query(sql);
    } finally {
      await source.destroy();
    }
  }

  /** Somebody who has chosen the password PASSWORD. */
  async person(role: Role): Promise<Person> {
    const signInName = `${role} ${randomUUID().slice(0, 8)}`;
    const draft = { name: `The ${signInName}`, signInName, role };
    const { id } = await this.app.get(AccountsService).create(draft, randomUUID());
    const passwordHash = await (chosen ??= new Passwords().hash(PASSWORD));
    await this.app
      .get(UnitOfWork)
      .run(() =>
        this.app
          .get(AccountsRepository)
          .change(id, { passwordHash, passwordDue: false, passwordExpiresAt: null }),
      );
    return { id, name: draft.name, signInName, role };
  }

  /** A browser in which a person has signed in; by default somebody new. */
  async signedIn(who: Role | Person, browser = this.browser()): Promise<Browser> {
    const { signInName } = typeof who === 'string' ? await this.person(who) : who;
    await browser.post('/api/session').send({ signInName, password: PASSWORD }).expect(200);
    return browser;
  }

  /** A browser on a device that an administrator has enrolled. */
  async device(administrator: Browser, name = 'Dock phone'): Promise<{ id: string; browser: Browser }> {
    const made = await create(administrator, '/api/devices', { name }).expect(201);
    const { id, code } = made.body as { id: string; code: string };
    const browser = this.browser();
    await browser.post('/api/device').send({ code }).expect(200);
    return { id, browser };
  }
}

/** Sends a create with a key of its own. */
export function create(browser: Browser, path: string, body: object, key: string = randomUUID()) {
  return browser.post(path).set('Idempotency-Key', key).send(body);
}

/** Sends a change of the version that was read. */
export function change(browser: Browser, path: string, version: number, body: object) {
  return browser.patch(path).set('If-Match', `"${version}"`).send(body);
}

/** The same suite on both engines, each with a service and an empty database of its own. */
export function describeHouse(
  name: string,
  suite: (house: () => House) => void,
  config: Parameters<typeof openApp>[1] = {},
): void {
  for (const engine of ENGINES) {
    describe(`${name} (${engine})`, () => {
      let house: House;
      beforeAll(async () => {
        house = await House.open(engine, config);
      });
      afterAll(() => house.close());
      suite(() => house);
    });
  }
}
