import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const MAIN = join(import.meta.dirname, '..', '..', 'dist', 'src', 'server', 'main.js');

export interface RunningServer {
  url: string;
  process: ChildProcess;
  /** What it has printed so far. */
  said: () => string;
  /** Ends it as a service manager would, and gives its exit status. */
  stop: () => Promise<number | null>;
}

export interface FailedStart {
  status: number | null;
  stdout: string;
  stderr: string;
}

/** Starts the built service on a free port, with a database of its own; throws with what it said when it does not start. */
export async function startServer(environment: Record<string, string> = {}): Promise<RunningServer> {
  const started = await start({ PORT: '0', ...environment });
  if ('status' in started) throw new Error(`The service did not start:\n${started.stderr}`);
  return started;
}

/** Starts the built service where it must not start, and gives what it said. */
export async function failToStart(environment: Record<string, string>): Promise<FailedStart> {
  const started = await start({ PORT: '0', ...environment });
  if ('status' in started) return started;
  await started.stop();
  throw new Error(`The service started at ${started.url}`);
}

async function start(environment: Record<string, string>): Promise<RunningServer | FailedStart> {
  const folder = mkdtempSync(join(tmpdir(), 'desk-start-'));
  const own = {
    DEMO: 'no',
    DATABASE_URL: `sqlite:${join(folder, 'desk.sqlite')}`,
    ...(environment['SMTP_URL'] === undefined && { MAIL_FOLDER: join(folder, 'mail') }),
  };
  const child = spawn(process.execPath, [MAIN], { env: { ...process.env, ...own, ...environment } });
  const exit = once(child, 'exit').then(([status]) => {
    rmSync(folder, { recursive: true, force: true });
    return status as number | null;
  });
  let stdout = '';
  let stderr = '';
  child.stderr.on('data', (data: Buffer) => (stderr += data.toString()));
  const url = new Promise<string>((resolve) => {
    child.stdout.on('data', (data: Buffer) => {
      stdout += data.toString();
      const said = /Listening on (\S+)\n/.exec(stdout)?.[1];
      if (said !== undefined) resolve(said);
    });
  });
  const first = await Promise.race([url, exit]);
  if (typeof first !== 'string') return { status: first, stdout, stderr };
  const stop = (): Promise<number | null> => {
    child.kill('SIGTERM');
    return exit;
  };
  return { url: first, process: child, said: () => stdout, stop };
}
