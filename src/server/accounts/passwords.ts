import { Injectable } from '@nestjs/common';
import argon2 from 'argon2';
import { TurnQueue } from '../platform/database/turn-queue.js';
import { newToken } from './secrets.js';

/** The OWASP Password Storage Cheat Sheet, "Argon2id": 19 MiB of memory, two passes, one lane. */
const COST = { type: argon2.argon2id, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/**
 * Hashing has two of the four threads that the database and the files use too: whoever floods the sign-in must not
 * keep a call for help from being written.
 */
const AT_ONCE = 2;
const WAIT_LIMIT_MS = 10_000;

/** Passwords and PINs, kept only as argon2id. */
@Injectable()
export class Passwords {
  private readonly turns = new TurnQueue(AT_ONCE, WAIT_LIMIT_MS);
  private readonly standIn = this.hash(newToken());

  hash(secret: string): Promise<string> {
    return this.turns.hold(1, () => argon2.hash(composed(secret), COST));
  }

  /** Whether a secret is the one that was hashed. Where there is none, the answer is no after the same work. */
  async fits(secret: string, hash: string | null | undefined): Promise<boolean> {
    const against = hash ?? (await this.standIn);
    const same = await this.turns.hold(1, () => argon2.verify(against, composed(secret)));
    return same && against === hash;
  }
}

/** The same letters from every keyboard (NIST SP 800-63B-4, section 3.1.1.2). */
const composed = (secret: string): string => secret.normalize('NFKC');
