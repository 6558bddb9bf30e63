import { isAbsolute, join } from 'node:path';

/** Which database the service keeps its record in. */
export type DatabaseTarget =
  | { readonly engine: 'sqlite'; readonly file: string }
  | { readonly engine: 'postgres'; readonly url: string };

export type Engine = DatabaseTarget['engine'];

/** Where the record lies unless the environment names another place, seen from the project's folder. */
const DEFAULT_FILE = 'var/incident-desk.sqlite';

/**
 * Reads DATABASE_URL: `postgres://…` (or `postgresql://…`) names a PostgreSQL database, `sqlite:FILE` another file
 * than var/incident-desk.sqlite. A relative file is seen from `root`. Undefined for anything else.
 * @example readDatabaseTarget('sqlite:demo.sqlite', '/srv/desk') // { engine: 'sqlite', file: '/srv/desk/demo.sqlite' }
 */
export function readDatabaseTarget(url: string | undefined, root: string): DatabaseTarget | undefined {
  if (url !== undefined && /^postgres(ql)?:\/\/./.test(url)) return { engine: 'postgres', url };
  const file = url === undefined ? DEFAULT_FILE : /^sqlite:(.+)$/.exec(url)?.[1];
  if (file === undefined) return undefined;
  return { engine: 'sqlite', file: isAbsolute(file) ? file : join(root, file) };
}

/** The target as it may be shown to anyone: without user name, password and settings. */
export function nameTarget(target: DatabaseTarget): string {
  if (target.engine === 'sqlite') return `the SQLite file ${target.file}`;
  const { groups } = /^\w+:\/\/(?:.*@)?(?<host>[^/?]*)\/?(?<name>[^?]*)/.exec(target.url) ?? {};
  return `the PostgreSQL database "${groups?.['name'] ?? ''}" at ${groups?.['host'] || 'the local socket'}`;
}
