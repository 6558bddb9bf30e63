import { existsSync } from 'node:fs';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

/**
 * Hands out the built browser client. File names under assets/ carry a hash of their content, so those may be
 * kept for ever; everything else is asked for again each time.
 */
export async function serveWeb(server: FastifyInstance, folder: string): Promise<void> {
  if (!existsSync(folder)) throw new Error(`${folder} is missing: run npm run build first.`);
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
