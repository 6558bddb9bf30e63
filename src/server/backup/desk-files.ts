import { join } from 'node:path';
import { headsFileOf } from '../record/record.api.js';
import { readDatabaseTarget } from '../platform/database/database-target.js';
import { evidenceFolderOf } from '../platform/evidence-config.js';
import { projectRoot } from '../platform/project-root.js';

export type Environment = Record<string, string | undefined>;

/** Where everything lies that a desk on SQLite keeps. */
export interface DeskFiles {
  readonly database: string;
  readonly heads: string;
  readonly evidence: string;
}

/**
 * The files of the desk that the environment names, as the service reads it.
 * @throws Error for a desk on PostgreSQL, which has a back-up of its own, and for an address that is none
 */
export function deskFiles(environment: Environment): DeskFiles {
  const root = projectRoot();
  const target = readDatabaseTarget(environment['DATABASE_URL'], root);
  if (target === undefined) throw new Error('DATABASE_URL must be sqlite:FILE or postgres://…');
  if (target.engine === 'postgres') {
    throw new Error(
      'This copies a desk on SQLite. On PostgreSQL copy the database with pg_dump first and the folder of evidence ' +
        'after it, then hold the copy against itself with npm run -s verify.',
    );
  }
  return {
    database: target.file,
    heads: headsFileOf(environment['RECORD_HEADS_FILE'], target, root),
    evidence: evidenceFolderOf(environment['EVIDENCE_FOLDER'], target, root),
  };
}

/** The files of a copy of a desk. */
export function copiedFiles(folder: string): DeskFiles {
  return {
    database: join(folder, 'desk.sqlite'),
    heads: join(folder, 'desk.heads'),
    evidence: join(folder, 'evidence'),
  };
}

/** The environment under which a command looks at these files. */
export function environmentOf({ database, heads, evidence }: DeskFiles): Environment {
  return { DATABASE_URL: `sqlite:${database}`, RECORD_HEADS_FILE: heads, EVIDENCE_FOLDER: evidence };
}
