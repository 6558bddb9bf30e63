import { Injectable } from '@nestjs/common';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import { type IncidentContents, RecordContents, ServiceSections } from '../record/record.api.js';
import type { PastOuting } from '../outing/outing.api.js';

/** How far the clock of whoever wrote the outing or the record may be off, and a little more. */
const GIVE_MS = 86_400_000;
const AT_ONCE = 100;

interface Window {
  readonly from: number;
  readonly until: number;
  /** Ids of craft of the fleet; null where nobody said which craft of ours it was. */
  readonly craft: ReadonlySet<string> | null;
}

/** Finds outings that belong to an incident by craft and time: what is known of the renter is a part of its record. */
@Injectable()
export class KeptWithIncident {
  constructor(
    private readonly contents: RecordContents,
    private readonly sections: ServiceSections,
  ) {}

  /** Those of a list that belong to none. */
  async without(outings: readonly PastOuting[]): Promise<PastOuting[]> {
    const windows = await this.windows();
    return outings.filter((outing) => {
      const out = Date.parse(outing.outAt ?? outing.createdAt);
      const back = Date.parse(outing.backAt ?? outing.createdAt);
      const [from, until] = [Math.min(out, back), Math.max(out, back)];
      return !windows.some(
        (one) =>
          one.from <= until && from <= one.until && (one.craft === null || one.craft.has(outing.craftId)),
      );
    });
  }

  private async windows(): Promise<Window[]> {
    const windows: Window[] = [];
    for (let after: string | null = null; ;) {
      const ids: string[] = await this.sections.ids(after, AT_ONCE);
      windows.push(...(await this.contents.of(ids)).flatMap(windowOf));
      after = ids.at(-1) ?? null;
      if (ids.length < AT_ONCE) return windows;
    }
  }
}

/** None for an incident whose whole record was deleted. */
function windowOf({ record, sections }: IncidentContents): Window[] {
  const { deletions = [] } = (sections.get('retention') ?? {}) as { deletions?: readonly { kind: string }[] };
  if (deletions.some(({ kind }) => kind === 'incident-record')) return [];
  const { occurredAt, learnedAt } = whenItHappened(record);
  const { craft = [] } = record.sections.craft ?? {};
  const ours = craft.flatMap(({ fleetCraft }) => fleetCraft ?? []);
  const isOpen =
    ours.length === 0 || craft.some(({ ours: own, fleetCraft }) => own && fleetCraft === undefined);
  const [from, until] = [Date.parse(occurredAt), Date.parse(learnedAt)];
  return [
    {
      from: Math.min(from, until) - GIVE_MS,
      until: Math.max(from, until) + GIVE_MS,
      craft: isOpen ? null : new Set(ours),
    },
  ];
}
