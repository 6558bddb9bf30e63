import { randomUUID } from 'node:crypto';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

export interface Answer {
  readonly id: string;
  readonly version: number;
  readonly [member: string]: unknown;
}

interface Sent {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  readonly url: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Signed in again before a session that nobody used would have ended. */
const SESSION_MS = 8 * 3_600_000;

/** Somebody of the demonstration who uses the API as any browser does; every rule of the desk holds for them. */
export class DemoVisitor {
  private cookie = '';
  private signedInAt = Number.NEGATIVE_INFINITY;

  constructor(
    private readonly app: NestFastifyApplication,
    private readonly signInName: string,
    private readonly password: string,
  ) {}

  get(url: string): Promise<Answer> {
    return this.send({ method: 'GET', url });
  }

  /** Sends a create with a key of its own. */
  create(url: string, body: unknown): Promise<Answer> {
    return this.send({ method: 'POST', url, body, headers: { 'idempotency-key': randomUUID() } });
  }

  /** Sends a change of the version that is there. */
  async change(method: 'POST' | 'PUT', url: string, version: number, body: unknown): Promise<Answer> {
    return this.send({ method, url, body, headers: { 'if-match': `"${version}"` } });
  }

  /** Sends bytes as they are. */
  patch(url: string, body: Buffer, headers: Readonly<Record<string, string>>): Promise<Answer> {
    return this.send({ method: 'PATCH', url, body, headers });
  }

  post(url: string, body?: unknown): Promise<Answer> {
    return this.send({ method: 'POST', url, body });
  }

  put(url: string, body: unknown): Promise<Answer> {
    return this.send({ method: 'PUT', url, body });
  }

  /** Signs in where the session has ended, or would soon. */
  async arrive(now: number): Promise<void> {
    if (now - this.signedInAt < SESSION_MS) return;
    await this.send({
      method: 'POST',
      url: '/api/session',
      body: { signInName: this.signInName, password: this.password },
    });
    this.signedInAt = now;
  }

  private async send({ method, url, body, headers }: Sent): Promise<Answer> {
    const answer = await this.app.inject({
      method,
      url,
      headers: { ...headers, ...(this.cookie !== '' && { cookie: this.cookie }) },
      ...(body !== undefined && { payload: body as object }),
    });
    if (answer.statusCode >= 400) throw new Error(`${method} ${url} was refused: ${answer.body}`);
    const cookie = answer.cookies.find(({ name }) => name === 'desk_session');
    if (cookie !== undefined) this.cookie = `desk_session=${cookie.value}`;
    return (answer.body === '' ? {} : answer.json()) as Answer;
  }
}
