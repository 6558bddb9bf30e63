import { existsSync, readdirSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

/** The addresses of the built browser client: its files, and `/` for the first page. */
export function listPages(folder: string): ReadonlySet<string> {
  if (!existsSync(folder)) throw new Error(`${folder} is missing: run npm run build first.`);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return new Set(['/', ...files.map((file) => `/${file.replaceAll('\\', '/')}`)]);
}

/**
 * The pages of the browser client are one document that finds its page by the address: whoever opens or reloads an
 * address of no file, in a browser and outside of `/api/`, gets that document. A missing script is still missing.
 */
export function openByAddress(pages: ReadonlySet<string>): (request: IncomingMessage) => string {
  return ({ url = '/', method = '', headers: { accept = '' } }) => {
    const path = url.split('?', 1)[0] ?? '';
    const reads = method === 'GET' || method === 'HEAD';
    const isPage = reads && accept.includes('text/html') && !/^\/api(\/|$)/.test(path) && !pages.has(path);
    return isPage ? '/' : url;
  };
}

/**
 * Hands out the built browser client. File names under assets/ carry a hash of their content, so those may be
 * kept for ever; everything else is asked for again each time. A compressed copy that the build laid beside a file goes out
 * in its place.
 */
export async function serveWeb(server: FastifyInstance, folder: string): Promise<void> {
  await server.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    cacheControl: false,
    preCompressed: true,
    setHeaders: (reply, path) => {
      const kept = path.includes('/assets/');
      reply.header('cache-control', kept ? 'public, max-age=31536000, immutable' : 'no-cache');
      // Which copy is sent rests on what was asked for.
      reply.header('vary', 'accept-encoding');
    },
  });
}
