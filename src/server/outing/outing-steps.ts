import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { type OutingHappening, OutingsRepository } from './database/outings.repository.js';

/** What was asked for, under the key that its retries share. */
export interface StepRequest {
  readonly operation: string;
  readonly key: string | undefined;
  readonly body: unknown;
}

/** Steps that a retry never doubles, each an event of what it happened to. */
@Injectable()
export class OutingSteps {
  constructor(
    private readonly outings: OutingsRepository,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /**
   * Takes a step unless a request with this key took it before.
   * @param take changes what is to be changed at this instant, and says what happened
   * @returns the id of what it happened to
   */
  async once(
    { operation, key, body }: StepRequest,
    actor: Actor,
    take: (now: string) => Promise<OutingHappening>,
  ): Promise<string> {
    const request = { operation, key: readIdempotencyKey(key), body };
    const { id } = await this.createOnce.run(request, async (eventId) => {
      const now = this.clock.now();
      await this.outings.note(await take(now), actor, now, eventId);
    });
    const subject = await this.outings.subjectOf(id);
    if (subject === null) throw new Error(`No event was written for the step ${operation}.`);
    return subject;
  }
}
