import { Injectable } from '@nestjs/common';
import type { Duty } from '../../../shared/determination/determination.js';
import { isConduct } from '../../../shared/determination/duty-kinds.js';
import { buildCallList, type CallLine } from '../../../shared/follow-up/build-call-list.js';
import type { ClaimsClock } from '../../../shared/follow-up/claims-clocks.js';
import { followUpZone } from '../../../shared/follow-up/follow-up-zone.js';
import { type AdoptedRules, type Observation, rulesOn } from '../../../shared/follow-up/house-rule.js';
import { mayWriteTo, type Writing } from '../../../shared/follow-up/may-write-to.js';
import { observeHouseRules } from '../../../shared/follow-up/observe-house-rules.js';
import { type ClosingWarning, warnOnClosing } from '../../../shared/follow-up/warn-on-closing.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { uuid } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Decisions, type DutyView } from '../decision/decision.api.js';
import { Determinations } from '../determination/determination.api.js';
import { Fleet } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { readInput } from '../platform/http/read-input.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { ClaimsClocks } from './claims-clocks.service.js';
import { HouseRepository } from './database/house.repository.js';
import { TasksRepository } from './database/tasks.repository.js';
import { IncidentCrafts } from './incident-craft.js';
import { type TaskView, viewTask } from './task-views.js';

export interface CallListView {
  readonly station: string | null;
  readonly lines: readonly CallLine[];
  /** Urgent tasks that are open, in the order of the work. */
  readonly urgent: readonly TaskView[];
}

/** What follows from one incident, made anew whenever somebody looks; nothing here is kept. */
@Injectable()
export class IncidentFollowUp {
  constructor(
    private readonly access: IncidentAccess,
    private readonly sections: ServiceSections,
    private readonly determinations: Determinations,
    private readonly decisions: Decisions,
    private readonly claims: ClaimsClocks,
    private readonly tasks: TasksRepository,
    private readonly house: HouseRepository,
    private readonly crafts: IncidentCrafts,
    private readonly fleet: Fleet,
    private readonly clock: Clock,
  ) {}

  /**
   * Whom to call now.
   * @param station id of a station; by default that of the craft
   */
  async callList(incidentId: string, station: unknown, actor: Actor): Promise<CallListView> {
    const { id } = await this.access.read(incidentId, actor);
    const record = await this.sections.record(id);
    const now = this.clock.now();
    const at = stationId(station) ?? (await this.crafts.stationOf(record, now));
    const numbers = at === null ? [] : await this.fleet.numbersOf(at);
    const notices = (await this.dutiesOf(id)).filter(
      (duty) =>
        duty.outcome !== 'not-required' &&
        !isConduct(duty) &&
        (duty.immediate || duty.telephone !== undefined),
    );
    const urgent = (await this.tasks.ofIncident(id)).filter(
      ({ escalates, state }) => escalates && state === 'open',
    );
    return {
      station: at,
      lines: buildCallList(numbers, notices),
      urgent: urgent.map((row) => viewTask(row, now)),
    };
  }

  async clocks(incidentId: string, actor: Actor): Promise<{ items: ClaimsClock[] }> {
    const { id } = await this.access.read(incidentId, actor);
    return { items: await this.clocksOf(id, await this.sections.record(id)) };
  }

  /** What speaks against closing now; it stops nobody. */
  async closing(incidentId: string, actor: Actor): Promise<{ items: ClosingWarning[] }> {
    const { id } = await this.access.read(incidentId, actor);
    const record = await this.sections.record(id);
    const openTasks = (await this.tasks.ofIncident(id)).filter(({ state }) => state === 'open');
    const craftHeld: string[] = [];
    for (const { id: craft, name } of await this.crafts.of(record)) {
      if ((await this.crafts.whyHeld(craft)).length > 0) craftHeld.push(name);
    }
    const items = warnOnClosing({
      duties: (await this.dutiesOf(id)).filter((duty) => !isConduct(duty)),
      settled: settledAmong(await this.decisions.dutiesOf(id)),
      openTasks,
      clocks: await this.clocksOf(id, record),
      craftHeld,
    });
    return { items };
  }

  /** What the record shows beside the house rules of the day; null while none were adopted for it. */
  async observations(
    incidentId: string,
    actor: Actor,
  ): Promise<{ rules: AdoptedRules | null; items: Observation[] }> {
    const { id } = await this.access.read(incidentId, actor);
    const record = await this.sections.record(id);
    const day = zoneClock(await this.zoneOf(id, record)).localDate(
      Date.parse(whenItHappened(record).occurredAt),
    );
    const adopted = (await this.house.rules()).map(({ adoptedOn, document, rules }) => ({
      adoptedOn,
      document,
      rules,
    }));
    const rules = rulesOn(adopted, day);
    return { rules, items: rules === null ? [] : observeHouseRules(record, rules) };
  }

  /** Whether renter and family may be written to, and how. */
  async writing(incidentId: string, actor: Actor): Promise<{ renter: Writing; family: Writing }> {
    const { id } = await this.access.read(incidentId, actor);
    const record = await this.sections.record(id);
    return { renter: mayWriteTo(record, 'renter'), family: mayWriteTo(record, 'family') };
  }

  private async clocksOf(incidentId: string, record: IncidentRecord): Promise<ClaimsClock[]> {
    return this.claims.read(incidentId, record, await this.zoneOf(incidentId, record));
  }

  private async zoneOf(incidentId: string, record: IncidentRecord): Promise<string> {
    const stored = await this.determinations.current(incidentId);
    return followUpZone(stored?.determination.timeZone, record.incident.timeZone);
  }

  private async dutiesOf(incidentId: string): Promise<readonly Duty[]> {
    return (await this.determinations.current(incidentId))?.determination.duties ?? [];
  }
}

/** A duty of two craft is settled when both reports are: filed, or decided on with counsel and not reopened. */
function settledAmong(duties: readonly DutyView[]): ReadonlySet<string> {
  const isSettled = ({ state, decision }: DutyView): boolean =>
    state === 'filed' || (state === 'decided' && decision?.kind === 'no-report');
  const open = new Set(duties.filter((duty) => !isSettled(duty)).map(({ duty }) => duty));
  return new Set(duties.map(({ duty }) => duty).filter((duty) => !open.has(duty)));
}

function stationId(station: unknown): string | null {
  if (station === undefined) return null;
  if (typeof station === 'string' && uuid.faultOf(station) === null) return station;
  const errors = [{ pointer: '/station', detail: 'Must be the id of a station.' }];
  return readInput<string>({ ok: false, errors }, 'query');
}
