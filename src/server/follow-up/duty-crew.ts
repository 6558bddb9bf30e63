import { Injectable } from '@nestjs/common';
import { type OnDuty, orderRoster } from '../../../shared/follow-up/order-roster.js';
import type { TaskOwner } from '../../../shared/follow-up/task-template.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { AccountFinder, RosterService } from '../accounts/accounts.api.js';

/** Who is on, for work that cannot wait. */
@Injectable()
export class DutyCrew {
  constructor(
    private readonly roster: RosterService,
    private readonly accounts: AccountFinder,
  ) {}

  /** Everybody on duty at an instant, with roles; where the roster is empty, managers and administrators. */
  async at(instant: string, zone: string): Promise<OnDuty[]> {
    const people = await this.roster.onDuty(zoneClock(zone).localDate(Date.parse(instant)));
    const crew: OnDuty[] = [];
    for (const { accountId, duties } of people) {
      const account = await this.accounts.find(accountId);
      if (account !== null && account.role !== 'counsel')
        crew.push({ accountId, role: account.role, duties });
    }
    return crew.length > 0 ? crew : this.whoDecides();
  }

  /** Ids of the accounts in the order in which they are asked. */
  async order(instant: string, zone: string, owner: TaskOwner): Promise<string[]> {
    return orderRoster(await this.at(instant, zone), owner);
  }

  private async whoDecides(): Promise<OnDuty[]> {
    const found = [
      ...(await this.accounts.ofRole('manager')),
      ...(await this.accounts.ofRole('administrator')),
    ];
    return found.map(({ id, role }) => ({ accountId: id, role, duties: [] }));
  }
}
