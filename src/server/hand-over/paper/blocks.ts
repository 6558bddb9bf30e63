import type { JsonValue } from '../../../../shared/record/json-value.js';
import type { ReadScene } from '../../../../shared/scene/read-scene.js';
import type { Position } from '../../../../shared/record/time-and-place.js';

/** One line about one thing: what it is, what is recorded, how that is known. */
export interface PaperRow {
  /** The thing within a thing that the row is of, such as `Injury 1`: said once above its rows. */
  readonly under?: string;
  readonly label: string;
  readonly text: string;
  readonly known?: string;
  /** The field of the record that is told, for whoever sorts and sums: its path, where it has one, and what stands there. */
  readonly field?: { readonly path: string; readonly value: JsonValue; readonly unit?: string | undefined };
}

export interface PaperColumn {
  readonly title: string;
  /** Share of the width of the page; those of a table make 1. */
  readonly share: number;
  readonly align?: 'right';
}

/** A picture made small enough for paper: JPEG, with its pixels. */
export interface PaperImage {
  readonly bytes: Buffer;
  readonly width: number;
  readonly height: number;
}

/** A piece of the paper, as data: what is written on it is settled before anything is drawn. */
export type Block =
  /** Begins a part of the file, which stands in the contents. */
  | { readonly kind: 'part'; readonly title: string; readonly newPage?: boolean }
  | { readonly kind: 'heading'; readonly title: string }
  | {
      readonly kind: 'rows';
      readonly rows: readonly PaperRow[];
      /** The heading that they stand under. */
      readonly of?: string;
    }
  | {
      readonly kind: 'table';
      readonly columns: readonly PaperColumn[];
      readonly rows: readonly (readonly string[])[];
      /** Set under a rule of its own. */
      readonly total?: readonly string[];
    }
  | { readonly kind: 'text'; readonly text: string; readonly strong?: boolean }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'picture';
      readonly title: string;
      readonly caption: string;
      readonly lines: readonly string[];
      /** Absent where it cannot be shown on paper. */
      readonly content?: PaperImage;
    }
  | { readonly kind: 'map'; readonly position: Position; readonly lines: readonly string[] }
  | { readonly kind: 'sketch'; readonly scene: ReadScene; readonly lines: readonly string[] }
  /** Lines to be filled in by hand. */
  | { readonly kind: 'sign'; readonly labels: readonly string[] };
