import type { FastifyInstance } from 'fastify';
import { ProblemException, problemOfStatus } from './problem.js';

/** A piece of a file at an offset that a header names, as open protocols for resumable uploads send it. */
export const OCTETS = 'application/offset+octet-stream';

/** Hands the body of these routes on as the stream that it is: files are never held in memory. Others take JSON alone. */
export function readOctets(server: FastifyInstance, isForOctets: (path: string) => boolean): void {
  server.addContentTypeParser(OCTETS, (request, payload, done) => {
    if (isForOctets(request.routeOptions.url ?? '')) done(null, payload);
    else done(new ProblemException(problemOfStatus(415)));
  });
}
