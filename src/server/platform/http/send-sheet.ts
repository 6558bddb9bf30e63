import type { FastifyReply } from 'fastify';

/** Sends a JSON text that changes seldom, or 304 to a client that has it already (RFC 9110, 13.1.2). */
export function sendSheet(
  reply: FastifyReply,
  sheet: { readonly text: string; readonly etag: string },
  known: string | undefined,
): void {
  void reply.headers({ etag: sheet.etag, 'cache-control': 'no-cache' });
  const tags = (known ?? '').split(',').map((tag) => tag.trim().replace(/^W\//, ''));
  if (tags.includes('*') || tags.includes(sheet.etag)) void reply.status(304).send();
  else void reply.type('application/json; charset=utf-8').send(sheet.text);
}
