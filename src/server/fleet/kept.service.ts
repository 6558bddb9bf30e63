import { readPageQuery, type Page } from '../../../shared/wire/page-query.dto.js';
import { membersOf } from '../../../shared/wire/record-members.js';
import { FleetQueryDto } from '../../../shared/wire/fleet-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { Clock } from '../platform/clock.js';
import type { CreateOnce } from '../platform/database/create-once.js';
import { DatabaseError } from '../platform/database/database-errors.js';
import type { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { assertFresh, type Versioned } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { byOf, shownBy } from './by-of.js';
import type { KeptVersionRow } from './database/kept-version.row.js';
import { KeptThings } from './database/kept-things.js';
import type { KeptRow } from './database/kept.row.js';
import type { KeptKind } from './kept-kind.js';
import { nameKey } from './name-key.js';

export interface KeptParts {
  readonly unitOfWork: UnitOfWork;
  readonly createOnce: CreateOnce;
  readonly clock: Clock;
}

/** A thing as it is shown: what people sent, without what they left out, and what follows from it. */
export type Shown = Versioned & { readonly id: string };

/** Craft, stations, places or policies: listed, read, added and changed, every version kept. */
export class KeptService<Details extends object, Row extends KeptRow> {
  readonly things: KeptThings<Row>;
  private readonly members: readonly string[];

  constructor(
    private readonly kind: KeptKind<Details, Row>,
    private readonly parts: KeptParts,
  ) {
    this.things = new KeptThings(parts.unitOfWork, kind.kind, kind.row);
    this.members = [...membersOf(kind.shape).keys()];
  }

  async list(query: unknown): Promise<Page<object>> {
    const asked = readInput(readPageQuery(query, FleetQueryDto), 'query');
    const request = pageRequest(asked);
    const rows = await this.things.page(request, asked.retired === 'yes');
    const { items, next } = pageOf(rows, request, ({ sortKey, id }) => ({ sort: sortKey, id }));
    return { items: items.map((row) => ({ ...this.show(row), ...this.kind.listed?.(row) })), next };
  }

  async read(id: string): Promise<Shown> {
    return this.show(await this.found(id));
  }

  async create(body: unknown, idempotencyKey: string | undefined, actor: Actor): Promise<Shown> {
    const details = readInput(this.kind.read(body));
    const request = { operation: this.kind.kind, key: readIdempotencyKey(idempotencyKey), body };
    const { id } = await this.namingOnce(() =>
      this.parts.createOnce.run(request, async (newId) => {
        await this.assertReferences(details);
        const row = { ...this.columnsOf(details), ...this.kind.fresh, id: newId, version: 1 } as Row;
        await this.things.add(row, details, byOf(actor, this.parts.clock.now()));
      }),
    );
    return this.read(id);
  }

  /** Puts new details in the place of the present ones; sending the same again changes nothing. */
  replace(id: string, body: unknown, ifMatch: string | undefined, actor: Actor): Promise<Shown> {
    const details = readInput(this.kind.read(body));
    return this.namingOnce(() =>
      this.parts.unitOfWork.run(async () => {
        const before = await this.found(id);
        assertFresh(ifMatch, this.show(before), details);
        await this.assertReferences(details);
        const row = { ...before, ...this.columnsOf(details), version: before.version + 1 };
        if (same(this.detailsOf(before), this.detailsOf(row))) return this.show(before);
        await this.things.change(row, details, byOf(actor, this.parts.clock.now()));
        return this.show(row);
      }),
    );
  }

  /** Every version with who entered it, the newest first. */
  async versions(id: string, query: unknown): Promise<Page<object>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    await this.found(id);
    const rows = await this.things.versions(id, request);
    const { items, next } = pageOf(rows, request, (row) => ({ sort: String(row.version), id: row.id }));
    const show = (row: KeptVersionRow): object => ({
      version: row.version,
      details: row.details,
      ...shownBy(row),
    });
    return { items: items.map(show), next };
  }

  show(row: Row): Shown {
    return { id: row.id, version: row.version, ...this.detailsOf(row), ...this.kind.beside?.(row) };
  }

  private async found(id: string): Promise<Row> {
    return (await this.things.find(id)) ?? refuse(404, `There is no such ${this.kind.kind}.`);
  }

  private columnsOf(details: Details): Partial<Row> {
    const given = details as Record<string, unknown>;
    return {
      ...Object.fromEntries(this.members.map((name) => [name, given[name] ?? null])),
      ...this.kind.derived?.(details),
      sortKey: nameKey(this.kind.nameOf(details)),
    } as Partial<Row>;
  }

  /** As it was sent: what was left out is null in the row and absent here, so that it can be sent back. */
  private detailsOf(row: Row): object {
    const columns = row as unknown as Record<string, unknown>;
    return Object.fromEntries(
      this.members.flatMap((name) => (columns[name] === null ? [] : [[name, columns[name]]])),
    );
  }

  private async assertReferences(details: Details): Promise<void> {
    const { references } = this.kind;
    if (references === undefined) return;
    const named = references.in(details);
    const others = new KeptThings(this.parts.unitOfWork, this.kind.kind, references.to);
    const missing = await others.missing(named.map(({ id }) => id));
    const errors = named
      .filter(({ id }) => missing.has(id))
      .map(({ pointer }) => ({ pointer, detail: 'There is none with this id.' }));
    if (errors.length > 0) readInput({ ok: false, errors });
  }

  private async namingOnce<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      const { uniqueName } = this.kind;
      const taken = error instanceof DatabaseError && error.constraint === uniqueName?.rule;
      if (!taken || uniqueName === undefined) throw error;
      return refuse(409, uniqueName.detail, uniqueName.pointer);
    }
  }
}

function same(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
