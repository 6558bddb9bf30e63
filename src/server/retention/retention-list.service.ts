import { Injectable } from '@nestjs/common';
import { RETENTION_STATES, type RetentionLine } from '../../../shared/retention/retention-line.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { RetentionQueryDto } from '../../../shared/wire/retention-requests.dto.js';
import { Clock } from '../platform/clock.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { DeletionStops, RecordSettings } from '../record/record.api.js';
import { RetentionRepository } from './database/retention.repository.js';
import { IncidentSubjects, type Standing } from './incident-subjects.js';
import { MonthSubjects } from './month-subjects.js';
import { RetentionChoices } from './retention-choices.service.js';
import { RetentionForms } from './retention-forms.js';
import { keyOf, lineOf, type RetentionSubject } from './retention-subject.js';

const DAY_MS = 86_400_000;

/** What is due for deletion, soon due, stopped, or cannot be told. It lists and deletes nothing. */
@Injectable()
export class RetentionList {
  constructor(
    private readonly forms: RetentionForms,
    private readonly rows: RetentionRepository,
    private readonly choices: RetentionChoices,
    private readonly incidents: IncidentSubjects,
    private readonly months: MonthSubjects,
    private readonly stops: DeletionStops,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown) {
    const { state, ...asked } = readInput(readPageQuery(query, RetentionQueryDto), 'query');
    const request = pageRequest(asked);
    const all = (await this.lines()).sort(byTime);
    const counts = Object.fromEntries(
      RETENTION_STATES.map((one) => [one, all.filter((line) => line.state === one).length]),
    );
    const rows = all
      .filter((line) => state === undefined || line.state === state)
      .filter((line) => request.after === null || orderOf(line) > orderTextOf(request.after));
    const { items, next } = pageOf(rows.slice(0, request.limit + 1), request, (line) => ({
      sort: sortOf(line),
      id: line.id,
    }));
    return { today: this.today(), counts, items, next };
  }

  /** One line as it stands now; undefined where there is nothing of it, or its time is neither over nor soon over. */
  async line(kindId: string, of: { incident?: string; month?: string }): Promise<RetentionLine | null> {
    const kind = this.forms.kind(kindId);
    if (kind === undefined) return null;
    const standing = await this.standing();
    const subject =
      of.incident === undefined
        ? await this.months.one(kind, of.month ?? '', standing)
        : await this.incidents.one(kind, of.incident, standing);
    return subject === undefined ? null : this.tell(subject);
  }

  today(): string {
    return zoneClock(this.settings.timeZone).localDate(Date.parse(this.clock.now()));
  }

  private async lines(): Promise<RetentionLine[]> {
    const standing = await this.standing();
    const lines: RetentionLine[] = [];
    const add = async (subject: RetentionSubject): Promise<void> => {
      const line = await this.tell(subject);
      if (line !== null) lines.push(line);
    };
    for await (const subject of this.incidents.all(standing)) await add(subject);
    for (const subject of await this.months.all(standing)) await add(subject);
    return lines;
  }

  private tell(subject: RetentionSubject): Promise<RetentionLine | null> {
    const today = this.today();
    const soon = new Date(Date.parse(today) + this.forms.form.soonDays * DAY_MS).toISOString().slice(0, 10);
    return lineOf(subject, { today, soon }, (target) => this.stops.of(target));
  }

  private async standing(): Promise<Standing> {
    const keptUntil = new Map<string, string>();
    for (const { kind, incidentId, month, keepUntil } of await this.rows.decisions()) {
      if (keepUntil !== null) keptUntil.set(keyOf(kind, incidentId ?? month ?? ''), keepUntil);
    }
    return { chosenMonths: await this.choices.months(), keptUntil };
  }
}

/** What may be decided now comes first; within that, what has waited longest. */
function sortOf({ state, latest, earliest }: RetentionLine): string {
  return `${RETENTION_STATES.indexOf(state)} ${latest ?? earliest ?? '9999'}`;
}

function orderOf(line: RetentionLine): string {
  return orderTextOf({ sort: sortOf(line), id: line.id });
}

function orderTextOf({ sort, id }: { sort: string; id: string }): string {
  return `${sort} ${id}`;
}

function byTime(one: RetentionLine, other: RetentionLine): number {
  const [a, b] = [orderOf(one), orderOf(other)];
  return a === b ? 0 : a < b ? -1 : 1;
}
