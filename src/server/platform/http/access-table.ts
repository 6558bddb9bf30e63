import type { FastifyInstance } from 'fastify';
import type { Access } from './may-use.js';

/** One line of the table of routes and who may use them. */
export interface RouteAccess extends Access {
  readonly method: string;
  /** As it was declared: `/api/accounts/:id`. */
  readonly path: string;
}

/** Methods that change nothing (RFC 9110, 9.2.1). */
export const READING: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS']);

const PAGE: Access = { who: ['anyone'], own: false };

/**
 * Who may use which route, gathered while routes are declared. Files of the browser client and of the API's description
 * carry no decorator: `isPage` knows their addresses, and they are for anyone.
 */
export class AccessTable {
  readonly routes: RouteAccess[] = [];
  private readonly faults: string[] = [];

  constructor(server: FastifyInstance, isPage: (path: string) => boolean) {
    server.addHook('onRoute', (route) => {
      const methods = [route.method].flat();
      if (route.config?.access === undefined && isPage(route.url) && methods.every((m) => READING.has(m))) {
        route.config = { ...route.config, access: PAGE };
      }
      for (const method of methods) this.add(method, route.url, route.config?.access);
    });
  }

  /** @throws Error naming every route that does not say who may use it, or says what nobody may do */
  assertComplete(): void {
    if (this.faults.length > 0) throw new Error(['The service cannot start.', ...this.faults].join('\n  '));
  }

  private add(method: string, path: string, access: Access | undefined): void {
    const route = `${method} ${path}`;
    if (access === undefined) {
      this.faults.push(`${route} does not say who may use it: decorate it with @MayUse(…).`);
      return;
    }
    this.routes.push({ method, path, ...access });
    const { who, own } = access;
    if (own) return;
    if (who.includes('counsel') && !READING.has(method)) {
      this.faults.push(`${route} would let counsel write: take counsel out.`);
    }
    if (who.includes('device') && READING.has(method)) {
      this.faults.push(`${route} would let a device read: take device out.`);
    }
  }
}
