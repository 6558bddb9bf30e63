import { randomUUID } from 'node:crypto';
import { type DynamicModule, Module } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import request, { type Response, type Test } from 'supertest';
import type { Role } from '../../shared/kernel/role.js';
import type { Actor } from '../../src/server/accounts/accounts.api.js';
import { RosterService } from '../../src/server/accounts/accounts.api.js';
import { Fleet } from '../../src/server/fleet/fleet.api.js';
import { FleetModule } from '../../src/server/fleet/fleet.module.js';
import { Clock } from '../../src/server/platform/clock.js';
import { CreateOnce } from '../../src/server/platform/database/create-once.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { ProblemFilter } from '../../src/server/platform/http/problem.filter.js';
import { readJsonBodies } from '../../src/server/platform/http/read-json-bodies.js';
import { RouteTable } from '../../src/server/platform/http/route-table.js';
import type { Desk } from '../support/databases.js';

/** A clock that a test sets, and that goes on by a second each time it is read. */
class TestClock extends Clock {
  instant = Date.parse('2026-06-13T16:00:00.000Z');

  override now(): string {
    this.instant += 1000;
    return new Date(this.instant).toISOString();
  }
}

@Module({})
class Rest {
  static with(desk: Desk, clock: Clock): DynamicModule {
    return {
      module: Rest,
      global: true,
      providers: [
        { provide: UnitOfWork, useValue: desk.unitOfWork },
        { provide: CreateOnce, useValue: new CreateOnce(desk.unitOfWork, clock) },
        { provide: Clock, useValue: clock },
      ],
      exports: [UnitOfWork, CreateOnce, Clock],
    };
  }
}

export const SHIFT_LEAD = 'f7c0f9a2-5a3e-4a53-8f5e-1b0e2a6d3c11';

/** The roster has one shift lead, on 13 June. */
@Module({
  providers: [
    {
      provide: RosterService,
      useValue: {
        onDuty: (day: string) =>
          Promise.resolve(day === '2026-06-13' ? [{ accountId: SHIFT_LEAD, duties: ['shift-lead'] }] : []),
      },
    },
  ],
  exports: [RosterService],
})
class TestAccounts {}

/** Who asks: a role, the day's shift lead, or a device that nobody signed in on. */
export type Who = Role | 'shift-lead' | 'device';

export function actorOf(who: Who): Actor {
  const onDevice = { deviceId: '0d3c9b1e-7f64-4b8a-9a51-3e2f1c0b9a77', deviceName: 'Dock phone 2' };
  if (who === 'device') return { kind: 'device', ...onDevice, personName: 'not named' };
  const accountId = who === 'shift-lead' ? SHIFT_LEAD : `00000000-0000-4000-8000-${who.padEnd(12, '0')}`;
  const role = who === 'shift-lead' ? 'staff' : who;
  return { kind: 'person', accountId, personName: `The ${who}`, role, sessionId: 's', ...onDevice };
}

export interface FleetServer {
  readonly fleet: Fleet;
  readonly clock: TestClock;
  get(path: string, who?: Who): Test;
  post(path: string, body: unknown, who?: Who, key?: string): Test;
  put(path: string, body: unknown, etag: string | undefined, who?: Who): Test;
  close(): Promise<void>;
}

/** The fleet behind HTTP, with a gate that admits by the words at each route and takes anyone's word for who they are. */
export async function startFleet(desk: Desk): Promise<FleetServer> {
  const clock = new TestClock();
  const adapter = new FastifyAdapter({ genReqId: () => randomUUID() });
  const server = adapter.getInstance();
  const routes = new RouteTable(server);
  readJsonBodies(server);
  server.addHook('onRequest', async (incoming, reply) => {
    const who = String(incoming.headers['test-who']) as Who;
    const actor = actorOf(who);
    const named = actor.kind === 'person' ? actor.role : 'device';
    if (incoming.routeOptions.config.access?.who.includes(named) !== true) return reply.status(403).send();
    incoming.actor = actor;
  });
  const app = await NestFactory.create<NestFastifyApplication>(
    { module: Rest, imports: [Rest.with(desk, clock), FleetModule.with(TestAccounts)] },
    adapter,
    { bodyParser: false, logger: ['error'], abortOnError: false },
  );
  app.useGlobalFilters(new ProblemFilter(routes));
  await app.init();
  await server.ready();
  const agent = () => request(app.getHttpServer());
  return {
    fleet: app.get(Fleet),
    clock,
    get: (path, who = 'staff') => agent().get(path).set('test-who', who),
    post: (path, body, who = 'manager', key = randomUUID()) =>
      agent()
        .post(path)
        .set({ 'test-who': who, 'idempotency-key': key })
        .send(body as object),
    put: (path, body, etag, who = 'manager') =>
      agent()
        .put(path)
        .set({ 'test-who': who, ...(etag === undefined ? {} : { 'if-match': etag }) })
        .send(body as object),
    close: () => app.close(),
  };
}

/** The body of an answer, which each test looks at in its own way. */
export const bodyOf = <T = Record<string, unknown>>({ body }: Response): T => body as T;

let count = 1000;

/** A craft in the fleet, with a name of its own and whatever the test cares about. */
export async function addCraft(
  server: FleetServer,
  different: object = {},
): Promise<Record<string, unknown> & { id: string }> {
  count += 1;
  const sent = { type: 'personal-watercraft', unitName: `PWC ${count}`, ...different };
  return bodyOf(await server.post('/api/craft', sent).expect(201));
}
