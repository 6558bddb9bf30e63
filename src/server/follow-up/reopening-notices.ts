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
 * an open task of the incident, and those who can sign again; each once for all that reopened together.
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
    const addresses = new Map([
      ...(await this.addressesOf(await this.ownersOf(incidentId))),
      ...(await this.decidersAt(incidentId)),
    ]);
    for (const [accountId, to] of addresses) {
      await this.queue.enqueue({ to, message, incidentId, key: `${cause}/${accountId}` });
    }
  }

  private async ownersOf(incidentId: string): Promise<string[]> {
    return (await this.tasks.ofIncident(incidentId)).flatMap(({ state, assigneeId }) =>
      state === 'open' && assigneeId !== null ? [assigneeId] : [],
    );
  }

  /** Somebody has to sign again: the managers on duty, or all, or the administrators, whoever of them has an address. */
  private async decidersAt(incidentId: string): Promise<Map<string, string>> {
    const { incident } = await this.sections.record(incidentId);
    const crew = await this.crew.at(this.clock.now(), incident.timeZone);
    const onDuty = crew.flatMap(({ role, accountId }) => (role === 'manager' ? [accountId] : []));
    const reached = await this.addressesOf(onDuty);
    if (reached.size > 0) return reached;
    for (const role of ['manager', 'administrator'] as const) {
      const all = await this.addressesOf((await this.accounts.ofRole(role)).map(({ id }) => id));
      if (all.size > 0) return all;
    }
    return reached;
  }

  private async addressesOf(accountIds: readonly string[]): Promise<Map<string, string>> {
    const found = new Map<string, string>();
    for (const accountId of accountIds) {
      const { mail } = await this.addresses.of(accountId);
      if (mail !== null) found.set(accountId, mail);
    }
    return found;
  }
}
