import type { FastifyReply, FastifyRequest } from 'fastify';

export type CookieName = 'desk_session' | 'desk_device' | 'desk_collection';

/** The value of a cookie of the request; undefined when it sends none. */
export function readCookie(request: FastifyRequest, name: CookieName): string | undefined {
  for (const pair of (request.headers.cookie ?? '').split(';')) {
    const [key = '', value] = pair.trim().split('=', 2);
    if (key === name && value) return value;
  }
  return undefined;
}

/**
 * Has the browser keep a token: out of reach of scripts, sent by our own pages alone, and only over HTTPS when that is
 * how the request came. A life of 0 takes it away.
 */
export function writeCookie(reply: FastifyReply, name: CookieName, token: string, lifeMs: number): void {
  const secure = reply.request.protocol === 'https' ? '; Secure' : '';
  const life = Math.floor(lifeMs / 1000);
  void reply.header(
    'set-cookie',
    `${name}=${token}; Path=/; Max-Age=${life}; HttpOnly; SameSite=Lax${secure}`,
  );
}
