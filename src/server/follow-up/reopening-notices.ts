import { Injectable } from '@nestjs/common';
import { AccountFinder } from '../accounts/accounts.api.js';
import { Decisions, type DecisionsReopened } from '../decision/decision.api.js';
import { Clock } from '../platform/clock.js';
import { MailMessage } from '../platform/mail/mail-message.js';
import { MailQueue } from '../platform/mail/mail-queue.js';
import { ServiceSections } from '../record/record.api.js';
import { TasksRepository } from './database/tasks.repository.js';
import { DutyCrew } from './duty-crew.js';
import { NoticeAddresses } from './notice-addresses.service.js';

/**
 * Tells by mail, in the unit of work in which it reopened, that what was signed or filed no longer stands: whoever has
 * an open task of the incident, and the managers on duty; each once for all that reopened together.
 */
@Injectable()
export class ReopeningNotices {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly crew: DutyCrew,
    private readonly accounts: AccountFinder,
    private readonly addresses: NoticeAddresses,
    private readonly sections: ServiceSections,
    private readonly queue: MailQueue,
    private readonly clock: Clock,
    decisions: Decisions,
  ) {
    decisions.onReopened((event) => this.tell(event));
  }

  private async tell({ incidentId, determination, reopenings }: DecisionsReopened): Promise<void> {
    const { reference } = await this.sections.outline(incidentId);
    const isFiled = reopenings.every(({ filing }) => filing !== undefined);
    const message = MailMessage.about(isFiled ? 'supplement-due' : 'decision-reopened', reference);
    const cause = `reopened/${incidentId}/${determination}/${reopenings[0]?.id ?? ''}`;
    for (const accountId of await this.whoMustKnow(incidentId)) {
      const { mail } = await this.addresses.of(accountId);
      if (mail === null) continue;
      await this.queue.enqueue({ to: mail, message, incidentId, key: `${cause}/${accountId}` });
    }
  }

  /** With no manager on duty, all managers: somebody has to sign again. */
  private async whoMustKnow(incidentId: string): Promise<ReadonlySet<string>> {
    const { incident } = await this.sections.record(incidentId);
    const onDuty = (await this.crew.at(this.clock.now(), incident.timeZone)).filter(
      ({ role }) => role === 'manager',
    );
    const managers =
      onDuty.length > 0
        ? onDuty.map(({ accountId }) => accountId)
        : (await this.accounts.ofRole('manager')).map(({ id }) => id);
    const owners = (await this.tasks.ofIncident(incidentId)).flatMap(({ state, assigneeId }) =>
      state === 'open' && assigneeId !== null ? [assigneeId] : [],
    );
    return new Set([...managers, ...owners]);
  }
}
