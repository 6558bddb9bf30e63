import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { PROBLEM_MEDIA_TYPE, ProblemException, type ProblemDocument, problemOfStatus } from './problem.js';
import { problemOfDatabase } from './problem-of-database.js';
import type { RouteTable } from './route-table.js';

const RETRY_AFTER_S = '2';

/** The one place where what went wrong becomes an answer. No answer shows the inside of the service. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly log = new Logger('http');

  constructor(private readonly routes: RouteTable) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const request = host.switchToHttp().getRequest<FastifyRequest>();
    const reply = host.switchToHttp().getResponse<FastifyReply>();
    const problem = this.problemOf(error, request, reply);
    if (problem.retryAfterSeconds !== undefined)
      void reply.header('retry-after', String(problem.retryAfterSeconds));
    void reply.status(problem.status).type(PROBLEM_MEDIA_TYPE).send(problem);
  }

  private problemOf(error: unknown, request: FastifyRequest, reply: FastifyReply): ProblemDocument {
    if (error instanceof ProblemException) return error.problem;
    if (error instanceof HttpException && error.getStatus() === 404) return this.notFound(request, reply);
    if (error instanceof HttpException && error.getStatus() < 500) {
      return problemOfStatus(error.getStatus(), error.message);
    }
    const ofDatabase = problemOfDatabase(error);
    if (ofDatabase?.status === 503) void reply.header('retry-after', RETRY_AFTER_S);
    if (ofDatabase !== undefined) return ofDatabase;
    this.log.error(
      `${request.id} ${request.method} ${request.routeOptions.url ?? '(no route)'}`,
      stackOf(error),
    );
    return {
      ...problemOfStatus(500, 'Try again; if it fails again, give this number to whoever runs the service.'),
      instance: `urn:uuid:${request.id}`,
    };
  }

  private notFound(request: FastifyRequest, reply: FastifyReply): ProblemDocument {
    const path = request.url.split('?', 1)[0] ?? '';
    const methods = this.routes.methodsOf(path);
    if (methods.length === 0) return problemOfStatus(404, `Nothing is at ${path}.`);
    void reply.header('allow', methods.join(', '));
    return problemOfStatus(405, `${path} takes ${methods.join(', ')}.`);
  }
}

function stackOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
