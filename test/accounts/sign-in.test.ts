import { beforeAll, describe, expect, it } from 'vitest';
import { create, DAY, describeHouse, HOUR, MINUTE, PASSWORD, type Person } from './house.js';

const WRONG = 'three herons on a jetty';

describeHouse('signing in', (house) => {
  let ana: Person;
  let boss: Person;
  beforeAll(async () => {
    ana = await house().person('manager');
    boss = await house().person('administrator');
  });
  const signIn = (signInName: string, password: string, browser = house().browser()) =>
    browser.post('/api/session').send({ signInName, password });

  it('says who one is, and takes a name in any capitals and spaces', async () => {
    const answer = await signIn(`  ${ana.signInName.toUpperCase().replace(' ', '  ')} `, PASSWORD).expect(
      200,
    );
    const { expiresAt, ...session } = answer.body as Record<string, unknown>;
    expect(session).toEqual({
      accountId: ana.id,
      name: ana.name,
      signInName: ana.signInName,
      role: 'manager',
      passwordDue: false,
      hasPin: false,
    });
    expect(Date.parse(String(expiresAt))).toBeGreaterThan(Date.parse(house().now()));
  });

  it('gives a cookie that no script and no other site can use', async () => {
    const answer = await signIn(ana.signInName, PASSWORD);
    expect(answer.get('Set-Cookie')).toEqual([
      expect.stringMatching(/^desk_session=[\w-]{43}; Path=\/; Max-Age=604800; HttpOnly; SameSite=Lax$/),
    ]);
  });

  it('keeps the token as a hash alone', async () => {
    const answer = await signIn(ana.signInName, PASSWORD);
    const token = /desk_session=([\w-]+)/.exec(String(answer.get('Set-Cookie')))?.[1] ?? '';
    const rows = JSON.stringify(await house().plainSql('SELECT * FROM session'));
    expect(token).toHaveLength(43);
    expect(rows).not.toContain(token);
    expect(rows).toMatch(/"token_hash":"[0-9a-f]{64}"/);
  });

  it('keeps passwords and PINs as argon2id alone', async () => {
    const browser = await house().signedIn(ana);
    await browser.put('/api/session/pin').send({ password: PASSWORD, pin: '4071' }).expect(204);
    const rows = (await house().plainSql('SELECT password_hash, pin_hash FROM account')) as {
      password_hash: string;
      pin_hash: string | null;
    }[];
    const hashes = rows.flatMap(({ password_hash, pin_hash }) => [password_hash, pin_hash ?? []].flat());
    expect(hashes.length).toBeGreaterThan(1);
    for (const hash of hashes) expect(hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  it('answers an unknown name and a wrong password in the same words', async () => {
    const wrong = await signIn(ana.signInName, WRONG);
    const unknown = await signIn('nobody of that name', WRONG);
    expect([wrong.status, wrong.body]).toEqual([401, unknown.body]);
    expect(unknown.body).toMatchObject({ type: '/problems/sign-in-refused', status: 401 });
    await signIn(ana.signInName, PASSWORD).expect(200);
  });

  it.each([
    [{}, ['/password', '/signInName']],
    [{ signInName: 'ana' }, ['/password']],
    [{ signInName: '', password: 7 }, ['/password', '/signInName']],
    [{ signInName: 'ana', password: 'x', remember: true }, ['/remember']],
    [[], ['']],
  ])('names each fault of %j', async (body, pointers) => {
    const answer = await house().browser().post('/api/session').send(body).expect(422);
    const { errors } = answer.body as { errors: { pointer: string }[] };
    expect(errors.map(({ pointer }) => pointer)).toEqual(pointers);
  });

  describe('ends', () => {
    it('with signing out, and the cookie with it', async () => {
      const browser = await house().signedIn(ana);
      await browser.get('/api/session').expect(200);
      const answer = await browser.delete('/api/session').expect(204);
      expect(answer.get('Set-Cookie')).toEqual([
        expect.stringMatching(/^desk_session=; Path=\/; Max-Age=0;/),
      ]);
    });

    it('with signing out for whoever copied the cookie', async () => {
      const browser = await house().signedIn(ana);
      const copied =
        (await signIn(ana.signInName, PASSWORD, browser)).get('Set-Cookie')?.[0]?.split(';')[0] ?? '';
      const read = () => house().browser().get('/api/session').set('Cookie', copied);
      await read().expect(200);
      await browser.delete('/api/session').expect(204);
      await read().expect(401);
    });

    it('after a shift without use, and not while it is used', async () => {
      const browser = await house().signedIn(ana);
      const idle = await house().signedIn(ana);
      house().letPass(11 * HOUR);
      await browser.get('/api/session').expect(200);
      house().letPass(2 * HOUR);
      await browser.get('/api/session').expect(200);
      await idle.get('/api/session').expect(401);
    });

    it('after a week whatever its use', async () => {
      const browser = await house().signedIn(ana);
      for (let hours = 11; hours < 7 * 24; hours += 11) {
        house().letPass(11 * HOUR);
        await browser.get('/api/session').expect(200);
      }
      house().letPass(4 * HOUR);
      await browser.get('/api/session').expect(401);
    });

    it('after an hour without use on a device that others pick up', async () => {
      const administrator = await house().signedIn(boss);
      const { browser } = await house().device(administrator);
      await house().signedIn(ana, browser);
      house().letPass(HOUR - MINUTE);
      await browser.get('/api/session').expect(200);
      house().letPass(HOUR);
      await browser.get('/api/session').expect(401);
    });
  });

  describe('is limited', () => {
    const fail = (signInName: string, times: number) =>
      Promise.all(
        Array.from({ length: times }, () => signIn(signInName, WRONG).then(({ status }) => status)),
      );

    it('for a name: five tries of fifty at once are looked at, and the sixth is told when to come again', async () => {
      const eve = await house().person('staff');
      const statuses = await fail(eve.signInName, 50);
      expect(statuses.filter((status) => status === 401)).toHaveLength(5);
      expect(statuses.filter((status) => status === 429)).toHaveLength(45);
      const right = await signIn(eve.signInName, PASSWORD).expect(429);
      expect(right.body).toMatchObject({
        type: '/problems/too-many-tries',
        errors: [{ detail: expect.stringMatching(/^Try again in 15 minutes \(at 20\S+Z\)\.$/) as string }],
      });
      const seconds = Number(right.get('Retry-After'));
      expect(seconds).toBeGreaterThan(14 * 60);
      expect(seconds).toBeLessThanOrEqual(15 * 60);
      house().letPass(15 * MINUTE);
      await signIn(eve.signInName, PASSWORD).expect(200);
    });

    it('for a name that is not there just as for one that is', async () => {
      const statuses = await fail('nobody at all', 6);
      expect(statuses.sort()).toEqual([401, 401, 401, 401, 401, 429]);
    });

    it('and a right try clears those before it', async () => {
      for (let round = 0; round < 3; round += 1) {
        expect(await fail(ana.signInName, 4)).toEqual([401, 401, 401, 401]);
        await signIn(ana.signInName, PASSWORD).expect(200);
      }
    });

    it('for an address, over all names', async () => {
      house().letPass(15 * MINUTE);
      for (let name = 0; name < 30; name += 1) await signIn(`nobody ${name}`, WRONG).expect(401);
      await signIn(ana.signInName, PASSWORD).expect(429);
      house().letPass(15 * MINUTE);
      await signIn(ana.signInName, PASSWORD).expect(200);
    });

    it('apart on an enrolled device, so that no stranger keeps the people at the dock out', async () => {
      const { browser } = await house().device(await house().signedIn(boss));
      await fail(ana.signInName, 6);
      await signIn(ana.signInName, PASSWORD).expect(429);
      await signIn(ana.signInName, PASSWORD, browser).expect(200);
      house().letPass(15 * MINUTE);
    });

    it('without keeping what was typed into the field of the name', async () => {
      await signIn('my password is swordfish', WRONG).expect(401);
      expect(JSON.stringify(await house().plainSql('SELECT * FROM attempt'))).not.toMatch(
        /swordfish|password/,
      );
    });
  });

  describe('with a new password', () => {
    it('is asked for first of all after a one-time password', async () => {
      const administrator = await house().signedIn(boss);
      const draft = { name: 'Ben Okoro', signInName: 'ben', role: 'manager' };
      const made = await create(administrator, '/api/accounts', draft).expect(201);
      const { oneTimePassword } = made.body as { oneTimePassword: string };
      const browser = house().browser();
      await signIn('ben', oneTimePassword, browser).expect(200);
      const refused = await browser.get('/api/accounts').expect(403);
      expect(refused.body).toMatchObject({ type: '/problems/password-due' });
      const change = { currentPassword: oneTimePassword, newPassword: PASSWORD };
      await browser.put('/api/session/password').send(change).expect(204);
      await browser.get('/api/accounts').expect(200);
      await signIn('ben', oneTimePassword).expect(401);
    });

    it('needs a one-time password that is not older than a week', async () => {
      const administrator = await house().signedIn(boss);
      const draft = { name: 'Cy Lund', signInName: 'cy', role: 'staff' };
      const made = await create(administrator, '/api/accounts', draft).expect(201);
      house().letPass(7 * DAY);
      await signIn('cy', (made.body as { oneTimePassword: string }).oneTimePassword).expect(401);
    });

    it('ends every other session', async () => {
      const dee = await house().person('staff');
      const [here, there] = [await house().signedIn(dee), await house().signedIn(dee)];
      const newPassword = 'a heron, a pier, a tide';
      await here.put('/api/session/password').send({ currentPassword: PASSWORD, newPassword }).expect(204);
      await here.get('/api/session').expect(200);
      await there.get('/api/session').expect(401);
      await signIn(dee.signInName, PASSWORD).expect(401);
      await signIn(dee.signInName, newPassword).expect(200);
    });

    it.each([
      [{ currentPassword: WRONG, newPassword: 'a heron, a pier, a tide' }, '/currentPassword'],
      [{ currentPassword: PASSWORD, newPassword: PASSWORD }, '/newPassword'],
      [{ currentPassword: PASSWORD, newPassword: 'fourteen chars' }, '/newPassword'],
    ])('refuses %j at %s', async (body, pointer) => {
      const browser = await house().signedIn(ana);
      const answer = await browser.put('/api/session/password').send(body).expect(422);
      expect(answer.body).toMatchObject({ errors: [{ pointer }] });
    });

    it('is no way around the limit of tries', async () => {
      const browser = await house().signedIn(await house().person('staff'));
      const change = { currentPassword: WRONG, newPassword: 'a heron, a pier, a tide' };
      for (let tries = 0; tries < 5; tries += 1) {
        await browser.put('/api/session/password').send(change).expect(422);
      }
      await browser
        .put('/api/session/password')
        .send({ ...change, currentPassword: PASSWORD })
        .expect(429);
      await browser.put('/api/session/pin').send({ password: PASSWORD, pin: '4071' }).expect(429);
    });
  });

  // Fetch Metadata Request Headers (W3C), "Sec-Fetch-Site"; RFC 6454, section 7: Origin.
  describe('from the page of a stranger', () => {
    it.each([
      [{ 'Sec-Fetch-Site': 'cross-site' }],
      [{ 'Sec-Fetch-Site': 'same-site' }],
      [{ Origin: 'https://elsewhere.example' }],
      [{ Origin: 'null' }],
    ])('%j changes nothing', async (headers) => {
      const browser = await house().signedIn(ana);
      const answer = await browser.delete('/api/session').set(headers).expect(403);
      expect(answer.body).toMatchObject({ type: '/problems/not-allowed', status: 403 });
      await browser.get('/api/session').set(headers).expect(200);
    });

    it('and from our own page, everything does', async () => {
      const browser = await house().signedIn(ana);
      await browser.delete('/api/session').set({ 'Sec-Fetch-Site': 'same-origin' }).expect(204);
    });
  });
});
