import { randomUUID } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { AccountsService } from '../../src/server/accounts/accounts.service.js';
import { createApp } from '../../src/server/create-app.js';
import { readConfig } from '../../src/server/platform/config.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';

export interface BenchDesk {
  readonly port: number;
  /** Of a manager who has signed in. */
  readonly headers: Record<string, string>;
  readonly unitOfWork: UnitOfWork;
  /** Copies the database as it stands. */
  readonly copyTo: (file: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** The real service on a SQLite file, listening, with a manager signed in. */
export async function openDesk(file: string, recordHeadsFile: string): Promise<BenchDesk> {
  const app = await createApp(
    readConfig({
      DATABASE_URL: `sqlite:${file}`,
      RECORD_HEADS_FILE: recordHeadsFile,
      BUSINESS_TIME_ZONE: 'America/Chicago',
      MAIL_FOLDER: `${file}.mail`,
      EVIDENCE_FOLDER: `${file}.evidence`,
    }),
  );
  await app.listen(0, '127.0.0.1');
  const { port } = app.getHttpServer().address() as AddressInfo;
  const draft = { name: 'Max Bench', signInName: 'max', role: 'manager' as const };
  const { oneTimePassword } = await app.get(AccountsService).create(draft, randomUUID());
  const newPassword = 'three herons on a pier';
  const first = await signIn(port, oneTimePassword ?? '');
  await send(port, 'PUT', '/api/session/password', { currentPassword: oneTimePassword, newPassword }, first);
  const cookie = await signIn(port, newPassword);
  const unitOfWork = app.get(UnitOfWork);
  return {
    port,
    headers: { cookie },
    unitOfWork,
    copyTo: async (copy) => {
      await unitOfWork.manager.query('VACUUM INTO ?', [copy]);
    },
    close: () => app.close(),
  };
}

async function signIn(port: number, password: string): Promise<string> {
  const answer = await send(port, 'POST', '/api/session', { signInName: 'max', password });
  return answer.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0] ?? '')
    .join('; ');
}

async function send(
  port: number,
  method: string,
  path: string,
  body: object,
  cookie = '',
): Promise<Response> {
  const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
    method,
    headers: { 'content-type': 'application/json', ...(cookie && { cookie }) },
    body: JSON.stringify(body),
  });
  if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
  return answer;
}
