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

/** How a service of the tests is set up on a database; what it keeps in files lies in a folder of its own. */
export function configOf(database: DatabaseTarget, folder: string): Config {
  return {
    host: '127.0.0.1',
    port: 0,
    rulePacksDir: undefined,
    database,
    recordHeadsFile: join(folder, 'heads'),
    timeZone: 'America/Chicago',
    decision: { leadHours: 24, recheckMonths: 12 },
    evidence: { folder: join(folder, 'evidence'), longestBytes: LONGEST_BYTES },
    mail: {
      kind: 'folder',
      folder: join(folder, 'mail'),
      from: { name: 'Incident desk', address: 'desk@rental.example' },
    },
    mapTiles: null,
    publicAddress: 'https://desk.rental.example',
    timeStampUrl: null,
    tls: undefined,
    trustedProxy: undefined,
    demo: false,
    firstAdministrator: undefined,
  };
}

const MIB = 1024 * 1024;
const LONGEST_BYTES = { photo: 30 * MIB, video: 2048 * MIB, audio: 512 * MIB, document: 50 * MIB };

/** The real service, not listening, on an empty database of its own. */
export async function openApp(engine: Engine = 'sqlite', config: Partial<Config> = {}): Promise<TestApp> {
  const clone = await cloneTemplate(engine);
  const folder = mkdtempSync(join(tmpdir(), 'desk-app-'));
  const app = await createApp({ ...configOf(clone.target, folder), ...config });
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
