import { Injectable } from '@nestjs/common';
import type { Outcome } from '../../../shared/determination/determination.js';
import { listAssumptions } from '../../../shared/record/list-assumptions.js';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { Determinations, type StoredDetermination } from './determinations.js';

/** A determination in a list. */
export interface DeterminationLine {
  readonly sequence: number;
  readonly madeAt: string;
  readonly amendment: number;
  readonly duties: readonly {
    readonly id: string;
    readonly outcome: Outcome;
    readonly dueAt: string | null;
  }[];
}

/** The determinations of an incident, for those who may read it. */
@Injectable()
export class IncidentDeterminations {
  constructor(
    private readonly determinations: Determinations,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
  ) {}

  /** The one that stands or stood at a moment, with what the facts assume where the record is silent. */
  async current(incidentId: string, query: unknown, actor: Actor) {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    await this.access.read(incidentId, actor);
    // Before the first determination there may be no record either.
    const stored = (await this.determinations.current(incidentId, at)) ?? none();
    const assumptions = listAssumptions(await this.sections.record(incidentId, at));
    return { ...shown(stored), assumptions };
  }

  async list(incidentId: string, query: unknown, actor: Actor): Promise<Page<DeterminationLine>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    await this.access.read(incidentId, actor);
    const before = request.after === null ? null : Number(request.after.sort);
    const rows = await this.determinations.list(incidentId, before, request.limit + 1);
    const { items, next } = pageOf(rows, request, ({ sequence, id }) => ({ sort: String(sequence), id }));
    return { items: items.map(lineOf), next };
  }

  async find(incidentId: string, sequence: string, actor: Actor) {
    await this.access.read(incidentId, actor);
    const number = /^[1-9]\d{0,8}$/.test(sequence) ? Number(sequence) : 0;
    return shown((await this.determinations.find(incidentId, number)) ?? none());
  }
}

function none(): never {
  return refuse(404, 'There is no such determination.');
}

function shown({
  id,
  incidentId,
  sequence,
  madeAt,
  amendment,
  facts,
  packs,
  determination,
}: StoredDetermination) {
  return { id, incident: incidentId, version: sequence, madeAt, amendment, packs, facts, determination };
}

function lineOf({ sequence, madeAt, amendment, determination }: StoredDetermination): DeterminationLine {
  const duties = determination.duties.map(({ id, outcome, dueAt }) => ({ id, outcome, dueAt }));
  return { sequence, madeAt, amendment, duties };
}
