import { Injectable } from '@nestjs/common';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Determinations } from '../determination/determination.api.js';
import { readInput } from '../platform/http/read-input.js';
import { IncidentAccess } from '../record/record.api.js';
import { DecisionBooks, type IncidentBook } from './decision-books.js';
import { Decisions } from './decisions.js';

/** What was signed and filed on an incident, for those who may read it. */
@Injectable()
export class DecisionReader {
  constructor(
    private readonly decisions: Decisions,
    private readonly determinations: Determinations,
    private readonly books: DecisionBooks,
    private readonly access: IncidentAccess,
  ) {}

  /** The duties as they stand, with the version of the determination that a decision is signed on. */
  async duties(incidentId: string, actor: Actor) {
    await this.access.read(incidentId, actor);
    const stored = await this.determinations.current(incidentId);
    return { determination: stored?.sequence ?? null, items: await this.decisions.dutiesOf(incidentId) };
  }

  async signed(incidentId: string, query: unknown, actor: Actor) {
    const { decisions, reopenings } = await this.book(incidentId, query, actor);
    return { items: decisions, reopenings };
  }

  async items(
    incidentId: string,
    list: 'filings' | 'operatorNotices' | 'legalCalls',
    query: unknown,
    actor: Actor,
  ) {
    return { items: (await this.book(incidentId, query, actor))[list] };
  }

  private async book(incidentId: string, query: unknown, actor: Actor): Promise<IncidentBook> {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    await this.access.read(incidentId, actor);
    return this.books.read(incidentId, at);
  }
}
