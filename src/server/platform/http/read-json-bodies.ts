import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { PROBLEM_MEDIA_TYPE, ProblemException, problemOfStatus } from './problem.js';

/**
 * Bodies are JSON and nothing else, read as they stand: a member with a name such as `__proto__` is handed on
 * and named to the sender as unknown by the reader of the facts, exactly as on the command line.
 */
export function readJsonBodies(server: FastifyInstance): void {
  server.removeAllContentTypeParsers();
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (_request, body, done) => {
    try {
      done(null, JSON.parse(String(body)));
    } catch (error) {
      const problem = problemOfStatus(400, `Not JSON: ${reasonOf(error)}`);
      done(new ProblemException({ ...problem, source: 'request' }));
    }
  });
}

/** The engine's words without the piece of the body that it quotes: what is confidential stands in no error. */
function reasonOf(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  return said.replace(/, (\.\.\.)?"[\s\S]*$/, '').replace(/^"[\s\S]*" is/, 'the text is');
}

/** An address that is no address, `/%zz`, never reaches the routes. */
export function refuseAddress(_error: Error, _request: FastifyRequest, reply: FastifyReply): void {
  void reply.status(404).type(PROBLEM_MEDIA_TYPE).send(problemOfStatus(404, 'The address cannot be read.'));
}
