/** What a paper is that asks for records, or that they be kept; `not-read` while nobody who decides has read it. */
export const REQUEST_KINDS = [
  'not-read',
  'subpoena',
  'court-order',
  'preservation-letter',
  'records-request',
  'access-request',
  'insurer-request',
  'agency-request',
  'public-records-request',
] as const;
export type RequestKind = (typeof REQUEST_KINDS)[number];

export const REQUEST_WAYS = [
  'served-in-person',
  'registered-agent',
  'certified-mail',
  'mail',
  'email',
  'fax',
  'online',
  'phone',
  'other',
] as const;
export type RequestWay = (typeof REQUEST_WAYS)[number];

/** Whose court or agency it comes from, as far as it says: each has rules of its own. */
export const REQUEST_COURTS = ['federal', 'state', 'none', 'not-known'] as const;
export type RequestCourt = (typeof REQUEST_COURTS)[number];

/** How the due time is known. Nothing is ever made up: what nobody stated is `unknown`. */
export const DUE_BASES = ['stated', 'agreed', 'ordered', 'counsel'] as const;
export type DueBasis = (typeof DUE_BASES)[number];

/** `in-part`: something was answered, and the rest is still owed or disputed, so that it is still open. */
export const REQUEST_STATUSES = ['open', 'in-part', 'answered', 'refused', 'withdrawn'] as const;
export type RequestStatus = (typeof REQUEST_STATUSES)[number];

/** Who wrote something down; an account and a role where somebody signed in, a device where it was one. */
export interface WrittenBy {
  readonly person: string;
  readonly account: string | null;
  readonly role: string | null;
  readonly device: string | null;
}

/** What the paper says, as somebody entered it. */
export interface RequestDetails {
  readonly kind: RequestKind;
  /** Name of whoever asks. */
  readonly from: string;
  readonly organization?: string;
  readonly onBehalfOf?: string;
  readonly address?: string;
  readonly phone?: string;
  readonly mail?: string;
  /** RFC 3339. */
  readonly receivedAt: string;
  readonly way: RequestWay;
  /** Name of whoever took it. */
  readonly receivedBy: string;
  readonly asked?: string;
  readonly court?: RequestCourt;
  readonly courtName?: string;
  readonly docket?: string;
  readonly due: 'at' | 'day' | 'unknown';
  /** RFC 3339, with `due` `at`. */
  readonly dueAt?: string;
  /** Day of the calendar in `timeZone`, with `due` `day`. */
  readonly dueDay?: string;
  /** IANA zone of the place where it is due. */
  readonly timeZone?: string;
  readonly dueBasis?: DueBasis;
  /** People and craft that it names, as it names them. */
  readonly people?: readonly string[];
  readonly craft?: readonly string[];
  /** The days that it is about, both included. */
  readonly periodFrom?: string;
  readonly periodThrough?: string;
  /** Id of the account of whoever sees to it. */
  readonly handler?: string;
  /** The lawyer who has seen it, and when (RFC 3339). */
  readonly counsel?: string;
  readonly counselSawAt?: string;
  /** Ids of the files of evidence that show it. */
  readonly papers?: readonly string[];
}

/** How it stands from an instant on. */
export interface RequestStep {
  readonly id: string;
  readonly status: RequestStatus;
  /** RFC 3339, both. */
  readonly at: string;
  readonly recordedAt: string;
  readonly by: WrittenBy;
  readonly reason: string;
}

/** What somebody outside was given, or was told, on a request. */
interface Answer {
  readonly id: string;
  /** RFC 3339, both. */
  readonly at: string;
  readonly recordedAt: string;
  readonly by: WrittenBy;
  readonly to: string;
  readonly way: string;
  readonly what: string;
  /** Id of an earlier one that was recorded wrongly and no longer counts; `what` says why. */
  readonly replaces?: string;
}

export type Objection = Answer;

export interface Production extends Answer {
  /** Id of the incident that it is of, and of the packet, with the head of the log in that. */
  readonly incident?: string;
  readonly packet?: string;
  readonly head?: { readonly size: number; readonly root: string };
}

/** An incident that a request concerns. */
export interface ConcernedIncident {
  readonly incident: string;
  /** RFC 3339. */
  readonly since: string;
  readonly by: WrittenBy;
  /** Id of the hold that it began there. */
  readonly hold?: string;
  /** Why a person had it begin none. */
  readonly notHeld?: string;
  /** That it was found not to concern the incident: a hold that it began stands. */
  readonly ended?: { readonly at: string; readonly by: WrittenBy; readonly reason: string };
}

