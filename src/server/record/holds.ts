import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { readConsequence } from '../../../shared/law/read-consequence.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import {
  type Custodian,
  type DirectedWithdrawal,
  type HoldCause,
  type HoldsSection,
  isHeld,
  isNewCause,
  type LegalHold,
  startsHold,
} from '../../../shared/record/legal-hold.js';
import { readClaim } from '../../../shared/record/read-claim.js';
import { recordToFacts } from '../../../shared/record/record-to-facts.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import { AccountFinder, type Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { type DeletionStop, DeletionStops } from './deletion-stops.js';
import { type RecordChange, RecordChanges } from './record-changes.js';
import { ServiceSections } from './service-sections.js';

/** A hold that has begun. */
export interface StartedHold {
  readonly incidentId: string;
  readonly hold: LegalHold;
}

export type HoldListener = (started: StartedHold) => Promise<void>;

const SERVICE: Actor = { kind: 'service', personName: 'the service, by what the record says' };

/**
 * What has to be kept as it is. A hold begins within the unit of work of the change that caused it, and nothing here
 * ends one.
 */
@Injectable()
export class Holds {
  private readonly listeners: HoldListener[] = [];

  constructor(
    private readonly sections: ServiceSections,
    private readonly accounts: AccountFinder,
    private readonly clock: Clock,
    changes: RecordChanges,
    stops: DeletionStops,
  ) {
    changes.onChange((change) => this.follow(change));
    stops.onAsked(async ({ incidentId }) => (incidentId === null ? [] : this.stopsOf(incidentId)));
  }

  /** Listeners run within the unit of work in which the hold begins. */
  onStarted(listener: HoldListener): void {
    this.listeners.push(listener);
  }

  async isHeld(incidentId: string): Promise<boolean> {
    return isHeld(await this.of(incidentId));
  }

  /** As they stand, or as of a moment (RFC 3339). */
  of(incidentId: string, at?: string): Promise<HoldsSection> {
    return this.sections.read<HoldsSection>(incidentId, 'holds', at);
  }

  /** Begins holds, within a unit of work; managers are custodians of each from the start. */
  async start(
    incidentId: string,
    begun: readonly Pick<LegalHold, 'id' | 'cause' | 'of' | 'reason'>[],
    actor: Actor,
  ): Promise<void> {
    if (begun.length === 0) return;
    const since = this.clock.now();
    const startedBy = actor.personName;
    const custodians: Custodian[] = (await this.accounts.ofRole('manager')).map(({ id, name }) => ({
      id,
      name,
      account: true,
      namedAt: since,
      namedBy: startedBy,
    }));
    const started = begun.map((hold): LegalHold => ({ ...hold, since, startedBy, custodians }));
    await this.change(
      incidentId,
      ({ holds = [], ...rest }) => ({ ...rest, holds: [...holds, ...started] }),
      actor,
    );
    for (const hold of started) for (const listener of this.listeners) await listener({ incidentId, hold });
  }

  /** That counsel had something taken out while the incident was held, or would have been. */
  async noteWithdrawal(
    incidentId: string,
    withdrawal: Omit<DirectedWithdrawal, 'id' | 'at'>,
    actor: Actor,
  ): Promise<void> {
    const noted = { id: randomUUID(), ...withdrawal, at: this.clock.now() };
    const add = ({ withdrawals = [], ...rest }: HoldsSection): HoldsSection => ({
      ...rest,
      withdrawals: [...withdrawals, noted],
    });
    await this.change(incidentId, add, actor);
  }

  /** Within a unit of work. */
  async change(
    incidentId: string,
    change: (section: HoldsSection) => HoldsSection,
    actor: Actor,
    reason?: string,
  ): Promise<void> {
    await this.sections.write(incidentId, 'holds', change(await this.of(incidentId)), actor, reason);
  }

  private async stopsOf(incidentId: string): Promise<DeletionStop[]> {
    const { holds = [] } = await this.of(incidentId);
    return holds
      .filter(({ released }) => released === undefined)
      .map(({ id, since }) => ({
        by: 'hold',
        id,
        words: `A hold has been on since ${since.slice(0, 10)}: counsel alone releases it.`,
      }));
  }

  private async follow({ incidentId, sections, deletion, record: read }: RecordChange): Promise<void> {
    if (deletion || !sections.some(isSectionName)) return;
    const record = await read();
    const { claimed, entries } = readClaim(record);
    const facts = recordToFacts(record);
    const causes = startsHold(readConsequence(facts, claimed));
    if (causes.length === 0) return;
    const held = await this.of(incidentId);
    const begun = causes
      .map((cause) => ({
        id: randomUUID(),
        cause,
        of: cause === 'claim' ? [...entries] : peopleOf(cause, facts),
      }))
      .filter(({ cause, of }) => isNewCause(held, cause, of));
    await this.start(incidentId, begun, SERVICE);
  }
}

/** Ids of the people who are a cause each by themselves. */
function peopleOf(cause: HoldCause, facts: IncidentFacts): string[] {
  return facts.people
    .filter((person) => {
      const alone: IncidentFacts = { ...facts, people: [person], peopleAssessment: 'partial' };
      return startsHold(readConsequence(alone, false)).includes(cause);
    })
    .map(({ id }) => id);
}
