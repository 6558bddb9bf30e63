import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { MailState } from '../../../shared/kernel/mail-state.js';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { MailDecisionDto, MailQueryDto } from '../../../shared/wire/mail-requests.dto.js';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { MailRows } from '../platform/database/mail-rows.js';
import type { MailDecisionRow, MailRow } from '../platform/database/mail.row.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { isMailAddress } from '../platform/mail-config.js';
import { MailRounds } from '../platform/mail/mail-rounds.js';
import type { MailDecision } from '../platform/mail/mail-words.js';

/** From where a person may take a mail, and why from nowhere else. */
const DECISIONS: Record<MailDecision, { from: readonly MailState[]; to: MailState; otherwise: string }> = {
  resend: {
    from: ['failed', 'uncertain'],
    to: 'queued',
    otherwise: 'Only a mail that failed, or of which nobody knows, is sent again.',
  },
  delivered: {
    from: ['uncertain'],
    to: 'delivered',
    otherwise: 'Only a mail of which nobody knows can be marked as delivered.',
  },
};

/** A mail with what people decided about it. */
export interface ShownMail {
  readonly id: string;
  readonly version: number;
}

@Injectable()
export class MailDeskService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly rows: MailRows,
    private readonly rounds: MailRounds,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown): Promise<Page<ShownMail>> {
    const asked = readInput(readPageQuery(query, MailQueryDto), 'query');
    const request = pageRequest(asked);
    const rows = await this.rows.page(request, asked.state);
    const { items, next } = pageOf(rows, request, ({ id, queuedAt }) => ({ sort: queuedAt, id }));
    const decisions = await this.rows.decisionsOn(items.map(({ id }) => id));
    const ofMail = (id: string): MailDecisionRow[] => decisions.filter(({ mailId }) => mailId === id);
    return { items: items.map((mail) => shape(mail, ofMail(mail.id))), next };
  }

  /** A mail that did not go through by itself is sent again, or is known to have arrived: a person says so, and why. */
  async decide(
    decision: MailDecision,
    id: string,
    body: unknown,
    ifMatch: string | undefined,
    { accountId, personName: person }: PersonActor,
  ): Promise<ShownMail> {
    const { reason } = readInput(readMembers(MailDecisionDto, body));
    const { from, to, otherwise } = DECISIONS[decision];
    await this.unitOfWork.run(async () => {
      const mail = (await this.rows.find(id)) ?? refuse(404, 'There is no such mail.');
      assertFresh(ifMatch, await this.shown(mail), {});
      if (!from.includes(mail.state)) refuse(409, otherwise);
      if (to === 'queued' && !isMailAddress(mail.toAddress)) refuse(409, 'It has no mail address to go to.');
      const now = this.clock.now();
      const anew = to === 'queued' ? { tries: 0, nextTryAt: now } : {};
      await this.rows.change(mail, { state: to, ...anew, changedAt: now });
      await this.rows.addDecision({
        id: randomUUID(),
        mailId: id,
        decision,
        reason,
        stateBefore: mail.state,
        wordsBefore: mail.words,
        person,
        accountId,
        decidedAt: now,
      });
      this.unitOfWork.afterCommit(() => this.rounds.wake());
    });
    return this.shown((await this.rows.find(id)) ?? refuse(404, 'There is no such mail.'));
  }

  private async shown(mail: MailRow): Promise<ShownMail> {
    return shape(mail, await this.rows.decisionsOn([mail.id]));
  }
}

function shape(mail: MailRow, decisions: readonly MailDecisionRow[]): ShownMail {
  const { id, version, state, purpose, incidentId, toAddress: to, subject, body: text } = mail;
  const { tries, words, messageId, queuedAt, changedAt } = mail;
  const nextTryAt = state === 'queued' ? mail.nextTryAt : null;
  return {
    ...{ id, version, state, purpose, incidentId, to, subject, text, tries, nextTryAt, words, messageId },
    ...{ queuedAt, changedAt },
    ...{ decisions: decisions.map(shapeDecision) },
  };
}

function shapeDecision(made: MailDecisionRow): object {
  const { decision, reason, stateBefore, wordsBefore, person, accountId, decidedAt } = made;
  return { decision, reason, stateBefore, wordsBefore, person, accountId, decidedAt };
}
