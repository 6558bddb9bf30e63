import type { FastifyReply } from 'fastify';
import { ProblemException, problemOfStatus } from './problem.js';

/** Something that is changed in whole versions: 1 when it was made, one more with every change. */
export interface Versioned {
  readonly version: number;
}

/** `entityTag({ version: 3 })` is `"3"`, quotes included: a strong tag (RFC 9110, 8.8.3). */
export function entityTag({ version }: Versioned): string {
  return `"${version}"`;
}

/** Answers with something versioned and the tag that a later change of it has to send as If-Match. */
export function answerVersioned<T extends Versioned>(reply: FastifyReply, thing: T): T {
  void reply.header('etag', entityTag(thing));
  return thing;
}

/** Answers a create: 201, the address of what was made and its tag; the same again to a retry. */
export function answerCreated<T extends Versioned & { readonly id: string }>(
  reply: FastifyReply,
  path: string,
  thing: T,
): T {
  void reply.status(201).header('location', `${path}/${thing.id}`);
  return answerVersioned(reply, thing);
}

/**
 * Refuses a change that was made on another version than the present one. Both versions are in the answer, so that
 * whoever sent the change can put them together: nobody's words are lost.
 * @param ifMatch the header as it was sent
 * @param yours the change as it was sent
 * @throws ProblemException 428 without the header, 412 when another version is the present one
 */
export function assertFresh(ifMatch: string | undefined, current: Versioned, yours: object): void {
  // "*" would overwrite whatever is there (RFC 9110, 13.1.1), which is the accident to be prevented.
  if (ifMatch === undefined || ifMatch.trim() === '*') {
    const tag = entityTag(current);
    throw new ProblemException(
      problemOfStatus(428, `Send If-Match with the ETag of the version that you changed, such as ${tag}.`),
    );
  }
  const tags = ifMatch.split(',').map((tag) => tag.trim());
  if (!tags.includes(entityTag(current))) throw new ProblemException(staleProblem(current, yours));
}

function staleProblem(current: Versioned, yours: object) {
  const now = new Map(Object.entries(current));
  const differing = Object.entries(yours).filter(
    ([name, value]) => JSON.stringify(value ?? null) !== JSON.stringify(now.get(name) ?? null),
  );
  return {
    ...problemOfStatus(412),
    errors: differing.map(([name]) => ({
      pointer: `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`,
      detail: 'Not the same in the present version: compare both, and send your change again with its ETag.',
    })),
    current,
    yours,
  };
}
