import fastify, { type FastifyInstance, type InjectOptions } from 'fastify';
import { describe, expect, it } from 'vitest';
import type { Role } from '../../shared/kernel/role.js';
import { AccessGate } from '../../src/server/accounts/access-gate.js';
import { AccessTable } from '../../src/server/platform/http/access-table.js';
import type { Access } from '../../src/server/platform/http/may-use.js';
import { ProblemException } from '../../src/server/platform/http/problem.js';

type Parts = ConstructorParameters<typeof AccessGate>;

const session = (role: Role) => ({ id: 's', accountId: 'a', personName: 'Ana', role, passwordDue: false });
const DEVICE = { id: 'd', name: 'Dock phone' };

/** A server behind the gate where somebody is signed in and a device is enrolled, whatever cookies come. */
function serverFor(role: Role | null, device = false): FastifyInstance {
  const server = fastify();
  const [sessions, devices, accounts] = [
    { of: () => Promise.resolve(role && session(role)) },
    { of: () => Promise.resolve(device ? DEVICE : null) },
    { find: () => Promise.resolve(null) },
  ] as unknown as Parts;
  new AccessGate(sessions, devices, accounts).guard(server);
  server.setErrorHandler((error, _request, reply) => {
    void reply.status(error instanceof ProblemException ? error.problem.status : 500).send();
  });
  return server;
}

const statusOf = async (server: FastifyInstance, asked: InjectOptions): Promise<number> =>
  (await server.inject(asked)).statusCode;

describe('the gate', () => {
  it.each([
    [null, 401],
    ['administrator', 403],
  ] as const)('denies a route that does not say who may use it, to %s', async (role, status) => {
    const server = serverFor(role);
    server.get('/x', () => 'open');
    expect(await statusOf(server, { url: '/x' })).toBe(status);
  });

  it.each(['POST', 'PUT', 'PATCH', 'DELETE'] as const)(
    'lets counsel %s nothing, not even where a route names counsel, with or without a device',
    async (method) => {
      for (const device of [false, true]) {
        const server = serverFor('counsel', device);
        const access: Access = { who: ['counsel', 'device'], own: false };
        server.route({ method, url: '/x', config: { access }, handler: () => 'written' });
        expect(await statusOf(server, { method, url: '/x' })).toBe(403);
      }
    },
  );

  it('lets counsel read where it is named, and write about itself', async () => {
    const server = serverFor('counsel');
    server.get('/x', { config: { access: { who: ['counsel'], own: false } } }, () => 'read');
    server.put('/me', { config: { access: { who: ['counsel'], own: true } } }, () => 'written');
    expect(await statusOf(server, { url: '/x' })).toBe(200);
    expect(await statusOf(server, { method: 'PUT', url: '/me' })).toBe(200);
  });

  it('says who acts: the person, and the device under their hands', async () => {
    const server = serverFor('staff', true);
    server.post('/x', { config: { access: { who: ['staff', 'device'], own: false } } }, ({ actor }) => actor);
    expect((await server.inject({ method: 'POST', url: '/x' })).json()).toEqual({
      kind: 'person',
      accountId: 'a',
      sessionId: 's',
      personName: 'Ana',
      role: 'staff',
      deviceId: 'd',
      deviceName: 'Dock phone',
    });
  });

  it('takes what a device sends although whoever is signed in on it may not', async () => {
    const server = serverFor('staff', true);
    server.post(
      '/x',
      { config: { access: { who: ['manager', 'device'], own: false } } },
      ({ actor }) => actor,
    );
    const answer = await server.inject({ method: 'POST', url: '/x' });
    expect(answer.json()).toEqual({
      kind: 'device',
      deviceId: 'd',
      deviceName: 'Dock phone',
      personName: 'not named',
    });
  });
});

describe('the start', () => {
  const faultsOf = async (method: 'GET' | 'POST', access?: Access): Promise<string> => {
    const server = fastify();
    const table = new AccessTable(server, (path) => path === '/page');
    server.get('/page', () => 'page');
    server.route({ method, url: '/x', ...(access ? { config: { access } } : {}), handler: () => 'x' });
    await server.ready();
    try {
      table.assertComplete();
      return '';
    } catch (error) {
      return String(error);
    }
  };

  it.each([
    ['a route without a word', 'GET', undefined, 'GET /x does not say who may use it'],
    ['a write by counsel', 'POST', { who: ['counsel'], own: false }, 'POST /x would let counsel write'],
    ['a read by a device', 'GET', { who: ['staff', 'device'], own: false }, 'GET /x would let a device read'],
  ] as const)('is refused by %s', async (_name, method, access, fault) => {
    expect(await faultsOf(method, access)).toContain(fault);
  });

  it.each([
    ['GET', { who: ['anyone'], own: false }],
    ['GET', { who: ['counsel'], own: false }],
    ['POST', { who: ['device'], own: false }],
    ['POST', { who: ['counsel'], own: true }],
    ['GET', { who: ['device'], own: true }],
  ] as const)('takes %s %j', async (method, access) => {
    expect(await faultsOf(method, access)).toBe('');
  });
});
