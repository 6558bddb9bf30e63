import { beforeAll, describe, expect, it } from 'vitest';
import { ROLES } from '../../shared/kernel/role.js';
import { AccessTable } from '../../src/server/platform/http/access-table.js';
import type { Who } from '../../src/server/platform/http/may-use.js';
import { type Browser, describeHouse, type Person } from './house.js';
import { ROLE_TABLE } from './role-table.js';

const CALLERS = ['nobody', 'device', ...ROLES] as const;
type Caller = (typeof CALLERS)[number];
type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

const SOME_ID = '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10';

/** What the gate says: 401 where signing in could help, 403 where it could not. */
function verdictFor(caller: Caller, who: readonly Who[]): 'allowed' | 401 | 403 {
  if (who.includes('anyone') || (caller !== 'nobody' && who.includes(caller))) return 'allowed';
  return caller === 'nobody' || caller === 'device' ? 401 : 403;
}

describeHouse('who may use which route', (house) => {
  const people = new Map<Caller, Person>();
  const browsers = new Map<Caller, Browser>();

  beforeAll(async () => {
    for (const role of ROLES) {
      people.set(role, await house().person(role));
      browsers.set(role, await house().signedIn(people.get(role) as Person));
    }
    browsers.set('nobody', house().browser());
    browsers.set('device', (await house().device(browsers.get('administrator') as Browser)).browser);
  });

  const documented = async (): Promise<string[]> => {
    const document = await house().browser().get('/api/openapi.json').expect(200);
    const { paths } = document.body as { paths: Record<string, Record<string, unknown>> };
    return Object.entries(paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path.replaceAll(/\{(\w+)\}/g, ':$1')}`),
    );
  };

  it('is the table that is derived from the decorators', () => {
    const derived = house()
      .app.get(AccessTable)
      .routes.filter(({ method, path }) => method !== 'HEAD' && isOfApi(path))
      .map(({ method, path, who }) => [`${method} ${path}`, [...who].sort()] as const);
    const written = Object.entries(ROLE_TABLE).map(([route, who]) => [route, [...who].sort()]);
    expect(Object.fromEntries(derived)).toEqual(Object.fromEntries(written));
  });

  it('is said for every route of the OpenAPI document, and for no other', async () => {
    expect((await documented()).sort()).toEqual(Object.keys(ROLE_TABLE).sort());
  });

  it('is said in the OpenAPI document too', async () => {
    const document = await house().browser().get('/api/openapi.json');
    const { paths } = document.body as { paths: Record<string, Record<string, { 'x-may-use': Who[] }>> };
    expect(paths['/api/accounts']?.['get']?.['x-may-use']).toEqual(['manager', 'administrator']);
  });

  describe.each(Object.entries(ROLE_TABLE))('%s', (route, who) => {
    it.each(CALLERS.map((caller) => [caller, verdictFor(caller, who)] as const))(
      'by %s: %s',
      async (caller, verdict) => {
        const [method = '', path = ''] = route.split(' ');
        const browser = browsers.get(caller) as Browser;
        const answer = await browser[method.toLowerCase() as Method](path.replaceAll(/:\w+/g, SOME_ID)).send(
          method === 'GET' ? undefined : {},
        );
        if (verdict === 'allowed') expect([200, 204, 400, 404, 422]).toContain(answer.status);
        else expect(answer.status).toBe(verdict);
        if (route === 'DELETE /api/session' && answer.status === 204) {
          await house().signedIn(people.get(caller) as Person, browser);
        }
      },
    );
  });

  it('holds for HEAD as for GET', async () => {
    await house().browser().head('/api/accounts').expect(401);
    await browsers.get('staff')?.head('/api/accounts').expect(403);
    await browsers.get('manager')?.head('/api/accounts').expect(200);
  });

  it('is asked before the body is read', async () => {
    const answer = await house().browser().post('/api/accounts').type('json').send('{"half": ').expect(401);
    expect(answer.body).toMatchObject({ type: '/problems/sign-in-needed' });
  });
});

function isOfApi(path: string): boolean {
  return path.startsWith('/api/') && path !== '/api/openapi.json' && !path.startsWith('/api/docs');
}
