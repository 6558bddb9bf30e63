import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { createApp } from '../../src/server/create-app.js';
import type { Config } from '../../src/server/platform/config.js';
import type { DatabaseTarget, Engine } from '../../src/server/platform/database/database-target.js';
import { cloneTemplate } from './database-clone.js';

export interface TestApp {
  readonly app: NestFastifyApplication;
  readonly database: DatabaseTarget;
  readonly close: () => Promise<void>;
}

/** The real service, not listening, on an empty database of its own. */
export async function openApp(engine: Engine = 'sqlite', config: Partial<Config> = {}): Promise<TestApp> {
  const clone = await cloneTemplate(engine);
  const folder = mkdtempSync(join(tmpdir(), 'desk-app-'));
  const app = await createApp({
    host: '127.0.0.1',
    port: 0,
    rulePacksDir: undefined,
    database: clone.target,
    recordHeadsFile: join(folder, 'heads'),
    timeZone: 'America/Chicago',
    tls: undefined,
    trustedProxy: undefined,
    firstAdministrator: undefined,
    ...config,
  });
  return {
    app,
    database: clone.target,
    close: async () => {
      await app.close();
      await clone.drop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
