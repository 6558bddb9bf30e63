import type { FastifyInstance } from 'fastify';

/** The routes of the service as they were declared, so that a wrong method can be told from a wrong address. */
export class RouteTable {
  private readonly routes: { segments: string[]; methods: string[] }[] = [];

  constructor(server: FastifyInstance) {
    server.addHook('onRoute', ({ url, method }) => {
      this.routes.push({ segments: url.split('/'), methods: [method].flat() });
    });
  }

  /** The methods that an address takes, in order; none when there is no such address. */
  methodsOf(path: string): string[] {
    const asked = path.split('/');
    const methods = this.routes
      .filter(({ segments }) => fits(segments, asked))
      .flatMap((route) => route.methods);
    return [...new Set(methods)].sort();
  }
}

function fits(segments: readonly string[], asked: readonly string[]): boolean {
  return (
    segments.length === asked.length &&
    segments.every((segment, place) => segment === asked[place] || segment.startsWith(':'))
  );
}
