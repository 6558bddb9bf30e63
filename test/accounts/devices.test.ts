import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { PinConfirmations } from '../../src/server/accounts/pin-confirmations.service.js';
import { type Browser, create, DAY, describeHouse, HOUR, MINUTE, PASSWORD, type Person } from './house.js';

describeHouse('an enrolled device', (house) => {
  let boss: Person;
  let administrator: Browser;
  beforeAll(async () => {
    boss = await house().person('administrator');
    administrator = await house().signedIn(boss);
  });
  const newCode = async (): Promise<{ id: string; code: string }> =>
    (await create(administrator, '/api/devices', { name: 'Dock phone' }).expect(201)).body as {
      id: string;
      code: string;
    };
  const enrol = (code: string, browser = house().browser()) => browser.post('/api/device').send({ code });
  const stateOf = async (id: string): Promise<unknown> => {
    const { items } = (await administrator.get('/api/devices?limit=100')).body as {
      items: { id: string; state: string }[];
    };
    return items.find((device) => device.id === id)?.state;
  };

  describe('takes a code', () => {
    it('that is typed as it was heard, for a cookie that lasts', async () => {
      const { id, code } = await newCode();
      expect(code).toMatch(/^[0-9a-hjkmnp-tv-z]{4}(-[0-9a-hjkmnp-tv-z]{4}){2}$/);
      expect(await stateOf(id)).toBe('waiting');
      const typed = ` ${code.toUpperCase().replaceAll('-', ' ').replaceAll('0', 'O').replaceAll('1', 'I')} `;
      const answer = await enrol(typed).expect(200);
      expect(answer.body).toMatchObject({ id, name: 'Dock phone', state: 'enrolled' });
      expect(answer.get('Set-Cookie')).toEqual([
        expect.stringMatching(/^desk_device=[\w-]{43}; Path=\/; Max-Age=34560000; HttpOnly; SameSite=Lax$/),
      ]);
      expect(await stateOf(id)).toBe('enrolled');
    });

    it('once, whoever else tries at the same time', async () => {
      const { code } = await newCode();
      const statuses = await Promise.all(Array.from({ length: 5 }, async () => (await enrol(code)).status));
      expect(statuses.sort()).toEqual([200, 401, 401, 401, 401]);
      house().letPass(15 * MINUTE);
    });

    it('for 15 minutes', async () => {
      const { code } = await newCode();
      house().letPass(15 * MINUTE);
      const answer = await enrol(code).expect(401);
      expect(answer.body).toMatchObject({ type: '/problems/code-refused' });
    });

    it('and no more than ten wrong ones in 15 minutes', async () => {
      house().letPass(15 * MINUTE);
      const { code } = await newCode();
      for (let tries = 0; tries < 10; tries += 1) await enrol('0000-0000-0000').expect(401);
      await enrol(code).expect(429);
      house().letPass(15 * MINUTE);
    });

    it('which is told once: neither to a retry nor to the database', async () => {
      const key = randomUUID();
      const first = await create(administrator, '/api/devices', { name: 'Office tablet' }, key);
      const again = await create(administrator, '/api/devices', { name: 'Office tablet' }, key);
      expect(again.body).toEqual({ ...(first.body as object), code: null });
      const { code } = first.body as { code: string };
      const rows = JSON.stringify(await house().plainSql('SELECT * FROM device'));
      expect(rows).not.toContain(code);
      expect(rows).not.toContain(code.replaceAll('-', ''));
    });
  });

  it('says which it is, and whose name was picked', async () => {
    const { id, browser } = await house().device(administrator);
    const staff = await house().person('staff');
    const named = await browser.get('/api/device').set('Desk-Person', staff.id).expect(200);
    expect(named.body).toEqual({ id, name: 'Dock phone', accountId: staff.id, personName: staff.name });
    for (const nobody of [randomUUID(), 'x', '']) {
      const answer = await browser.get('/api/device').set('Desk-Person', nobody).expect(200);
      expect(answer.body).toMatchObject({ accountId: null, personName: 'not named' });
    }
  });

  it('reads nothing but itself', async () => {
    const { browser } = await house().device(administrator);
    for (const path of [
      '/api/accounts',
      '/api/devices',
      '/api/roster?from=2026-06-13&to=2026-06-13',
      '/api/session',
    ]) {
      await browser.get(path).expect(401);
    }
  });

  it('works for months without a sign-in', async () => {
    const { browser } = await house().device(administrator);
    house().letPass(200 * DAY);
    await browser.get('/api/device').expect(200);
    administrator = await house().signedIn(boss);
  });

  it('is shut out when it is revoked, with whoever is signed in on it', async () => {
    const { id, browser } = await house().device(administrator);
    await house().signedIn('staff', browser);
    const revoked = await administrator.delete(`/api/devices/${id}`).expect(200);
    expect(revoked.body).toMatchObject({ state: 'revoked' });
    const refused = await browser.get('/api/device').expect(401);
    expect(refused.body).toMatchObject({ type: '/problems/device-shut-out' });
    await browser.get('/api/session').expect(401);
    await administrator.delete(`/api/devices/${id}`).expect(200);
    await administrator.delete(`/api/devices/${randomUUID()}`).expect(404);
  });

  it('that waits for its code is not enrolled any more when it is revoked', async () => {
    const { id, code } = await newCode();
    await administrator.delete(`/api/devices/${id}`).expect(200);
    await enrol(code).expect(401);
  });

  it('shows who is on today, and no other day', async () => {
    const { browser } = await house().device(administrator);
    const day = house().now().slice(0, 10);
    const staff = await house().person('staff');
    for (const duty of ['dock', 'rescue']) {
      await create(administrator, '/api/roster', { accountId: staff.id, duty, from: day, to: day }).expect(
        201,
      );
    }
    const answer = await browser.get(`/api/device/people?day=${day}`).expect(200);
    const { people } = answer.body as { people: { accountId: string; duties: string[] }[] };
    const shown = people.find(({ accountId }) => accountId === staff.id);
    expect(shown).toMatchObject({ personName: staff.name });
    expect(shown?.duties.sort()).toEqual(['dock', 'rescue']);
    const longAgo = await browser.get('/api/device/people?day=2026-01-01').expect(422);
    expect(longAgo.body).toMatchObject({ source: 'query', errors: [{ pointer: '/day' }] });
    await browser.get('/api/device/people').expect(422);
  });

  describe('has entries confirmed by PIN', () => {
    let staff: Person;
    let device: { id: string; browser: Browser };
    beforeAll(async () => {
      staff = await house().person('staff');
      device = await house().device(administrator);
      const browser = await house().signedIn(staff);
      await browser.put('/api/session/pin').send({ password: PASSWORD, pin: '4071' }).expect(204);
      expect((await browser.get('/api/session')).body).toMatchObject({ hasPin: true });
    });
    const ago = (ms: number): string => new Date(Date.parse(house().now()) - ms).toISOString();
    const confirm = (different: object = {}) =>
      device.browser
        .post('/api/device/confirmations')
        .send({ accountId: staff.id, pin: '4071', since: ago(HOUR), ...different });

    it('from when the name was picked until now, on that device alone', async () => {
      const confirmations = house().app.get(PinConfirmations, { strict: false });
      const isConfirmed = (instant: string, id = device.id) =>
        confirmations.isConfirmed(id, staff.id, instant);
      const entered = ago(30 * MINUTE);
      expect(await isConfirmed(entered)).toBe(false);
      const answer = await confirm().expect(201);
      expect(answer.body).toMatchObject({ accountId: staff.id });
      expect(await isConfirmed(entered)).toBe(true);
      expect(await isConfirmed(ago(2 * HOUR))).toBe(false);
      expect(await isConfirmed(ago(-MINUTE))).toBe(false);
      const other = await house().device(administrator);
      expect(await isConfirmed(entered, other.id)).toBe(false);
    });

    it.each([
      ['a wrong PIN', () => ({ pin: '4072' }), '/pin'],
      ['somebody who has no PIN', () => ({ accountId: boss.id }), '/pin'],
      ['somebody who is not there', () => ({ accountId: randomUUID() }), '/pin'],
      ['a PIN that nobody may have', () => ({ pin: '1234' }), '/pin'],
      ['more than a day', () => ({ since: ago(DAY + MINUTE) }), '/since'],
      ['what is yet to come', () => ({ since: ago(-MINUTE) }), '/since'],
      ['no instant', () => ({ since: 'this morning' }), '/since'],
    ])('but not with %s', async (_name, different, pointer) => {
      const answer = await confirm(different()).expect(422);
      expect(answer.body).toMatchObject({ errors: [{ pointer }] });
    });

    it('and no more than five wrong ones for a person in 15 minutes', async () => {
      house().letPass(15 * MINUTE);
      for (let tries = 0; tries < 5; tries += 1) await confirm({ pin: '9305' }).expect(422);
      await confirm().expect(429);
      house().letPass(15 * MINUTE);
      await confirm().expect(201);
    });

    it('and no more than ten wrong ones on a device, over all people', async () => {
      house().letPass(15 * MINUTE);
      for (let tries = 0; tries < 10; tries += 1) {
        await confirm({ accountId: randomUUID() }).expect(422);
      }
      await confirm().expect(429);
    });
  });
});
