import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { AttemptsRepository } from './database/attempts.repository.js';
import { hashOf } from './secrets.js';

/** What is tried at, and how many tries it stands within the window. */
export interface Subject {
  readonly name: string;
  readonly most: number;
}

const WINDOW_MS = 15 * 60_000;
const MINUTE_MS = 60_000;

/**
 * Limits tries at secrets. A try counts before it is looked at, so that a hundred at the same instant are not a hundred
 * looks; one that is refused here does not count, so that hammering does not make the wait longer.
 */
@Injectable()
export class AttemptLimits {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly attempts: AttemptsRepository,
    private readonly clock: Clock,
  ) {}

  /**
   * Does `look`, which tells whether the secret is right by giving something. What is right takes its own try back,
   * and clears the first subject.
   * @throws ProblemException 429 saying when the next try may do
   */
  async limit<T>(
    subjects: readonly [Subject, ...Subject[]],
    look: () => Promise<T | null>,
  ): Promise<T | null> {
    const [first] = subjects;
    const charged = await this.charge(subjects);
    const found = await look();
    if (found !== null) {
      await this.unitOfWork.run(async () => {
        await this.attempts.forget(charged);
        await this.attempts.forgetSubject(keyOf(first));
      });
    }
    return found;
  }

  private async charge(subjects: readonly Subject[]): Promise<string[]> {
    const now = this.clock.now();
    const outcome = await this.unitOfWork.run(async () => {
      await this.attempts.forgetUntil(later(now, -WINDOW_MS));
      for (const subject of subjects) {
        const times = await this.attempts.timesOf(keyOf(subject));
        const inTheWay = times.at(-subject.most);
        if (inTheWay !== undefined) return { until: later(inTheWay, WINDOW_MS) };
      }
      const charged: string[] = [];
      for (const subject of subjects) charged.push(await this.attempts.add(keyOf(subject), now));
      return { charged };
    });
    if (outcome.charged) return outcome.charged;
    throw new ProblemException(tooMany(outcome.until, now));
  }
}

/** Names are kept as hashes, as people type a password into the wrong field. */
const keyOf = ({ name }: Subject): string => hashOf(name);

function later(instant: string, byMs: number): string {
  return new Date(Date.parse(instant) + byMs).toISOString();
}

function tooMany(until: string, now: string) {
  const waitMs = Date.parse(until) - Date.parse(now);
  const minutes = Math.ceil(waitMs / MINUTE_MS);
  return {
    ...problemOfStatus(429, `Try again in ${minutes} ${minutes === 1 ? 'minute' : 'minutes'} (at ${until}).`),
    retryAfterSeconds: Math.ceil(waitMs / 1000),
  };
}
