import { Injectable } from '@nestjs/common';
import type { Opening } from '../../../shared/proof/commit-field.js';
import { determine } from '../../../shared/determination/determine.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { listAssumptions } from '../../../shared/record/list-assumptions.js';
import { recordToFacts } from '../../../shared/record/record-to-facts.js';
import { ASIDE, replayAmendments, type PastAmendment } from '../../../shared/record/replay-amendments.js';
import type { Actor } from '../accounts/accounts.api.js';
import { type PageRequest, pageOf } from '../platform/http/cursor.js';
import type { Author } from './actor-words.js';
import type { AmendmentRow } from './database/amendment.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { IncidentAccess } from './incident-access.js';
import { outlineOf, recordOf, viewOf } from './incident-views.js';
import { RecordSettings } from './record-settings.js';

/** The record as a whole: now, as of a moment, its amendments, and what the law makes of it. */
@Injectable()
export class HistoryService {
  constructor(
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly access: IncidentAccess,
    private readonly settings: RecordSettings,
  ) {}

  async record(id: string, at: string | undefined, actor: Actor) {
    const incident = await this.access.read(id, actor);
    if (at === undefined) {
      const sections = (await this.incidents.sections(id)).map(viewOf);
      return { ...outlineOf(incident), at: null, sections };
    }
    const rows = await this.amendments.ofIncident(id, at);
    const sections = [...replayAmendments(rows.map(pastOf))].map(([section, state]) => ({
      section,
      ...state,
    }));
    return { id, reference: incident.reference, version: rows.length, at, sections };
  }

  async list(id: string, section: string | undefined, page: PageRequest, actor: Actor) {
    await this.access.read(id, actor);
    const before = page.after === null ? null : Number(page.after.sort);
    const rows = await this.amendments.page(id, section, before, page.limit + 1);
    const { items, next } = pageOf(rows, page, ({ sequence }) => ({ sort: String(sequence), id: '' }));
    return { items: items.map(amendmentView), next };
  }

  /** Computed from the record as it stands; nothing of it is kept. */
  async determination(id: string, actor: Actor) {
    const incident = await this.access.read(id, actor);
    const record = recordOf(await this.incidents.sections(id));
    const facts = recordToFacts(record);
    const { packs, geography } = this.settings;
    return {
      ...outlineOf(incident),
      facts,
      assumptions: listAssumptions(record),
      determination: determine(facts, { packs, geography, source: incident.reference }),
    };
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
