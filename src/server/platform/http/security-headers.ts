import type { FastifyInstance } from 'fastify';

/**
 * What a browser may do with our pages: load from this service alone, be shown in no frame, pass on no
 * address. The API documentation page is drawn by a library that sets styles from its script.
 * @param pictureHosts other hosts that pictures may come from, such as https://tiles.example.org
 */
export function addSecurityHeaders(
  server: FastifyInstance,
  documentationPath: string,
  pictureHosts: readonly string[],
): void {
  const policy = policyWith(pictureHosts);
  server.addHook('onRequest', (request, reply, done) => {
    const styles = request.url.startsWith(documentationPath) ? "; style-src 'self' 'unsafe-inline'" : '';
    reply.headers({
      'content-security-policy': `${policy}${styles}`,
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'referrer-policy': 'no-referrer',
      // The desk of a business, and a link that somebody was sent, are nothing for a search engine.
      'x-robots-tag': 'noindex, nofollow',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      // A call takes the position of the phone, a record its photographs; nothing listens.
      'permissions-policy': 'camera=(self), geolocation=(self), microphone=()',
      'x-request-id': request.id,
    });
    // Facts and answers hold what is known of people's injuries: nothing keeps a copy unless a route allows it.
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
    done();
  });
}

const policyWith = (pictureHosts: readonly string[]): string =>
  `default-src 'self'; img-src ${["'self' data: blob:", ...pictureHosts].join(' ')}; media-src 'self' blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'`;
