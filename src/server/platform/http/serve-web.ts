import { existsSync, readdirSync } from 'node:fs';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

/** The addresses of the built browser client: its files, and `/` for the first page. */
export function listPages(folder: string): ReadonlySet<string> {
  if (!existsSync(folder)) throw new Error(`${folder} is missing: run npm run build first.`);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return new Set(['/', ...files.map((file) => `/${file.replaceAll('\\', '/')}`)]);
}

/**
 * Hands out the built browser client. File names under assets/ carry a hash of their content, so those may be
 * kept for ever; everything else is asked for again each time.
 */
export async function serveWeb(server: FastifyInstance, folder: string): Promise<void> {
  await server.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    cacheControl: false,
    setHeaders: (reply, path) => {
      const kept = path.includes('/assets/');
      reply.header('cache-control', kept ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
}
