import { Logger, StreamableFile } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { LeavingArchive } from './link-packets.js';

/** Sends an archive by a link, and notes it as received once its last byte went to the connection. */
export function sendArchive(reply: FastifyReply, archive: LeavingArchive): StreamableFile {
  const { name, bytes, size, received } = archive;
  closeToOthers(reply);
  // A download that broke off ends without this.
  reply.raw.once('finish', () => {
    received().catch((error: unknown) => {
      new Logger('Collections').error(error instanceof Error ? error.stack : error);
    });
  });
  return new StreamableFile(bytes, {
    type: 'application/zip',
    length: size,
    disposition: `attachment; filename="${name}"`,
  });
}

/** Nothing on the way keeps a copy; that nothing is indexed and no address passed on is said of every answer. */
export function closeToOthers(reply: FastifyReply): void {
  void reply.headers({ 'cache-control': 'no-store' });
}
