import { type DynamicModule, Module } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import type { Role } from '../../shared/kernel/role.js';
import type { Actor, PersonActor } from '../../src/server/accounts/accounts.api.js';
import { AccountsModule } from '../../src/server/accounts/accounts.module.js';
import { ACCOUNT_ROWS } from '../../src/server/accounts/database/account-rows.js';
import { DETERMINATION_ROWS, Law } from '../../src/server/determination/determination.api.js';
import { DeterminationModule } from '../../src/server/determination/determination.module.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { FleetModule } from '../../src/server/fleet/fleet.module.js';
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

/** For `describeEngines`: what the service of these tests maps. */
const ROWS = [...ACCOUNT_ROWS, ...FLEET_ROWS, ...RECORD_ROWS, ...DETERMINATION_ROWS];
export const RECORD = { rows: [...ROWS, CreateOnceRow] };

@Module({})
class RecordDesk {
  static with(target: DatabaseTarget, settings: RecordSettings, law: Law): DynamicModule {
    const database = DatabaseModule.with({ target, rows: ROWS, migrations: ALL_MIGRATIONS });
    const fleet = FleetModule.with(AccountsModule);
    return {
      module: RecordDesk,
      imports: [database, AccountsModule, fleet, RecordModule.with(settings), DeterminationModule.with(law)],
    };
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
  const settings = new RecordSettings('America/Chicago', headsFile);
  const law = new Law(await loadRulePacks(), loadGeography());
  const app = await NestFactory.create<NestFastifyApplication>(
    RecordDesk.with(target, settings, law),
    adapter,
    {
      bodyParser: false,
      logger: ['error', 'warn'],
      abortOnError: false,
    },
  );
  app.useGlobalFilters(new ProblemFilter(routes));
  await app.init();
  await server.ready();
  return app;
}

export const person = (role: Role, personName: string = role): PersonActor => ({
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