/** A request with everything that came of it. Corrections are new versions; of the lists nothing is taken away. */
export interface LegalRequest {
  readonly id: string;
  /** As people call it: `R-2026-0004`. */
  readonly number: string;
  /** RFC 3339. */
  readonly loggedAt: string;
  readonly by: WrittenBy;
  readonly details: RequestDetails;
  readonly incidents: readonly ConcernedIncident[];
  /** In the order in which they were entered; the last one stands. */
  readonly steps: readonly RequestStep[];
  readonly productions: readonly Production[];
  readonly objections: readonly Objection[];
}

/** A request as it stands in the record of one incident: without the other incidents that it concerns. */
export interface RequestOfIncident
  extends
    RequestDetails,
    Omit<LegalRequest, 'details' | 'incidents'>,
    Omit<ConcernedIncident, 'incident' | 'by'> {}

/** What the record of an incident says of requests. */
export interface RequestsSection {
  readonly requests?: readonly RequestOfIncident[];
}

/** @example standingOf({ …, steps: [] }) // 'open' */
export function standingOf({ steps }: Pick<LegalRequest, 'steps'>): RequestStatus {
  return steps.at(-1)?.status ?? 'open';
}

/** Whether something is still owed, or disputed. */
export function isOpen(request: Pick<LegalRequest, 'steps'>): boolean {
  return ['open', 'in-part'].includes(standingOf(request));
}

/** The incidents that it is thought to concern now. */
export function concerned({ incidents }: Pick<LegalRequest, 'incidents'>): ConcernedIncident[] {
  return incidents.filter(({ ended }) => ended === undefined);
}

/**
 * Papers that put the business on notice that records will be wanted: with them begins a hold. Fed. R. Civ. P. 37(e)
 * speaks of what should have been preserved in the anticipation or conduct of litigation.
 */
export function callsForHold(kind: RequestKind): boolean {
  return kind === 'subpoena' || kind === 'court-order' || kind === 'preservation-letter';
}

/**
 * The incidents in which a hold has to begin: nobody decided against one, and none began.
 * @example holdsToBegin({ details: { kind: 'insurer-request', … }, … }) // []
 */
export function holdsToBegin(request: LegalRequest): ConcernedIncident[] {
  if (!callsForHold(request.details.kind)) return [];
  return concerned(request).filter(({ hold, notHeld }) => hold === undefined && notHeld === undefined);
}

/** The request as the record of one of its incidents says it, with what was produced of that incident or of none. */
export function ofIncident(request: LegalRequest, link: ConcernedIncident): RequestOfIncident {
  const { id, number, loggedAt, by, details, steps, productions, objections } = request;
  const { incident, since, hold, notHeld, ended } = link;
  return {
    ...{ id, number, loggedAt, by, ...details, since },
    ...(hold !== undefined && { hold }),
    ...(notHeld !== undefined && { notHeld }),
    ...(ended !== undefined && { ended }),
    steps,
    objections,
    productions: productions.filter((one) => one.incident === undefined || one.incident === incident),
  };
}

/** The entries that count: those in whose place no later one stands. */
export function standing<A extends { readonly id: string; readonly replaces?: string }>(
  entries: readonly A[],
): A[] {
  const replaced = new Set(entries.flatMap(({ replaces }) => replaces ?? []));
  return entries.filter(({ id }) => !replaced.has(id));
}

/** Days of the calendar, both included. */
export interface Days {
  readonly from: string;
  readonly through: string;
}

/**
 * Whether an open request wants what belongs to no incident and is of these days. One that names neither an incident nor
 * days may want anything: it wants this, too.
 * @example wantsDays({ …, details: { periodFrom: '2026-06-01', … } }, { from: '2026-05-01', through: '2026-05-31' }) // false
 */
export function wantsDays(request: LegalRequest, days: Days | null): boolean {
  const { periodFrom, periodThrough } = request.details;
  if (periodFrom === undefined && periodThrough === undefined) return concerned(request).length === 0;
  if (days === null) return true;
  return (periodFrom ?? '') <= days.through && (periodThrough ?? '9999') >= days.from;
}
