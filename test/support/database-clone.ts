import { randomUUID } from 'node:crypto';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject } from 'vitest';
import type { DatabaseTarget, Engine } from '../../src/server/platform/database/database-target.js';
import { runOnServer, siblingOf } from './postgres-client.js';

export interface DatabaseClone {
  target: DatabaseTarget;
  drop(): Promise<void>;
}

/** An empty database with the schema of the service, as fast as each engine can copy one. */
export async function cloneTemplate(engine: Engine): Promise<DatabaseClone> {
  const { sqliteFile, postgresAddress } = inject('templates');
  if (engine === 'sqlite') {
    const folder = mkdtempSync(join(tmpdir(), 'desk-clone-'));
    const file = join(folder, 'desk.sqlite');
    copyFileSync(sqliteFile, file);
    return {
      target: { engine, file },
      drop: () => Promise.resolve(rmSync(folder, { recursive: true, force: true })),
    };
  }
  const name = `desk_${randomUUID().replaceAll('-', '')}`;
  await runOnServer(postgresAddress, `CREATE DATABASE ${name} TEMPLATE template_desk`);
  return {
    target: { engine, url: siblingOf(postgresAddress, name) },
    drop: () => runOnServer(postgresAddress, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}
