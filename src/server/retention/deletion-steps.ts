import { Injectable } from '@nestjs/common';
import type { RetentionKind } from '../../../shared/retention/retention-form.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { EvidenceDeletion } from '../evidence/evidence.api.js';
import { WorkDeletion } from '../follow-up/follow-up.api.js';
import { PacketDeletion } from '../hand-over/hand-over.api.js';
import { RentalData } from '../outing/outing.api.js';
import { Clock } from '../platform/clock.js';
import { MailRows } from '../platform/database/mail-rows.js';
import { DeletionStops, RecordDeletion } from '../record/record.api.js';
import { IncidentSubjects } from './incident-subjects.js';
import { KeptWithIncident } from './kept-with-incident.js';

/** How much of what went. */
export type Gone = Record<string, number>;

/** Deletes what a kind names, within `ServiceSections.run`, each part by the module that keeps it. */
@Injectable()
export class DeletionSteps {
  constructor(
    private readonly record: RecordDeletion,
    private readonly evidence: EvidenceDeletion,
    private readonly packets: PacketDeletion,
    private readonly work: WorkDeletion,
    private readonly rentals: RentalData,
    private readonly mails: MailRows,
    private readonly incidents: IncidentSubjects,
    private readonly kept: KeptWithIncident,
    private readonly stops: DeletionStops,
    private readonly clock: Clock,
  ) {}

  async ofIncident(kind: RetentionKind, id: string, reason: string, actor: PersonActor): Promise<Gone> {
    const gone: Gone = {};
    const { fields, parts = [] } = kind;
    if (parts.includes('files')) gone['files'] = await this.evidence.ofIncident(id, reason, actor);
    if (parts.includes('packets')) gone['packets'] = await this.packets.ofIncident(id, actor);
    if (parts.includes('privileged'))
      gone['privileged'] = await this.record.privilegedNotes(id, reason, actor);
    if (parts.includes('drafts')) gone['drafts'] = await this.record.allDrafts(id);
    if (parts.includes('work')) await this.work.words(id);
    if (fields !== undefined) {
      const isOf = this.incidents.isOf(kind);
      gone['fields'] = await this.record.fields(
        id,
        (section, path) => isOf({ section, path }),
        reason,
        actor,
      );
    }
    if (fields === 'all') await this.record.wordsOfService(id, reason, actor);
    return gone;
  }

  /** What belongs to an incident stays: outings by craft and time, mails of an incident whose deletion is stopped. */
  async ofMonth(kind: RetentionKind, month: string, reason: string, actor: PersonActor): Promise<Gone> {
    if (kind.of === 'outings') {
      const outings = await this.kept.without(await this.rentals.of(month));
      await this.rentals.delete(
        outings.map(({ id }) => id),
        reason,
        actor,
      );
      return { outings: outings.length };
    }
    const free: string[] = [];
    const stopped = new Map<string, boolean>();
    for (const { id, incidentId } of await this.mails.withTextOf(month)) {
      if (incidentId === null || !(await this.isStopped(incidentId, kind, stopped))) free.push(id);
    }
    await this.mails.dropText(free, this.clock.now());
    return { mails: free.length };
  }

  private async isStopped(
    incidentId: string,
    kind: RetentionKind,
    before: Map<string, boolean>,
  ): Promise<boolean> {
    const known = before.get(incidentId);
    if (known !== undefined) return known;
    const stops = await this.stops.of({ incidentId, kind: kind.id, days: null });
    before.set(incidentId, stops.length > 0);
    return stops.length > 0;
  }
}
