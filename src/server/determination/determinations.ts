import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { determine } from '../../../shared/determination/determine.js';
import type { Determination } from '../../../shared/determination/determination.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import { sameJson, type JsonObject } from '../../../shared/record/json-value.js';
import { recordToFacts } from '../../../shared/record/record-to-facts.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { RecordChanges, ServiceSections } from '../record/record.api.js';
import { DeterminationsRepository } from './database/determinations.repository.js';
import { Law } from './law-in-force.js';
import type { PackVersion } from './pack-version.js';
import { type KeptAnswer, scopeAnswerOf } from './signed-answer.js';
import { withoutReasons } from './without-reasons.js';
import { withoutWithdrawn } from './without-withdrawn.js';

/** A determination as it was made: on which facts, under which texts of the law, when. Only superseded. */
export interface StoredDetermination {
  readonly id: string;
  readonly incidentId: string;
  /** From 1 within the incident. */
  readonly sequence: number;
  readonly madeAt: string;
  /** The last amendment of the record that it saw. */
  readonly amendment: number;
  readonly facts: IncidentFacts;
  readonly packs: readonly PackVersion[];
  readonly determination: Determination;
}

export interface DeterminationChange {
  readonly incidentId: string;
  readonly before: StoredDetermination | null;
  readonly after: StoredDetermination;
  /** What it was determined from. */
  readonly record: IncidentRecord;
  readonly actor: Actor;
}

/** A record was changed in what leaves its determination as it was. */
export interface DeterminationStands extends Omit<DeterminationChange, 'before' | 'after'> {
  readonly stored: StoredDetermination;
}

export type DeterminationListener = (change: DeterminationChange) => Promise<void>;
export type StandingListener = (change: DeterminationStands) => Promise<void>;

/** Determines each incident anew whenever its facts or the law change, and keeps every determination. */
@Injectable()
export class Determinations {
  private readonly listeners: DeterminationListener[] = [];
  private readonly whileStanding: StandingListener[] = [];

  constructor(
    private readonly rows: DeterminationsRepository,
    private readonly sections: ServiceSections,
    private readonly law: Law,
    private readonly clock: Clock,
    changes: RecordChanges,
  ) {
    changes.onChange(async ({ incidentId, sections: written, actor, withdrawn, deletion, record }) => {
      if (!deletion && written.some(isSectionName)) await this.follow(incidentId, await record(), actor);
      if (withdrawn.length > 0) await this.forget(incidentId, written, withdrawn);
    });
  }

  /** Told within the unit of work in which a determination is superseded. */
  onChange(listener: DeterminationListener): void {
    this.listeners.push(listener);
  }

  /** Told within the unit of work of a change of the record after which the determination stands as it was. */
  onStanding(listener: StandingListener): void {
    this.whileStanding.push(listener);
  }

  /**
   * The latest, or the latest at a moment (RFC 3339); null only where none had been made by then, and for an incident
   * from before determinations were kept.
   */
  current(incidentId: string, at?: string): Promise<StoredDetermination | null> {
    return this.rows.current(incidentId, at);
  }

  find(incidentId: string, sequence: number): Promise<StoredDetermination | null> {
    return this.rows.find(incidentId, sequence);
  }

  /** Latest first, those below a sequence. */
  list(incidentId: string, before: number | null, limit: number): Promise<StoredDetermination[]> {
    return this.rows.page(incidentId, before, limit);
  }

  /** Determines afresh, within `ServiceSections.run`; nothing is written when facts and law are as they were. */
  async bringForward(incidentId: string, actor: Actor): Promise<void> {
    await this.determine(incidentId, await this.sections.record(incidentId), actor);
  }

  /** Under the same texts, and with no duty that a text calls up which was not at hand before. */
  private stands(before: StoredDetermination, now: Determination): boolean {
    const known = new Set(before.determination.duties.map(({ id }) => id));
    return this.law.isCurrent(before.packs) && now.duties.every(({ id }) => known.has(id));
  }

  /** After determining anew: without an owner the losses may add up otherwise, and that must be seen as a change. */
  private async forget(incidentId: string, sections: readonly string[], paths: readonly string[]) {
    const answers = sections.includes('scope-answers') ? await this.answers(incidentId) : [];
    const silent = answers.flatMap(({ id }, index) =>
      paths.includes(`/answers/${id}/reason`) ? [index] : [],
    );
    for (const { id, facts, determination } of await this.rows.all(incidentId)) {
      const left = withoutReasons({ facts: withoutWithdrawn(facts, sections, paths), determination }, silent);
      if (left.facts !== facts) await this.rows.setWords(id, left);
    }
  }

  private async answers(incidentId: string): Promise<readonly KeptAnswer[]> {
    const { answers = [] } = await this.sections.read<{ answers: KeptAnswer[] }>(incidentId, 'scope-answers');
    return answers;
  }

  private async follow(incidentId: string, record: IncidentRecord, actor: Actor): Promise<void> {
    const stored = await this.determine(incidentId, record, actor);
    if (stored === null) return;
    for (const listener of this.whileStanding) await listener({ incidentId, stored, record, actor });
  }

  /** Gives the determination that stands, and null where another took its place. */
  private async determine(
    incidentId: string,
    record: IncidentRecord,
    actor: Actor,
  ): Promise<StoredDetermination | null> {
    const facts = factsOf(record, await this.answers(incidentId));
    const before = await this.rows.current(incidentId);
    const { packs, geography } = this.law;
    const determination = determine(facts, { packs, geography, source: record.incident.reference });
    if (before !== null && sameFacts(before.facts, facts) && this.stands(before, determination))
      return before;
    const { latestAmendment } = await this.sections.outline(incidentId);
    const after: StoredDetermination & { packs: PackVersion[] } = {
      id: randomUUID(),
      incidentId,
      sequence: (before?.sequence ?? 0) + 1,
      madeAt: this.clock.now(),
      amendment: latestAmendment,
      facts,
      packs: this.law.versionsFor(determination),
      determination,
    };
    await this.rows.add(after);
    for (const listener of this.listeners) await listener({ incidentId, before, after, record, actor });
    return null;
  }
}

function factsOf(record: IncidentRecord, answers: readonly KeptAnswer[]): IncidentFacts {
  const facts = recordToFacts(record);
  return answers.length === 0 ? facts : { ...facts, scopeAnswers: answers.map(scopeAnswerOf) };
}

function sameFacts(one: IncidentFacts, other: IncidentFacts): boolean {
  return sameJson(one as unknown as JsonObject, other as unknown as JsonObject);
}
