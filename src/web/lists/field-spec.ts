interface Shared {
  /** The member of what is sent and shown, such as `unitName`. */
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly required?: boolean;
  readonly unit?: string;
}

export interface SpecOption {
  readonly value: string;
  readonly label: string;
}

/** One field of a form, and of what is shown of the same thing; the service says what is wrong with it. */
export type FieldSpec = Shared &
  (
    | { readonly as: 'line' | 'phone' | 'mail' | 'day' | 'number' | 'password' | 'digits' }
    | { readonly as: 'text'; readonly rows?: number }
    /** Whole cents in what is sent, dollars on the page. */
    | { readonly as: 'dollars' }
    /** A list of words, written with commas between them. */
    | { readonly as: 'words' }
    /** One of many, as a list that drops down; of a few, as `choice`. */
    | { readonly as: 'one'; readonly options: readonly SpecOption[]; readonly none: string }
    | { readonly as: 'choice'; readonly options: readonly SpecOption[] }
    | { readonly as: 'several'; readonly options: readonly SpecOption[]; readonly none: string }
    /** A list of things that have fields themselves; each is told from the others by its `id`. */
    | { readonly as: 'items'; readonly fields: readonly FieldSpec[]; readonly one: string }
  );

/** What stands in the fields of a form: text as it was typed. */
export type Draft = Readonly<Record<string, DraftValue>>;
export type DraftValue = string | readonly string[] | readonly Draft[];

/** A thing as the service shows it, or as it is sent. */
export type Thing = Readonly<Record<string, unknown>>;
