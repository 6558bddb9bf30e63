import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { faultAt, readOutingRows } from '../../../shared/outing/read-outing-rows.js';
import {
  checkDrafts,
  type OutingDto,
  OutingImportDto,
  readOutingInput,
} from '../../../shared/wire/outing-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { CraftInUse } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { readInput } from '../platform/http/read-input.js';
import { OutingsRepository } from './database/outings.repository.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingSteps } from './outing-steps.js';
import { Outings } from './outings.service.js';
import { readCsv } from './read-csv.js';

/** Lists of craft due back, taken over whole or not at all. */
@Injectable()
export class OutingImports {
  constructor(
    private readonly repository: OutingsRepository,
    private readonly outings: Outings,
    private readonly fleet: OutingFleet,
    private readonly steps: OutingSteps,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 422 with every bad row by row, field and fix */
  async take(body: unknown, key: string | undefined, actor: Actor): Promise<object> {
    const sent = readInput(readOutingInput(OutingImportDto, body));
    const station = sent.stationId === undefined ? null : await this.fleet.station(sent.stationId);
    const clock = this.fleet.clockOf(station);
    const day = sent.day ?? clock.localDate(Date.parse(this.clock.now()));
    const { drafts, errors, ignored } = readOutingRows(readInput(readCsv(sent.csv)), day, clock.zone);
    const checked = checkDrafts(drafts);
    const faults = [...errors, ...(checked.ok ? [] : checked.errors)];
    const rows =
      faults.length === 0 && checked.ok ? checked.value : readInput<never>({ ok: false, errors: faults });
    const id = await this.steps.once({ operation: 'outing-import', key, body }, actor, async (now) => {
      for (const { craft, outing } of await this.withCraft(rows)) {
        await this.repository.note(await this.outings.write(craft, outing, now), actor, now);
      }
      const document = { rows: rows.length, ignored };
      return { subject: 'outing', subjectId: randomUUID(), kind: 'list-taken', document };
    });
    return { id, taken: rows.length, ignored, day, timeZone: clock.zone };
  }

  /** Refuses craft that the fleet does not have, that are out already, or that the list names twice. */
  private async withCraft(rows: readonly { row: number; outing: OutingDto }[]) {
    const out = new Set((await this.repository.out()).map(({ craftId }) => craftId));
    const errors: FieldError[] = [];
    const rowOf = new Map<string, number>();
    const found: { craft: CraftInUse; outing: OutingDto }[] = [];
    for (const { row, outing } of rows) {
      const craft = await this.fleet.named(outing.unit);
      const before = craft === null ? undefined : rowOf.get(craft.id);
      const detail =
        craft === null
          ? 'No craft of the fleet has this name: write it as the list of craft does.'
          : before !== undefined
            ? `Row ${before} has this craft already: keep one of the two.`
            : out.has(craft.id)
              ? 'It is out already: mark it back, or take this row out.'
              : null;
      if (detail !== null) errors.push(faultAt(row, 'unit', detail));
      else if (craft !== null) {
        rowOf.set(craft.id, row);
        found.push({ craft, outing });
      }
    }
    return errors.length > 0 ? readInput<never>({ ok: false, errors }) : found;
  }
}
