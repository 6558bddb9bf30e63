import {
  concerned,
  type ConcernedIncident,
  isOpen,
  type LegalRequest,
  standing,
  standingOf,
} from '../../../shared/record/legal-request.js';
import { adviseOnRequest } from '../../../shared/record/legal-request-advice.js';
import { dueOf, objectionsBy } from '../../../shared/record/legal-request-clocks.js';
import type { LegalRequestRow } from './database/legal-request.row.js';

/** What is told beside a request itself. */
export interface ViewOptions {
  /** RFC 3339. */
  readonly now: string;
  /** IANA zone of the business. */
  readonly zone: string;
  /** References of incidents and names of accounts, by id. */
  readonly references: ReadonlyMap<string, string>;
  readonly names: ReadonlyMap<string, string>;
  /** The incidents of which the reader may know; null for all. */
  readonly only: readonly string[] | null;
}

const instantOf = (ms: number | null): string | null => (ms === null ? null : new Date(ms).toISOString());

/** The times of a request that is open; of one that is closed nothing is overdue. */
function clocksOf(request: LegalRequest, { now, zone }: ViewOptions) {
  const due = dueOf(request.details, zone);
  const objections = standing(request.objections).length > 0 ? null : objectionsBy(request.details, zone);
  const open = isOpen(request);
  return {
    dueInstant: instantOf(due),
    overdue: open && due !== null && due < Date.parse(now),
    objectionsBy: open ? instantOf(objections) : null,
  };
}

const mayKnow =
  ({ only }: ViewOptions) =>
  ({ incident }: { incident?: string }): boolean =>
    incident === undefined || only === null || only.includes(incident);

/** A request as a list shows it. */
export function lineOf({ id, version, number, request }: LegalRequestRow, options: ViewOptions) {
  const { kind, from, organization, receivedAt, due, handler } = request.details;
  return {
    ...{ id, version, number, kind, from, organization: organization ?? null, receivedAt, due },
    status: standingOf(request),
    statusAt: request.steps.at(-1)?.at ?? request.loggedAt,
    ...clocksOf(request, options),
    handlerName: options.names.get(handler ?? '') ?? null,
    productions: standing(request.productions).length,
    incidents: concerned(request)
      .filter(mayKnow(options))
      .map(({ incident }) => ({ incident, reference: options.references.get(incident) ?? '' })),
  };
}

/** A request whole, as far as its reader may know of the incidents that it concerns. */
export function viewOf(
  { version, request }: LegalRequestRow,
  held: ReadonlySet<string>,
  options: ViewOptions,
) {
  const { id, number, loggedAt, by, details, steps, objections } = request;
  const { references, names, only } = options;
  // What an incident was found not to be concerned in is for those who may know of every incident.
  const links = request.incidents
    .filter(mayKnow(options))
    .filter(({ ended }) => only === null || ended === undefined);
  const told = ({ incident, ...link }: ConcernedIncident) => ({
    ...{ incident, reference: references.get(incident) ?? '', ...link },
    held: held.has(incident),
  });
  return {
    ...{ id, version, number, loggedAt, by, ...details },
    status: standingOf(request),
    ...clocksOf(request, options),
    handlerName: names.get(details.handler ?? '') ?? null,
    incidents: links.map(told),
    ...{ steps, objections },
    productions: request.productions.filter(mayKnow(options)),
    cautions: adviseOnRequest(request),
  };
}
