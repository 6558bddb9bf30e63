import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes, randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { type ClientRequest, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { OCTETS } from '../../src/server/platform/http/read-octets.js';
import { PASSWORD } from '../accounts/house.js';
import { describeEngines } from '../support/databases.js';
import { type Answer, evidenceOf, sha256 } from './evidence-desk.js';

const RUN = join(import.meta.dirname, '..', 'support', 'run-typescript.mjs');
/** Starting the other process takes seconds on a busy machine. */
const PATIENCE_MS = 120_000;
const SIZE = 4_000_000;
const HALF = 1_500_000;

/** A service in a process of its own, and somebody signed in to it. */
class Service {
  private constructor(
    readonly url: string,
    readonly process: ChildProcess,
    private cookie: string,
  ) {}

  static async start(target: object, folder: string): Promise<Service> {
    const command = [RUN, '/test/evidence/evidence-process.ts', JSON.stringify(target), folder];
    const child = spawn(process.execPath, command, { stdio: ['ignore', 'pipe', 'inherit'] });
    const [url] = (await once(createInterface(child.stdout), 'line')) as [string];
    const service = new Service(url, child, '');
    const session = await service.send('POST', '/api/session', { signInName: 'root', password: PASSWORD });
    service.cookie = session.headers
      .getSetCookie()
      .map((cookie) => cookie.split(';', 1)[0])
      .join('; ');
    return service;
  }

  send(method: string, path: string, body?: object | Buffer, headers: Record<string, string> = {}) {
    const isBytes = Buffer.isBuffer(body);
    return fetch(`${this.url}${path}`, {
      method,
      headers: {
        cookie: this.cookie,
        ...(body === undefined ? {} : { 'content-type': isBytes ? OCTETS : 'application/json' }),
        ...headers,
      },
      ...(body === undefined ? {} : { body: isBytes ? new Uint8Array(body) : JSON.stringify(body) }),
    });
  }

  async create(path: string, body: object): Promise<Answer> {
    const answer = await this.send('POST', path, body, { 'idempotency-key': randomUUID() });
    expect(answer.status).toBe(201);
    return (await answer.json()) as Answer;
  }

  /** Begins to send a piece, and stays in the middle of it. */
  hang(path: string, bytes: Buffer, length: number): ClientRequest {
    const { hostname, port } = new URL(this.url);
    const headers = {
      cookie: this.cookie,
      'content-type': OCTETS,
      'upload-offset': '0',
      'content-length': length,
    };
    const piece = request({ hostname, port, path, method: 'PATCH', headers });
    // Its end is no error of the test.
    piece.on('error', () => undefined);
    piece.write(bytes);
    return piece;
  }

  async kill(): Promise<void> {
    const closed = once(this.process, 'close');
    this.process.kill('SIGKILL');
    await closed;
  }
}

describeEngines('a file whose way in was cut', { rows: [] }, (desk) => {
  let folder: string;
  const running: Service[] = [];
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'desk-cut-'));
  });
  afterEach(async () => {
    await Promise.all(running.splice(0).map((service) => service.kill()));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const start = async (): Promise<Service> => {
    const service = await Service.start(desk.target, folder);
    running.push(service);
    return service;
  };
  const arrived = (id: string): number => {
    const path = join(folder, 'evidence', 'incoming', id);
    return existsSync(path) ? statSync(path).size : 0;
  };
  const halfSent = async (service: Service, bytes: Buffer) => {
    const incident = (await service.create('/api/incidents', {})).id;
    const uploads = `${evidenceOf(incident)}/uploads`;
    const { id } = await service.create(uploads, { size: SIZE, type: 'text/plain', sha256: sha256(bytes) });
    const path = `${uploads}/${id}`;
    const piece = service.hang(path, bytes.subarray(0, HALF), SIZE);
    await expect.poll(() => arrived(id), { timeout: PATIENCE_MS }).toBe(HALF);
    return { path, piece, id };
  };
  /** Asks how much arrived, sends the rest, and has evidence made of it. */
  const resume = async (service: Service, path: string, bytes: Buffer): Promise<number> => {
    const head = await service.send('HEAD', path);
    const offset = Number(head.headers.get('upload-offset'));
    const rest = await service.send('PATCH', path, bytes.subarray(offset), { 'upload-offset': `${offset}` });
    expect([rest.status, rest.headers.get('upload-offset')]).toEqual([204, `${SIZE}`]);
    const made = await service.send('POST', `${path}/finish`);
    expect([made.status, await made.json()]).toMatchObject([201, { sha256: sha256(bytes), size: SIZE }]);
    return offset;
  };
  const text = (): Buffer => Buffer.from(randomBytes(SIZE / 2).toString('hex'));

  it(
    'by the signal goes on where it broke off, and by a new request while the old one still hangs',
    async () => {
      const service = await start();
      const bytes = text();
      const lost = await halfSent(service, bytes);
      lost.piece.destroy();
      expect(await resume(service, lost.path, bytes)).toBe(HALF);
      const hanging = await halfSent(service, bytes);
      const closed = new Promise((resolve) => hanging.piece.once('close', resolve));
      expect(await resume(service, hanging.path, bytes)).toBe(HALF);
      await closed;
    },
    PATIENCE_MS,
  );

  it(
    'by the end of the process goes on in the next one, and nothing half written stays',
    async () => {
      const first = await start();
      const bytes = text();
      const { path, id } = await halfSent(first, bytes);
      await first.kill();
      running.length = 0;
      expect(arrived(id)).toBe(HALF);
      const next = await start();
      expect(await resume(next, path, bytes)).toBe(HALF);
      expect(readdirSync(join(folder, 'evidence', 'incoming'))).not.toContain(id);
      expect(readdirSync(join(folder, 'evidence', 'arriving'))).toEqual([]);
    },
    PATIENCE_MS,
  );
});
