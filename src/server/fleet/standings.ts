import type { Standing } from '../../../shared/record/service-step.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { Actor } from '../accounts/accounts.api.js';

/** Who is on duty on a day: the part of the roster that is asked for here. */
export interface DutyRoster {
  onDuty(day: string): Promise<readonly { readonly accountId: string; readonly duties: readonly string[] }[]>;
}

/** Where no station says otherwise, the day is that of the machine's own zone. */
const OWN_ZONE = Intl.DateTimeFormat().resolvedOptions().timeZone;

/** What an actor may decide about a craft today. */
export class Standings {
  constructor(private readonly roster: DutyRoster) {}

  /** A device decides nothing, whosever name was picked on it: a decision needs somebody who signed in. */
  async of(actor: Actor, instant: string, timeZone = OWN_ZONE): Promise<Standing> {
    if (actor.kind !== 'person' || actor.role === 'counsel') return 'staff';
    if (actor.role !== 'staff') return 'manager';
    const today = zoneClock(timeZone).localDate(Date.parse(instant));
    const onDuty = await this.roster.onDuty(today);
    const leads = onDuty.some(
      ({ accountId, duties }) => accountId === actor.accountId && duties.includes('shift-lead'),
    );
    return leads ? 'shift-lead' : 'staff';
  }
}
