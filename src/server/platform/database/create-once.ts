import { createHash, randomBytes, randomUUID } from 'node:crypto';
import type { Clock } from '../clock.js';
import { CreateOnceRow } from './create-once.row.js';
import type { UnitOfWork } from './unit-of-work.js';

export interface CreateRequest {
  /** What is created: `craft`. A key counts within its operation. */
  operation: string;
  /** Chosen by the client, the same on every retry. */
  key: string;
  /** What was sent: the same key with another body is a mistake of the client, not a retry. */
  body: unknown;
}

export interface Created {
  id: string;
  /** It was made by an earlier request with this key; nothing was done now. */
  again: boolean;
}

/** The key was used before, with another body: taking it for a retry would lose what is sent now. */
export class KeyUsedBeforeError extends Error {}

/**
 * Creates that a retry never doubles: the key is kept in the same unit of work as what was made. Keys are kept for
 * good, as a phone may come back into signal after weeks, and count for everyone, as it may have been signed out
 * meanwhile. Of the body only a salted hash is kept, so that what is withdrawn elsewhere does not live on here.
 */
export class CreateOnce {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /**
   * Does `create` with a new id unless a request with this key has done so before. Of two that arrive together,
   * PostgreSQL has the second one done again, since both looked for the key first, and then it finds the first.
   * @throws KeyUsedBeforeError
   */
  run(
    { operation, key: idempotencyKey, body }: CreateRequest,
    create: (id: string) => Promise<void>,
  ): Promise<Created> {
    return this.unitOfWork.run(async () => {
      const { manager } = this.unitOfWork;
      const before = await manager.findOneBy(CreateOnceRow, { operation, idempotencyKey });
      if (before !== null) {
        if (fingerprintOf(body, before.salt) !== before.fingerprint) throw new KeyUsedBeforeError();
        return { id: before.createdId, again: true };
      }
      const id = randomUUID();
      const salt = randomBytes(16).toString('hex');
      await manager.insert(CreateOnceRow, {
        operation,
        idempotencyKey,
        createdId: id,
        salt,
        fingerprint: fingerprintOf(body, salt),
        createdAt: this.clock.now(),
      });
      await create(id);
      return { id, again: false };
    });
  }
}

function fingerprintOf(body: unknown, salt: string): string {
  return createHash('sha256')
    .update(salt)
    .update(JSON.stringify(body) ?? '')
    .digest('hex');
}
