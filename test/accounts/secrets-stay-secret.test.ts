import { randomBytes, randomInt } from 'node:crypto';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { type Browser, create, describeHouse, MINUTE, PASSWORD, type Person } from './house.js';

describeHouse('passwords, tokens, codes and PINs', (house) => {
  const planted: string[] = [];
  const bodies: string[] = [];
  let logged = '';
  const plant = (value = `sea-${randomBytes(12).toString('hex')}`): string => {
    planted.push(value);
    return value;
  };
  const plantPin = (): string => plant(String(randomInt(20_000_000, 90_000_000)));
  const keep = async (answer: PromiseLike<{ status: number; text: string }>): Promise<number> => {
    const { status, text } = await answer;
    bodies.push(text);
    return status;
  };

  let ana: Person;
  let administrator: Browser;
  let device: Browser;
  beforeAll(async () => {
    for (const stream of [process.stdout, process.stderr]) {
      vi.spyOn(stream, 'write').mockImplementation((data) => {
        logged += String(data);
        return true;
      });
    }
    ana = await house().person('manager');
    administrator = await house().signedIn('administrator');
    device = (await house().device(administrator)).browser;
  });
  afterAll(() => vi.restoreAllMocks());

  const signIn = (body: object | string) => house().browser().post('/api/session').type('json').send(body);

  it('of which 100 were tried in every wrong way, stand in no log and in no answer', async () => {
    const since = house().now();
    for (let round = 0; round < 10; round += 1) {
      house().letPass(16 * MINUTE);
      expect(await keep(signIn({ signInName: plant(), password: plant() }))).toBe(401);
      expect(await keep(signIn({ signInName: ana.signInName, password: plant() }))).toBe(401);
      expect(await keep(signIn(`{"signInName": "ana", "password": ${plant()}}`))).toBe(400);
      expect(await keep(signIn({ signInName: 'ana', password: { is: plant() } }))).toBe(422);
      const stranger = house().browser();
      expect(await keep(stranger.get('/api/session').set('Cookie', `desk_session=${plant()}`))).toBe(401);
      expect(await keep(stranger.get('/api/accounts').set('Authorization', `Bearer ${plant()}`))).toBe(401);
      expect(await keep(administrator.get(`/api/accounts?token=${plant()}`))).toBeGreaterThanOrEqual(401);
      expect(await keep(stranger.post('/api/device').send({ code: plant() }))).toBe(401);
      const pin = { accountId: ana.id, pin: plantPin(), since };
      expect(await keep(device.post('/api/device/confirmations').send(pin))).toBe(422);
    }
    expect(planted).toHaveLength(100);
  });

  it('stay out when the right ones are used', async () => {
    const browser = house().browser();
    const right = { signInName: ana.signInName, password: plant(PASSWORD) };
    const answer = await browser.post('/api/session').send(right).expect(200);
    bodies.push(answer.text);
    plant(/desk_session=([\w-]+)/.exec(String(answer.get('Set-Cookie')))?.[1]);
    const [newPassword, pin] = [plant(), plantPin()];
    expect(await keep(browser.put('/api/session/pin').send({ password: PASSWORD, pin }))).toBe(204);
    const change = { currentPassword: PASSWORD, newPassword };
    expect(await keep(browser.put('/api/session/password').send(change))).toBe(204);
    expect(await keep(browser.get('/api/session'))).toBe(200);
  });

  it('are told once where they are made, and nowhere later', async () => {
    const sam = await create(await house().signedIn('administrator', administrator), '/api/accounts', {
      name: 'Sam Ito',
      signInName: 'sam',
      role: 'staff',
    }).expect(201);
    const phone = await create(administrator, '/api/devices', { name: 'Boat phone' }).expect(201);
    plant((sam.body as { oneTimePassword: string }).oneTimePassword);
    plant((phone.body as { code: string }).code);
    for (const path of ['/api/accounts', '/api/devices']) {
      expect(await keep(administrator.get(`${path}?limit=100`))).toBe(200);
    }
  });

  it('stay out when the service fails', async () => {
    house().letPass(16 * MINUTE);
    const eve = await house().person('staff');
    logged = '';
    await house().plainSql('ALTER TABLE session RENAME TO session_gone');
    const right = { signInName: eve.signInName, password: PASSWORD };
    expect(await keep(signIn(right))).toBe(500);
    expect(await keep(administrator.get('/api/accounts'))).toBe(500);
    await house().plainSql('ALTER TABLE session_gone RENAME TO session');
    expect(logged).toContain('POST /api/session');
    expect(logged).toContain('GET /api/accounts');
  });

  it('have all been looked for', () => {
    const everything = [...bodies, logged].join('\n');
    expect(bodies.length).toBeGreaterThan(90);
    expect(planted.filter((value) => everything.includes(value))).toEqual([]);
  });
});
