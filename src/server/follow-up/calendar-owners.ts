import { Injectable } from '@nestjs/common';
import type { TaskOwner } from '../../../shared/follow-up/task-template.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { type FoundAccount, RosterService } from '../accounts/accounts.api.js';
import { RecordSettings } from '../record/record.api.js';

/** Who sees to the tasks that nobody was given: managers to theirs, the shift lead of the day to those of shift leads. */
@Injectable()
export class CalendarOwners {
  constructor(
    private readonly roster: RosterService,
    private readonly settings: RecordSettings,
  ) {}

  /**
   * The kinds of tasks that somebody sees to while they are nobody's.
   * @param now RFC 3339; the day is that of the business
   */
  async kindsOf({ id, role }: FoundAccount, now: string): Promise<TaskOwner[]> {
    const today = zoneClock(this.settings.timeZone).localDate(Date.parse(now));
    const on = (await this.roster.onDuty(today)).find(({ accountId }) => accountId === id);
    const kinds: TaskOwner[] = [];
    if (role === 'manager' || role === 'administrator') kinds.push('manager');
    if (on?.duties.includes('shift-lead') === true) kinds.push('shift-lead');
    return kinds;
  }
}
