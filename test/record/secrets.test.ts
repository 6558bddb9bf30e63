import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const manager = person('manager', 'Max');

/** Numbers that pass the check digit, none of them anybody's. */
function cards(): string[] {
  return Array.from({ length: 25 }, (_, n) => {
    const body = `400000${String(n).padStart(3, '0')}123456`;
    const digit = [...Array(10).keys()].find((last) => luhn(`${body}${last}`)) ?? 0;
    return `${body}${digit}`.replace(/(\d{4})(?=\d)/g, '$1 ');
  });
}

function luhn(digits: string): boolean {
  const doubled = [...digits].reverse().map((digit, place) => Number(digit) * (place % 2 === 0 ? 1 : 2));
  return doubled.reduce((sum, one) => sum + (one > 9 ? one - 9 : one), 0) % 10 === 0;
}

const birthDates = Array.from({ length: 50 }, (_, n) => `19${50 + n}-0${1 + (n % 9)}-1${n % 10}`);
const socialSecurity = Array.from({ length: 25 }, (_, n) => `219-09-${9000 + n}`);
const planted = [...cards(), ...socialSecurity, ...birthDates];

describeEngines('100 planted values', RECORD, (desk) => {
  const client = new Client(desk);
  const logged: string[] = [];
  const note = (chunk: unknown): boolean => logged.push(String(chunk)) > 0;
  let id: string;

  beforeAll(async () => {
    id = await client.opened(manager);
    vi.spyOn(process.stdout, 'write').mockImplementation(note);
    vi.spyOn(process.stderr, 'write').mockImplementation(note);
  });
  afterAll(() => void vi.restoreAllMocks());

  it('are in no error and no log, wherever they are typed and whatever is wrong beside them', async () => {
    expect(planted).toHaveLength(100);
    const answers = await Promise.all(
      planted.flatMap((secret) => [
        client.open(manager, { call: { said: secret, kind: 'wrong' } }),
        client.open(manager, { id: secret, call: { [secret.replaceAll('-', ' ')]: secret, kind: 'wrong' } }),
        client.write(
          manager,
          `/${id}/sections/people`,
          { document: { people: [{ id: secret, age: 'x' }] } },
          0,
        ),
        client.write(manager, `/${id}/sections/people`, { document: { people: secret }, reason: 7 }, 0),
        client.send(manager, 'PUT', `/${id}/drafts/people`, { document: secret }),
        client.get(manager, `?status=${encodeURIComponent(secret)}`),
        client.get(manager, `/${encodeURIComponent(secret)}`),
        client.send(manager, 'POST', `/${id}/sections/people/withdrawals`, { path: secret, reason: secret }),
      ]),
    );
    expect(answers.filter(({ status }) => status < 400)).toEqual([]);
    const said = answers.map(({ body }) => JSON.stringify(body)).join('\n') + logged.join('\n');
    expect(planted.filter((secret) => said.includes(secret))).toEqual([]);
  });

  it('are in no log when the database fails under the request that holds them', async () => {
    await desk.plainSql('ALTER TABLE amendment RENAME TO amendment_away');
    const [secret = ''] = birthDates;
    const people = [{ id: 'p1', birthDate: { value: secret, known: 'told' } }];
    const failed = await client.write(manager, `/${id}/sections/people`, { document: { people } }, 0);
    await desk.plainSql('ALTER TABLE amendment_away RENAME TO amendment');
    expect(failed.status).toBe(500);
    expect(logged.join('')).toMatch(/amendment/);
    expect(logged.join('') + JSON.stringify(failed.body)).not.toContain(secret);
    expect(JSON.stringify(failed.body)).not.toMatch(/amendment|SQL/i);
  });
});
