import type { SectionName } from '../record/incident-record.js';

/** How the words of a form were come by. */
export type FormBasis = 'read' | 'read-old-text' | 'memory';

/** What a part of an item is asked of; `paper` where nothing in the record holds it. */
export type AskedOf =
  | 'record'
  | 'every-craft'
  | 'this-craft'
  | 'this-operator'
  | 'every-operator'
  | 'on-the-water'
  | 'hurt'
  | 'injured'
  | 'dead'
  | 'damage'
  | 'other-property'
  | 'witnesses'
  | 'responders'
  | 'opinion'
  | 'submitter'
  | 'paper';

/** Lists of words in which slugs are told. */
export type TermList =
  | 'words'
  | 'states'
  | 'vessel-types'
  | 'hull-materials'
  | 'propulsions'
  | 'engine-drives'
  | 'fuels'
  | 'casualty-types'
  | 'treatments';

export interface ReportPart {
  readonly label: string;
  readonly of: AskedOf;
  /** With `record`: the section whose members the fields are. */
  readonly section?: SectionName;
  /** Any of them answers, and all that are there are told. A slash goes one level down. */
  readonly fields: readonly string[];
  /** Members of the craft in the fleet, where the record says nothing. */
  readonly fleet?: readonly string[];
  /** Of a number that the fleet keeps. */
  readonly unit?: 'ft' | 'hp';
  readonly terms?: TermList;
  readonly band?: 'water' | 'wind';
  /** Told where it is there; nothing is missing where it is not. */
  readonly optional?: true;
  /** What another field says in its place. */
  readonly unless?: readonly {
    readonly field: string;
    readonly value?: string;
    readonly state: 'answered' | 'unknown';
    readonly text: string;
  }[];
}

export interface ReportItem {
  readonly number: number;
  readonly citation: string;
  readonly words: string;
  readonly basis: FormBasis;
  /** In the report of a customer who drove this is theirs to write: we fill in none of it. */
  readonly operatorWrites?: true;
  readonly parts: readonly ReportPart[];
}

export interface StateItems {
  /** USPS code. */
  readonly state: string;
  readonly source: string;
  readonly basis: FormBasis;
  readonly items: readonly {
    readonly id: string;
    readonly words: string;
    readonly parts: readonly ReportPart[];
  }[];
}

export interface Band {
  readonly label: string;
  /** As the form prints its limits. */
  readonly words: string;
  readonly from: number;
  readonly to?: number;
  /** Limits are included, unless these say not. */
  readonly fromIncluded?: boolean;
  readonly toIncluded?: boolean;
}

export interface BandScale {
  readonly unit: 'ft' | 'mph';
  /** The form knows whole numbers alone. */
  readonly whole?: true;
  readonly basis: FormBasis;
  readonly bands: readonly Band[];
}

export interface FormBands {
  /** USPS code, or US. */
  readonly jurisdiction: string;
  readonly form: string;
  readonly water: BandScale;
  readonly wind: BandScale;
}

/** Everything of `forms/report/`. */
export interface ReportForm {
  readonly citation: string;
  readonly readOn: string;
  readonly doubts: readonly string[];
  readonly items: readonly ReportItem[];
  readonly states: readonly StateItems[];
  readonly bands: readonly FormBands[];
}
