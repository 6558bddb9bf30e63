import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import { Determinations } from '../determination/determination.api.js';
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

  async signed(incidentId: string, actor: Actor) {
    const { decisions, reopenings } = await this.book(incidentId, actor);
    return { items: decisions, reopenings };
  }

  async items(incidentId: string, list: 'filings' | 'operatorNotices' | 'legalCalls', actor: Actor) {
    return { items: (await this.book(incidentId, actor))[list] };
  }

  private async book(incidentId: string, actor: Actor): Promise<IncidentBook> {
    await this.access.read(incidentId, actor);
    return this.books.read(incidentId);
  }
}
