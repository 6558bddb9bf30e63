import { Injectable } from '@nestjs/common';
import { buildSection } from '../../../shared/record/build-section.js';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { AmendmentRow, ChangeOpening } from './database/amendment.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import type { IncidentRow, SectionRow } from './database/incident.row.js';
import { SectionWriter } from './section-writer.js';

/** Takes fields out of a section and out of every amendment that wrote them; their commitments stay. */
@Injectable()
export class WithdrawnContent {
  constructor(
    private readonly writer: SectionWriter,
    private readonly amendments: AmendmentsRepository,
  ) {}

  /** Every field of a section that ever stood at the path or below it. */
  async pathsUnder(incidentId: string, section: string, path: string): Promise<string[]> {
    const rows = await this.amendments.ofSection(incidentId, section);
    const written = new Set(rows.flatMap(({ changes }) => changes.map((change) => change.path)));
    return [...written].filter((one) => isUnder(one, path)).sort();
  }

  /**
   * Within `RecordLog.run`.
   * @param left what the section then says; itself without the fields, if not given
   */
  async takeOut(
    incident: IncidentRow,
    before: SectionRow,
    withdrawn: string[],
    reason: string,
    actor: Actor,
    { left, deletion = false }: { left?: JsonObject; deletion?: boolean } = {},
  ): Promise<SectionRow> {
    const rows = await this.amendments.ofSection(incident.id, before.section);
    const gone = new Set(withdrawn);
    await this.forget(rows, gone);
    const document = left ?? without(before.document, gone);
    const kept = latestCommitments(rows, gone);
    return this.writer.amend(incident, before, { document, reason, withdrawn, kept, deletion }, actor);
  }

  private async forget(rows: readonly AmendmentRow[], gone: ReadonlySet<string>): Promise<void> {
    for (const { sequence, changes, openings } of rows) {
      if (!changes.some(({ path }) => gone.has(path))) continue;
      const left = openings.map((opening, index) =>
        gone.has(changes[index]?.path ?? '')
          ? { from: unlessSaid(opening.from), to: unlessSaid(opening.to) }
          : opening,
      );
      await this.amendments.setOpenings(sequence, left);
    }
  }
}

export function isUnder(path: string, top: string): boolean {
  return path === top || path.startsWith(`${top}/`);
}

export function without(document: JsonObject, gone: ReadonlySet<string>): JsonObject {
  return buildSection(new Map([...flattenSection(document)].filter(([path]) => !gone.has(path))));
}

/** That there was nothing is no content. */
function unlessSaid(opening: ChangeOpening['to']): ChangeOpening['to'] {
  return opening?.value === null ? opening : null;
}

function latestCommitments(rows: readonly AmendmentRow[], gone: ReadonlySet<string>): Map<string, string> {
  return new Map(
    rows.flatMap(({ changes }) =>
      changes.filter(({ path }) => gone.has(path)).map(({ path, to }): [string, string] => [path, to]),
    ),
  );
}
