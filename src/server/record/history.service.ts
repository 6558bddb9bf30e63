import { Injectable } from '@nestjs/common';
import type { Opening } from '../../../shared/proof/commit-field.js';
import { SECTION_NAMES } from '../../../shared/record/incident-record.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { ASIDE, replayAmendments, type PastAmendment } from '../../../shared/record/replay-amendments.js';
import type { Actor } from '../accounts/accounts.api.js';
import { type PageRequest, pageOf } from '../platform/http/cursor.js';
import { refuse } from '../platform/http/refuse.js';
import type { Author } from './actor-words.js';
import type { AmendmentRow } from './database/amendment.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { IncidentAccess } from './incident-access.js';
import { HEAD_SECTION } from './incident-head.js';
import { outlineOf, viewOf, withoutServiceSections } from './incident-views.js';

/** What of a record a history is asked for. */
export interface FieldOfRecord {
  readonly section: string | undefined;
  /** RFC 6901, into the section; items of lists go by their ids. */
  readonly pointer: string | undefined;
}

/** The record as a whole: now, as of a moment, and its amendments. */
@Injectable()
export class HistoryService {
  constructor(
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly access: IncidentAccess,
  ) {}

  async record(id: string, at: string | undefined, actor: Actor) {
    const incident = await this.access.read(id, actor);
    if (at === undefined) {
      const sections = withoutServiceSections(await this.incidents.sections(id)).map(viewOf);
      return { ...outlineOf(incident), at: null, sections };
    }
    const rows = await this.amendments.ofIncident(id, at);
    const sections = [...replayAmendments(rows.map(pastOf))].map(([section, state]) => ({
      section,
      ...state,
    }));
    const { reference } = incident;
    return { id, reference, version: rows.length, at, sections: withoutServiceSections(sections) };
  }

  /**
   * Amendments, the newest first; of one section, or of one field of it and what is below.
   * @throws ProblemException 422 for a field without its section
   */
  async list(id: string, { section, pointer }: FieldOfRecord, page: PageRequest, actor: Actor) {
    await this.access.read(id, actor);
    if (pointer !== undefined && section === undefined) {
      refuse(422, 'Name the section that the pointer leads into.', '/section');
    }
    const sections = section === undefined ? [...SECTION_NAMES, HEAD_SECTION] : [section];
    const before = page.after === null ? null : Number(page.after.sort);
    const rows = await this.amendments.page(id, { sections, pointer, before, take: page.limit + 1 });
    const { items, next } = pageOf(rows, page, ({ sequence }) => ({ sort: String(sequence), id: '' }));
    const views = items.map(amendmentView);
    if (pointer === undefined) return { items: views, next };
    const about = ({ path }: { path: string }): boolean => path === pointer || path.startsWith(`${pointer}/`);
    // SQLite compares without regard to letter case, and ids of items do not.
    const told = views.map((view) => ({ ...view, changes: view.changes.filter(about) }));
    return { items: told.filter(({ changes }) => changes.length > 0), next };
  }
}

/** What a change became, for the replay. */
export function pastOf({ sequence, section, changes, openings }: AmendmentRow): PastAmendment {
  return {
    sequence,
    section,
    changes: changes.map(({ path }, index) => ({ path, to: openings[index]?.to ?? null })),
  };
}

export function authorOfRow(row: AmendmentRow): Author {
  const person = asideOf(row, ASIDE.person);
  return { who: row.who, device: row.device, person: typeof person === 'string' ? person : '' };
}

/** What an amendment says of itself under a name that is no path; null when it says nothing. */
export function asideOf({ changes, openings }: AmendmentRow, name: string): JsonValue {
  const place = changes.findIndex(({ path }) => path === name);
  return openings[place]?.to?.value ?? null;
}

function amendmentView(row: AmendmentRow) {
  const { sequence, section, madeAt, reasonOpening, leafHash } = row;
  return {
    sequence,
    section,
    madeAt,
    ...authorOfRow(row),
    reason: valueOf(reasonOpening),
    ...(row.reasonCommitment !== null && reasonOpening === null ? { reasonWithdrawn: true } : {}),
    finished: asideOf(row, ASIDE.finished) === true,
    withdraws: asideOf(row, ASIDE.withdrawn) ?? [],
    changes: row.changes.flatMap(({ path }, index) => {
      const { from = null, to = null } = row.openings[index] ?? {};
      if (!path.startsWith('/')) return [];
      const isWithdrawn = from === null || to === null;
      return [{ path, from: valueOf(from), to: valueOf(to), ...(isWithdrawn ? { withdrawn: true } : {}) }];
    }),
    leafHash,
  };
}

function valueOf(opening: Opening | null): JsonValue {
  return opening === null ? null : opening.value;
}
