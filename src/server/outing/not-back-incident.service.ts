import { Injectable } from '@nestjs/common';
import { beginIncident } from '../../../shared/outing/begin-incident.js';
import { OpenIncidentDto } from '../../../shared/wire/record-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { readInput } from '../platform/http/read-input.js';
import { IncidentsService, SectionsService, ServiceSections } from '../record/record.api.js';
import { NotBackRepository } from './database/not-back.repository.js';
import type { NotBackRow } from './database/not-back.row.js';
import { NotBackReader } from './not-back-reader.js';
import type { NotBackReceipt } from './not-back-views.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingSteps } from './outing-steps.js';

/** Makes an incident of a craft that is not back, with all that is known of it, and ties the two together. */
@Injectable()
export class NotBackIncidents {
  constructor(
    private readonly notBacks: NotBackRepository,
    private readonly reader: NotBackReader,
    private readonly fleet: OutingFleet,
    private readonly steps: OutingSteps,
    private readonly record: ServiceSections,
    private readonly incidents: IncidentsService,
    private readonly sections: SectionsService,
  ) {}

  /** One incident at most, whoever asks and however often. */
  async become(id: string, key: string | undefined, actor: Actor): Promise<NotBackReceipt> {
    const request = { operation: 'not-back-incident', key, body: { id } };
    await this.record.run(() =>
      this.steps.once(request, actor, async (now) => {
        const row = await this.reader.found(id);
        const incidentId = row.incidentId ?? (await this.begin(row, actor, now));
        return { subject: 'not-back', subjectId: id, kind: 'became-incident', document: { incidentId } };
      }),
    );
    return this.reader.shown(id, actor);
  }

  private async begin(row: NotBackRow, actor: Actor, now: string): Promise<string> {
    const { unitName, colours } = await this.fleet.byId(row.craftId);
    const outing = await this.reader.outingOf(row);
    const { call, craft, people } = beginIncident({
      craft: { id: row.craftId, unitName, colours: colours ?? [] },
      openedAt: row.openedAt,
      dueBackAt: outing?.dueBackAt ?? null,
      outing: outing?.details ?? {},
      sheet: row.sheet,
      climbed: row.climbed,
      ended:
        row.ended === null || row.endedAt === null
          ? null
          : { how: row.ended, at: row.endedAt, words: row.endedHow },
      person: actor.personName,
    });
    const input = readInput(readRecordInput(OpenIncidentDto, { call }));
    const { id: incidentId } = await this.incidents.open(input, `not-back ${row.id}`, actor);
    await this.sections.add(incidentId, 'craft', craft, actor);
    await this.sections.add(incidentId, 'people', people, actor);
    const ending =
      row.ended === null
        ? ({ ended: 'became-incident', endedAt: now, endedBy: actor.personName } as const)
        : {};
    await this.notBacks.change({
      id: row.id,
      ...ending,
      incidentId,
      version: row.version + 1,
      updatedAt: now,
    });
    return incidentId;
  }
}
