import { Injectable } from '@nestjs/common';
import type { EvidenceSection } from '../../../shared/record/evidence-section.js';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import { readRetentionFacts } from '../../../shared/retention/read-retention-facts.js';
import type { RetentionKind } from '../../../shared/retention/retention-form.js';
import type { RetentionSection } from '../../../shared/retention/retention-line.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import { HandOverForms, type HandOversSection } from '../hand-over/hand-over.api.js';
import {
  type IncidentContents,
  RecordContents,
  RecordSettings,
  ServiceSections,
} from '../record/record.api.js';
import { RetentionForms } from './retention-forms.js';
import { keyOf, type RetentionSubject } from './retention-subject.js';

/** What was decided and chosen, as far as it moves a day. */
export interface Standing {
  /** By the id of the period. */
  readonly chosenMonths: Readonly<Record<string, number>>;
  /** By `keyOf`; ISO dates. */
  readonly keptUntil: ReadonlyMap<string, string>;
}

const AT_ONCE = 100;

/** What is kept of incidents, each kind by itself. */
@Injectable()
export class IncidentSubjects {
  constructor(
    private readonly forms: RetentionForms,
    private readonly handOver: HandOverForms,
    private readonly contents: RecordContents,
    private readonly sections: ServiceSections,
    private readonly settings: RecordSettings,
  ) {}

  async *all(standing: Standing): AsyncGenerator<RetentionSubject> {
    for (let after: string | null = null; ;) {
      const ids = await this.sections.ids(after, AT_ONCE);
      for (const contents of await this.contents.of(ids)) yield* this.of(contents, standing);
      after = ids.at(-1) ?? null;
      if (ids.length < AT_ONCE) return;
    }
  }

  async one(
    kind: RetentionKind,
    incidentId: string,
    standing: Standing,
  ): Promise<RetentionSubject | undefined> {
    const [contents] = await this.contents.of([incidentId]);
    return contents && this.of(contents, standing).find((one) => one.kind === kind);
  }

  private of(contents: IncidentContents, { chosenMonths, keptUntil }: Standing): RetentionSubject[] {
    const { outline, record, sections, statusSince, drafts } = contents;
    const { packets = [], notices = [] } = sectionOf<HandOversSection>(contents, 'hand-overs');
    const made = [...packets, ...notices].filter(({ deleted }) => deleted === undefined);
    const { deletions = [] } = sectionOf<RetentionSection>(contents, 'retention');
    const lastPacketAt =
      made
        .map(({ madeAt }) => madeAt)
        .sort()
        .at(-1) ?? null;
    const { timeZone } = this.settings;
    const dates = { statusSince, lastPacketAt, lastDraftAt: drafts.lastAt, timeZone };
    const facts = readRetentionFacts(record, dates, this.forms.form.majority);
    const fields = [...sections].flatMap(([section, document]) =>
      isSectionName(section) ? [...flattenSection(document).keys()].map((path) => ({ section, path })) : [],
    );
    const parts: Record<string, number> = {
      files: filesOf(contents),
      privileged: contents.notes,
      packets: made.length,
      drafts: drafts.count,
    };
    return this.forms.form.kinds.flatMap((kind): RetentionSubject[] => {
      if (kind.of !== 'incident') return [];
      const holds = {
        ...(kind.fields !== undefined && { fields: fields.filter(this.isOf(kind)).length }),
        ...Object.fromEntries(
          (kind.parts ?? []).flatMap((part) => (part === 'work' ? [] : [[part, parts[part] ?? 0]])),
        ),
      };
      const isEmpty = Object.values(holds).every((count) => count === 0);
      const isOver = kind.fields === 'all' && deletions.some((one) => one.kind === kind.id);
      if (isEmpty || (isOver && holds['fields'] === 0)) return [];
      return [
        {
          kind,
          periods: this.forms.periodsOf(kind),
          facts: { ...facts, chosenMonths, keptUntil: keptUntil.get(keyOf(kind.id, outline.id)) ?? null },
          version: versionOf(kind, contents),
          incidentId: outline.id,
          reference: outline.reference,
          month: null,
          holds,
        },
      ];
    });
  }

  /** Which fields a kind has deleted. */
  isOf({ fields }: RetentionKind): (field: { section: string; path: string }) => boolean {
    if (fields === 'all') return () => true;
    const kinds = new Set(fields);
    return ({ section, path }) => kinds.has(this.handOver.classify(section, path) ?? '');
  }
}

function sectionOf<T extends object>({ sections }: IncidentContents, name: string): Partial<T> {
  return (sections.get(name) ?? {}) as Partial<T>;
}

function filesOf(contents: IncidentContents): number {
  const { files = [] } = sectionOf<EvidenceSection>(contents, 'evidence');
  return files.filter(({ withdrawn }) => withdrawn === undefined).length;
}

/** Drafts are no part of the record, and move no version of it. */
function versionOf({ parts }: RetentionKind, { outline, drafts }: IncidentContents): number {
  const saved = parts?.includes('drafts') === true && drafts.lastAt !== null ? Date.parse(drafts.lastAt) : 0;
  return outline.version + saved;
}
