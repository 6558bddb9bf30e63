import type { FieldError } from '../../../shared/kernel/field-error.js';
import type { Reading } from '../../../shared/kernel/reading.js';
import type { KeptKind as KindName } from './database/kept-things.js';
import type { KeptRow } from './database/kept.row.js';

/** A place in what was sent that names another thing by its id. */
export interface Reference {
  readonly pointer: string;
  readonly id: string;
}

/** What tells craft, stations, places and policies from each other; the rest they share. */
export interface KeptKind<Details extends object, Row extends KeptRow> {
  readonly kind: KindName;
  readonly path: string;
  readonly row: new () => Row;
  /** Members as people send them; each is a column of the row. */
  readonly shape: new () => Details;
  readonly read: (input: unknown) => Reading<Details>;
  readonly nameOf: (details: Details) => string;
  /** Columns that follow from the details. */
  readonly derived?: (details: Details) => Partial<Row>;
  /** Columns of a new row that no details change. */
  readonly fresh?: Partial<Row>;
  /** What is shown beside the details: readings and remarks. */
  readonly beside?: (row: Row) => object;
  /** What is shown in lists alone, as it changes without a new version. */
  readonly listed?: (row: Row) => object;
  readonly references?: { readonly in: (details: Details) => Reference[]; readonly to: new () => KeptRow };
  /** The rule of the table that a second one of the same name breaks. */
  readonly uniqueName?: { readonly rule: string } & FieldError;
}
