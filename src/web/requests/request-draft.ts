import type { RequestDetails } from '../../../shared/record/legal-request.js';
import { bodyOf, draftOf } from '../lists/draft.js';
import type { Draft, Thing } from '../lists/field-spec.js';
import { fieldMoment, momentOf } from '../look/moment.js';
import { ALL_SPECS } from './request-specs.js';

/** An incident that was chosen, and whether a hold begins there. */
export interface ChosenIncident {
  readonly id: string;
  readonly reference: string;
  readonly hold: 'yes' | 'no';
  readonly reason: string;
}

/** A request while it is written; times as their fields say them. */
export interface RequestDraft {
  readonly fields: Draft;
  readonly receivedAt: string;
  readonly due: RequestDetails['due'] | undefined;
  readonly dueAt: string;
  readonly counselSawAt: string;
  readonly incidents: readonly ChosenIncident[];
}

export function emptyRequest(receivedBy: string, incidents: readonly ChosenIncident[]): RequestDraft {
  return {
    fields: draftOf(ALL_SPECS, { receivedBy }),
    receivedAt: '',
    due: undefined,
    dueAt: '',
    counselSawAt: '',
    incidents,
  };
}

/** What was entered before, to be corrected. */
export function draftOfRequest(details: RequestDetails, zone: string): RequestDraft {
  const { receivedAt, due, dueAt, counselSawAt } = details;
  return {
    fields: draftOf(ALL_SPECS, details as unknown as Thing),
    receivedAt: fieldMoment(receivedAt, zone),
    due,
    dueAt: dueAt === undefined ? '' : fieldMoment(dueAt, zone),
    counselSawAt: counselSawAt === undefined ? '' : fieldMoment(counselSawAt, zone),
    incidents: [],
  };
}

/** Text of a field. */
export function textOf({ fields }: RequestDraft, name: string): string {
  const value = fields[name];
  return typeof value === 'string' ? value : '';
}

/**
 * What is sent of the details. A time that is none is left as it was typed: the service then names its field.
 * @param before what was entered before: what this form does not ask stays as it is
 */
export function detailsBody(draft: RequestDraft, zone: string, before?: RequestDetails): Thing {
  const { due, dueAt, counselSawAt, receivedAt } = draft;
  const { dueDay, dueBasis, ...fields } = bodyOf(ALL_SPECS, draft.fields) as Record<string, unknown>;
  const ofCourt = fields['kind'] === 'subpoena' || fields['kind'] === 'court-order';
  if (!ofCourt) for (const name of ['court', 'courtName', 'docket']) delete fields[name];
  return {
    ...fields,
    receivedAt: momentOf(receivedAt, zone) ?? receivedAt,
    ...(due !== undefined && { due }),
    ...(due === 'at' && dueAt !== '' && { dueAt: momentOf(dueAt, zone) ?? dueAt }),
    ...(due === 'day' && dueDay !== undefined && { dueDay }),
    ...(due !== undefined &&
      due !== 'unknown' && { timeZone: zone, ...(dueBasis !== undefined && { dueBasis }) }),
    ...(counselSawAt !== '' && { counselSawAt: momentOf(counselSawAt, zone) ?? counselSawAt }),
    ...(before?.papers !== undefined && { papers: before.papers }),
  };
}

/** The incidents as they are sent. */
export function incidentsBody({ incidents }: RequestDraft): object[] {
  return incidents.map(({ id, hold, reason }) => ({
    id,
    hold: hold === 'yes',
    ...(hold === 'no' && reason.trim() !== '' && { reason: reason.trim() }),
  }));
}
