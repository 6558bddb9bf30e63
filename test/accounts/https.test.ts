import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/server/platform/config.js';
import { failToStart, startServer } from '../support/start-server.js';
import { House, PASSWORD } from './house.js';
import { CERTIFICATE, KEY, OTHER_KEY } from './self-signed.js';

let folder: string;
let files: { cert: string; key: string; other: string; none: string };
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tls-'));
  const put = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  files = {
    cert: put('cert.pem', CERTIFICATE),
    key: put('key.pem', KEY),
    other: put('other.pem', OTHER_KEY),
    none: join(folder, 'none.pem'),
  };
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('HTTPS by configuration', () => {
  it('is spoken with a certificate and its key, and then cookies come by HTTPS alone', async () => {
    const server = await startServer({
      TLS_CERT_FILE: files.cert,
      TLS_KEY_FILE: files.key,
      FIRST_ADMIN_NAME: 'ana',
      FIRST_ADMIN_PASSWORD: PASSWORD,
    });
    const signedIn = await post(`${server.url}/api/session`, { signInName: 'ana', password: PASSWORD });
    expect(await server.stop()).toBe(0);
    expect(server.url).toMatch(/^https:\/\/127\.0\.0\.1:\d+$/);
    expect(signedIn).toEqual({
      status: 200,
      cookie: expect.stringMatching(/^desk_session=\S+; .*HttpOnly; SameSite=Lax; Secure$/) as string,
    });
  });

  it('does not start with a key of another certificate', async () => {
    const { status, stderr } = await failToStart({ TLS_CERT_FILE: files.cert, TLS_KEY_FILE: files.other });
    expect([status, stderr]).toEqual([
      1,
      expect.stringContaining('are no pair of certificate and key in PEM'),
    ]);
  });

  it.each([
    [() => ({ TLS_CERT_FILE: files.cert }), 'TLS_KEY_FILE is missing'],
    [() => ({ TLS_KEY_FILE: files.key }), 'TLS_CERT_FILE is missing'],
    [() => ({ TLS_CERT_FILE: files.none, TLS_KEY_FILE: files.key }), 'TLS_CERT_FILE cannot be read: ENOENT'],
    [() => ({ TLS_CERT_FILE: files.key, TLS_KEY_FILE: files.key }), 'are no pair'],
    [() => ({ TRUSTED_PROXY: 'true' }), 'TRUSTED_PROXY holds "true"'],
    [() => ({ TRUSTED_PROXY: '0.0.0.0/0' }), 'TRUSTED_PROXY holds "0.0.0.0/0"'],
    [() => ({ TRUSTED_PROXY: '10.0.0.0/33' }), 'TRUSTED_PROXY holds'],
    [() => ({ TRUSTED_PROXY: '' }), 'TRUSTED_PROXY holds ""'],
    [() => ({ FIRST_ADMIN_NAME: 'ana' }), 'set both, or neither'],
    [() => ({ FIRST_ADMIN_PASSWORD: PASSWORD }), 'set both, or neither'],
    [() => ({ DATABASE_URL: 'mysql://root:hunter2@db/desk' }), 'DATABASE_URL cannot be read'],
  ])('%# is refused in words that help', (environment, words) => {
    expect(() => readConfig(environment())).toThrow(words);
  });

  it('repeats no password of the environment', () => {
    const environment = { DATABASE_URL: 'mysql://root:hunter2@db/desk', FIRST_ADMIN_PASSWORD: 'swordfish' };
    expect(() => readConfig(environment)).toThrow(/^(?![^]*(hunter2|swordfish))/);
  });

  it.each([
    ['127.0.0.1', ['127.0.0.1']],
    ['10.0.0.0/8, fd00::/8', ['10.0.0.0/8', 'fd00::/8']],
  ])('takes the proxies %s', (text, proxies) => {
    expect(readConfig({ TRUSTED_PROXY: text }).trustedProxy).toEqual(proxies);
  });
});

describe('a proxy that speaks HTTPS', () => {
  // De facto headers of proxies; who may send them is the point here.
  const FORWARDED = { 'X-Forwarded-Proto': 'https', 'X-Forwarded-For': '203.0.113.9' };

  it.each([
    [['127.0.0.1'], true],
    [['203.0.113.1'], false],
    [undefined, false],
  ])('of %j is believed: %s', async (trustedProxy, believed) => {
    const house = await House.open('sqlite', { trustedProxy });
    const ana = await house.person('staff');
    const answer = await house
      .browser()
      .post('/api/session')
      .set(FORWARDED)
      .send({ signInName: ana.signInName, password: PASSWORD });
    await house.close();
    expect(answer.status).toBe(200);
    expect(String(answer.get('Set-Cookie')).endsWith('; Secure')).toBe(believed);
  });

  it('that is not ours cannot make tries come from other addresses', async () => {
    const house = await House.open('sqlite');
    const statuses: number[] = [];
    for (let tries = 0; tries < 31; tries += 1) {
      const answer = await house
        .browser()
        .post('/api/session')
        .set({ 'X-Forwarded-For': `203.0.113.${tries}` })
        .send({ signInName: `nobody ${tries}`, password: 'x' });
      statuses.push(answer.status);
    }
    await house.close();
    expect(statuses.at(-1)).toBe(429);
  });
});

function post(url: string, body: object): Promise<{ status: number | undefined; cookie: string }> {
  return new Promise((resolve, reject) => {
    const sent = request(url, {
      method: 'POST',
      ca: CERTIFICATE,
      headers: { 'content-type': 'application/json' },
    });
    sent.once('error', reject);
    sent.once('response', (answer) => {
      answer.resume();
      resolve({ status: answer.statusCode, cookie: String(answer.headers['set-cookie']) });
    });
    sent.end(JSON.stringify(body));
  });
}
