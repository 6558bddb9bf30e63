import { Injectable } from '@nestjs/common';
import { readScopeAnswer } from '../../../shared/wire/scope-answer-request.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { Determinations } from './determinations.js';
import { Law } from './law-in-force.js';
import { type KeptAnswer, REASON_WITHDRAWN, type SignedAnswer } from './signed-answer.js';

interface Answers {
  readonly answers: KeptAnswer[];
}

/** What people answered to the question whether an occurrence is reportable at all; signed, and never taken back. */
@Injectable()
export class ScopeAnswers {
  constructor(
    private readonly sections: ServiceSections,
    private readonly determinations: Determinations,
    private readonly access: IncidentAccess,
    private readonly createOnce: CreateOnce,
    private readonly law: Law,
    private readonly clock: Clock,
  ) {}

  /** Signs an answer and determines anew on it; a later answer to the same question takes its place. */
  async sign(
    incidentId: string,
    body: unknown,
    header: string | undefined,
    actor: PersonActor,
  ): Promise<SignedAnswer & { version: number }> {
    const given = readInput(readScopeAnswer(body));
    await this.access.find(incidentId, actor);
    if (!this.law.packs.some(({ aids = [] }) => aids.some(({ id }) => id === given.aid))) {
      refuse(422, 'No text of the law asks that.', '/aid');
    }
    const key = readIdempotencyKey(header);
    const request = { operation: 'scope-answer', key, body: { incidentId, body } };
    const { id } = await this.sections.run(() =>
      this.createOnce.run(request, async (made) => {
        const answers = await this.read(incidentId);
        const { accountId: account, personName: by, role } = actor;
        const signed: SignedAnswer = { ...given, id: made, by, account, role, at: this.clock.now() };
        const document: Answers = { answers: [...answers, signed] };
        // Without a reason of the amendment, which would be the same words in a second place.
        await this.sections.write(incidentId, 'scope-answers', document, actor);
        await this.determinations.bringForward(incidentId, actor);
      }),
    );
    const found = (await this.read(incidentId)).find((one) => one.id === id);
    return {
      reason: REASON_WITHDRAWN,
      ...(found ?? refuse(404, 'There is nothing at this address.')),
      version: 1,
    };
  }

  private async read(incidentId: string): Promise<KeptAnswer[]> {
    const { answers = [] } = await this.sections.read<Answers>(incidentId, 'scope-answers');
    return answers;
  }
}
