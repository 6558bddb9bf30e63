import { Injectable } from '@nestjs/common';
import type { Decision, LegalCall, Reopening } from '../../../shared/decision/decision.js';
import type { Filing } from '../../../shared/decision/filing.js';
import type { DecisionBook } from '../../../shared/decision/follow-report.js';
import type { OperatorNotice } from '../../../shared/decision/operator-notice.js';
import type { Actor } from '../accounts/accounts.api.js';
import { ServiceSections } from '../record/record.api.js';

/** What the record says of decisions and filings; everything in it is only ever added to. */
export interface IncidentBook extends DecisionBook {
  readonly operatorNotices: readonly OperatorNotice[];
  readonly legalCalls: readonly LegalCall[];
}

/** What is added to the book of an incident at one time. */
export type BookAddition = { readonly [List in keyof IncidentBook]?: IncidentBook[List] };

type Decisions = { decisions: readonly Decision[]; reopenings: readonly Reopening[] };
type Filings = {
  filings: readonly Filing[];
  operatorNotices: readonly OperatorNotice[];
  legalCalls: readonly LegalCall[];
};

/** Keeps decisions and filings in the record, so that its history and its proof cover them. */
@Injectable()
export class DecisionBooks {
  constructor(private readonly sections: ServiceSections) {}

  /** @param at as of which moment (RFC 3339); now, where none is given */
  async read(incidentId: string, at?: string): Promise<IncidentBook> {
    const signed = await this.sections.read<Decisions>(incidentId, 'decisions', at);
    const { decisions = [], reopenings = [] } = signed;
    const filed = await this.sections.read<Filings>(incidentId, 'filings', at);
    const { filings = [], operatorNotices = [], legalCalls = [] } = filed;
    return { decisions, reopenings, filings, operatorNotices, legalCalls };
  }

  /** Adds to the book, within `ServiceSections.run`, and gives it as it then is. */
  async add(incidentId: string, addition: BookAddition, actor: Actor): Promise<IncidentBook> {
    const before = await this.read(incidentId);
    const decisions = [...before.decisions, ...(addition.decisions ?? [])];
    const reopenings = [...before.reopenings, ...(addition.reopenings ?? [])];
    const filings = [...before.filings, ...(addition.filings ?? [])];
    const operatorNotices = [...before.operatorNotices, ...(addition.operatorNotices ?? [])];
    const legalCalls = [...before.legalCalls, ...(addition.legalCalls ?? [])];
    if (addition.decisions !== undefined || addition.reopenings !== undefined) {
      await this.sections.write(incidentId, 'decisions', { decisions, reopenings }, actor);
    }
    if (addition.filings ?? addition.operatorNotices ?? addition.legalCalls) {
      await this.sections.write(incidentId, 'filings', { filings, operatorNotices, legalCalls }, actor);
    }
    return { decisions, reopenings, filings, operatorNotices, legalCalls };
  }
}
