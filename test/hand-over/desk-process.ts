import { randomUUID } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { openAccountDesk } from '../../src/server/accounts/accounts.api.js';
import { OCTETS } from '../../src/server/platform/http/read-octets.js';
import { PASSWORD } from '../accounts/house.js';
import { evidenceOf } from '../evidence/evidence-desk.js';
import { type RunningServer, startServer } from '../support/start-server.js';

/** The first box of an MP4 (ISO/IEC 14496-12, 4.3), by which a video is known; what follows it nobody reads. */
const VIDEO_HEAD = Buffer.concat([
  Buffer.of(0, 0, 0, 24),
  Buffer.from('ftypisom'),
  Buffer.of(0, 0, 2, 0),
  Buffer.from('isomiso2'),
]);

/** The built service in a process of its own, so that its memory is its own, and a manager signed in to it. Linux only. */
export class DeskProcess {
  private constructor(
    private readonly environment: Record<string, string>,
    readonly folder: string,
    private server: RunningServer,
    private cookie: string,
  ) {}

  static async start(): Promise<DeskProcess> {
    const folder = mkdtempSync(join(tmpdir(), 'desk-large-'));
    const environment = {
      DATABASE_URL: `sqlite:${join(folder, 'desk.sqlite')}`,
      RECORD_HEADS_FILE: join(folder, 'heads'),
      EVIDENCE_FOLDER: join(folder, 'evidence'),
      MAIL_FOLDER: join(folder, 'mail'),
      BUSINESS_TIME_ZONE: 'America/Chicago',
    };
    const accounts = await openAccountDesk(environment);
    const { oneTimePassword } = await accounts.create({
      signInName: 'max',
      name: 'Max Ruiz',
      role: 'manager',
    });
    await accounts.close();
    const desk = new DeskProcess(environment, folder, await startServer(environment), '');
    await desk.signIn(oneTimePassword ?? '');
    await desk.send('PUT', '/api/session/password', {
      currentPassword: oneTimePassword,
      newPassword: PASSWORD,
    });
    await desk.signIn(PASSWORD);
    return desk;
  }

  /** Ends the process and begins another on the same record. */
  async restart(more: Record<string, string> = {}): Promise<void> {
    expect(await this.server.stop()).toBe(0);
    this.server = await startServer({ ...this.environment, ...more });
    await this.signIn(PASSWORD);
  }

  async stop(): Promise<void> {
    await this.server.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }

  private async signIn(password: string): Promise<void> {
    const answer = await this.send('POST', '/api/session', { signInName: 'max', password });
    this.cookie = answer.headers.getSetCookie()[0]?.split(';')[0] ?? '';
  }

  async send(method: string, path: string, body?: object | Buffer, headers: Record<string, string> = {}) {
    const isBytes = Buffer.isBuffer(body);
    const type = body && { 'content-type': isBytes ? OCTETS : 'application/json' };
    const answer = await fetch(`${this.server.url}${path}`, {
      method,
      headers: { cookie: this.cookie, ...type, ...headers },
      ...(body && { body: isBytes ? new Uint8Array(body) : JSON.stringify(body) }),
    });
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return answer;
  }

  async create<T = { id: string }>(path: string, body: object): Promise<T> {
    return (await (await this.send('POST', path, body, { 'idempotency-key': randomUUID() })).json()) as T;
  }

  /** A call for help, until it is answered. */
  async callForHelp(said: string): Promise<void> {
    await this.create('/api/incidents', { call: { said } });
  }

  /** A video of so many bytes on its way in: its head is sent, and the rest is a hole in the file that arrives. */
  async startVideo(incident: string, size: number): Promise<string> {
    const uploads = `${evidenceOf(incident)}/uploads`;
    const { id } = await this.create(uploads, { size, name: 'dock camera.mp4', about: { people: [] } });
    await this.send('PATCH', `${uploads}/${id}`, VIDEO_HEAD, { 'upload-offset': '0' });
    truncateSync(join(this.folder, 'evidence', 'incoming', id), size);
    return id;
  }

  async finishVideo(incident: string, id: string): Promise<void> {
    await this.send('POST', `${evidenceOf(incident)}/uploads/${id}/finish`);
  }

  /** The answer as its bytes come, none of them read yet. */
  open(path: string): Promise<IncomingMessage> {
    return new Promise((resolve, reject) => {
      get(`${this.server.url}${path}`, { headers: { cookie: this.cookie } }, resolve).once('error', reject);
    });
  }

  /** Bytes of memory that the process had at most since it was asked to forget (proc(5): VmHWM, clear_refs). */
  peakBytes(): number {
    const status = readFileSync(`/proc/${this.server.process.pid}/status`, 'utf8');
    return Number(/^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1] ?? Number.NaN) * 1024;
  }

  forgetPeak(): void {
    writeFileSync(`/proc/${this.server.process.pid}/clear_refs`, '5');
  }
}
