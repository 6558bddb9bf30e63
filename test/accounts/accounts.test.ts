import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Browser, change, create, describeHouse, PASSWORD, type Person } from './house.js';

interface Account {
  id: string;
  version: number;
  oneTimePassword: string | null;
}

describeHouse('accounts', (house) => {
  let boss: Person;
  let administrator: Browser;
  beforeAll(async () => {
    boss = await house().person('administrator');
    administrator = await house().signedIn(boss);
  });
  const make = async (different: object = {}): Promise<Account> => {
    const draft = { name: 'Ana Ruiz', signInName: `ana ${randomUUID()}`, role: 'staff', ...different };
    return (await create(administrator, '/api/accounts', draft).expect(201)).body as Account;
  };
  const draft = {
    name: 'Eli Stone',
    signInName: 'eli',
    role: 'counsel',
    address: '4 Pier Road\nErie, PA 16507',
  };

  it('are made by an administrator, with a one-time password and the address that lasts', async () => {
    const answer = await create(administrator, '/api/accounts', draft).expect(201);
    const { id, oneTimePassword, ...account } = answer.body as Record<string, unknown>;
    expect(account).toMatchObject({ ...draft, active: true, passwordDue: true, version: 1 });
    expect(oneTimePassword).toMatch(/^[0-9a-hjkmnp-tv-z]{5}(-[0-9a-hjkmnp-tv-z]{5}){3}$/);
    expect([answer.get('Location'), answer.get('ETag')]).toEqual([`/api/accounts/${String(id)}`, '"1"']);
    const read = await administrator.get(`/api/accounts/${String(id)}`).expect(200);
    expect([read.body, read.get('ETag')]).toEqual([{ id, ...account }, '"1"']);
  });

  it('are made once however often that is sent, and the password is told once', async () => {
    const [key, sent] = [randomUUID(), { ...draft, signInName: 'once' }];
    const [first, again] = [
      await create(administrator, '/api/accounts', sent, key).expect(201),
      await create(administrator, '/api/accounts', sent, key).expect(201),
    ];
    expect(again.body).toEqual({ ...(first.body as object), oneTimePassword: null });
  });

  it.each([' Twin ', 'TWIN', 'ｔｗｉｎ'])('have names of their own: %s is twin', async (signInName) => {
    await create(administrator, '/api/accounts', { ...draft, signInName: 'twin' });
    const answer = await create(administrator, '/api/accounts', { ...draft, signInName }).expect(409);
    expect(answer.body).toMatchObject({ type: '/problems/conflict', errors: [{ pointer: '/signInName' }] });
  });

  it.each([
    [{}, ['/name', '/role', '/signInName']],
    [{ ...draft, role: 'manger' }, ['/role']],
    [{ ...draft, name: 'two\nlines' }, ['/name']],
    [{ ...draft, name: '   ' }, ['/name']],
    [{ ...draft, name: 'x'.repeat(201) }, ['/name']],
    [{ ...draft, password: 'mine', passwordHash: 'x' }, ['/password', '/passwordHash']],
    [{ ...draft, address: 7 }, ['/address']],
    ['text', ['']],
  ])('cannot be made of %j', async (body, pointers) => {
    const answer = await create(administrator, '/api/accounts', body as object)
      .type('json')
      .expect((got) => {
        expect([400, 422]).toContain(got.status);
      });
    const { errors } = answer.body as { errors: { pointer: string }[] };
    expect(errors.map(({ pointer }) => pointer)).toEqual(pointers);
  });

  it('need a key when they are made', async () => {
    await administrator
      .post('/api/accounts')
      .send({ ...draft, signInName: 'keyless' })
      .expect(400);
  });

  describe('are changed', () => {
    it('in what is sent, and in nothing else', async () => {
      const { id, oneTimePassword, ...made } = await make({ address: 'Here' });
      const answer = await change(administrator, `/api/accounts/${id}`, 1, { role: 'manager' }).expect(200);
      const { updatedAt } = answer.body as { updatedAt: string };
      expect(oneTimePassword).not.toBeNull();
      expect(answer.body).toEqual({ ...made, id, role: 'manager', version: 2, updatedAt });
      expect(answer.get('ETag')).toBe('"2"');
      const cleared = await change(administrator, `/api/accounts/${id}`, 2, { address: null }).expect(200);
      expect(cleared.body).toMatchObject({ address: null, role: 'manager' });
    });

    it('not over somebody else’s change: both versions are in the answer', async () => {
      const { id } = await make();
      await change(administrator, `/api/accounts/${id}`, 1, { name: 'Ana Ruiz-Lopez' }).expect(200);
      const answer = await change(administrator, `/api/accounts/${id}`, 1, { name: 'Ana Lopez' }).expect(412);
      expect(answer.body).toMatchObject({
        current: { name: 'Ana Ruiz-Lopez', version: 2 },
        yours: { name: 'Ana Lopez' },
        errors: [{ pointer: '/name' }],
      });
      await administrator.patch(`/api/accounts/${id}`).send({ name: 'Ana Lopez' }).expect(428);
    });

    it('one after the other when they come at once: one wins', async () => {
      const { id } = await make();
      const answers = await Promise.all(
        Array.from({ length: 10 }, (_, place) =>
          change(administrator, `/api/accounts/${id}`, 1, { name: `Name ${place}` }),
        ),
      );
      expect(answers.map(({ status }) => status).sort()).toEqual([200, ...Array<number>(9).fill(412)]);
    });

    it('not to a sign-in name that another one has', async () => {
      const [one, other] = [await make({ signInName: 'first come' }), await make()];
      const answer = await change(administrator, `/api/accounts/${other.id}`, 1, {
        signInName: 'First Come',
      });
      expect([one.version, answer.status]).toEqual([1, 409]);
    });
  });

  describe('that are closed', () => {
    it('are signed out everywhere, and cannot sign in', async () => {
      const person = await house().person('staff');
      const browser = await house().signedIn(person);
      await change(administrator, `/api/accounts/${person.id}`, 1, { active: false }).expect(200);
      await browser.get('/api/session').expect(401);
      const { signInName } = person;
      await browser.post('/api/session').send({ signInName, password: PASSWORD }).expect(401);
    });

    it('are never the last administrator', async () => {
      const { id } = boss;
      const others = (await administrator.get('/api/accounts?limit=100')).body as {
        items: { id: string; role: string; active: boolean }[];
      };
      expect(others.items.filter(({ role, active }) => role === 'administrator' && active)).toHaveLength(1);
      for (const [body, pointer] of [
        [{ active: false }, '/active'],
        [{ role: 'manager' }, '/role'],
      ] as const) {
        const answer = await change(administrator, `/api/accounts/${id}`, 1, body).expect(409);
        expect(answer.body).toMatchObject({ errors: [{ pointer }] });
      }
    });

    it('may be one of two administrators, not both at once', async () => {
      const second = await house().person('administrator');
      const answers = await Promise.all(
        [boss.id, second.id].map((id) =>
          change(administrator, `/api/accounts/${id}`, 1, { role: 'manager' }),
        ),
      );
      const [first, later] = answers.map(({ status }) => status).sort();
      expect(first).toBe(200);
      // Whoever asks has lost the role by then, or would be the last to have it.
      expect([403, 409]).toContain(later);
      administrator = await house().signedIn(answers[0]?.status === 200 ? second : boss);
    });
  });

  it('get a new one-time password, and are signed out everywhere', async () => {
    const person = await house().person('staff');
    const browser = await house().signedIn(person);
    const answer = await administrator.post(`/api/accounts/${person.id}/password-reset`).expect(201);
    await browser.get('/api/session').expect(401);
    const { signInName } = person;
    const { oneTimePassword } = answer.body as Account;
    await browser.post('/api/session').send({ signInName, password: PASSWORD }).expect(401);
    await browser.post('/api/session').send({ signInName, password: oneTimePassword }).expect(200);
    await browser.get('/api/roster?from=2026-06-13&to=2026-06-13').expect(403);
  });

  it('are listed page by page, each once, by sign-in name, without a secret', async () => {
    for (const letter of 'cab') await make({ signInName: `page ${letter}` });
    const seen: { signInName: string }[] = [];
    for (let next: string | null = ''; next !== null;) {
      const after: string = next === '' ? '' : `&after=${next}`;
      const answer = await administrator.get(`/api/accounts?limit=2${after}`).expect(200);
      const page = answer.body as { items: { signInName: string }[]; next: string | null };
      expect(page.items.length).toBeLessThanOrEqual(2);
      seen.push(...page.items);
      next = page.next;
    }
    const names = seen.map(({ signInName }) => signInName);
    expect(names.filter((name) => name.startsWith('page '))).toEqual(['page a', 'page b', 'page c']);
    expect(new Set(names).size).toBe(names.length);
    expect(JSON.stringify(seen)).not.toMatch(/hash|argon|oneTime/i);
  });

  it('that are not there are not found', async () => {
    await administrator.get(`/api/accounts/${randomUUID()}`).expect(404);
    await administrator.get('/api/accounts/..%2F..').expect(404);
    await administrator.get('/api/accounts?limit=0').expect(422);
  });
});
