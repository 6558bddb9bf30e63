import { buildSection } from './build-section.js';
import type { JsonObject, JsonValue } from './json-value.js';

/**
 * What a withdrawal of a reason's words names in place of a path, which begins with a slash.
 * @example reasonOf(12) // 'reason/12'
 */
export function reasonOf(sequence: number): string {
  return `reason/${sequence}`;
}

/** An amendment as it is read back: what each field became, or null where that has been withdrawn since. */
export interface PastAmendment {
  readonly sequence: number;
  readonly section: string;
  readonly changes: readonly { readonly path: string; readonly to: { readonly value: JsonValue } | null }[];
}

export interface PastSection {
  readonly document: JsonObject;
  /** How many amendments it had. */
  readonly version: number;
  readonly finished: boolean;
  readonly latestAmendment: number;
  /** Paths whose content was withdrawn later, so that it cannot be shown any more. */
  readonly withdrawn: readonly string[];
}

/**
 * An amendment also says things of itself under names that no pointer has, as a pointer begins with a slash: who held
 * the phone, that the section was finished, which paths it withdraws.
 */
export const ASIDE = { person: 'person', finished: 'finished', withdrawn: 'withdrawn' } as const;

/**
 * The sections as the amendments left them, in the order in which they are given. Cut the list at a moment, and it is
 * the record as of that moment.
 * @example
 * replayAmendments([{ sequence: 1, section: 'call', changes: [{ path: '/said', to: { value: 'help' } }] }])
 * // Map { 'call' => { document: { said: 'help' }, version: 1, finished: false, latestAmendment: 1, withdrawn: [] } }
 */
export function replayAmendments(amendments: Iterable<PastAmendment>): Map<string, PastSection> {
  const states = new Map<string, State>();
  for (const amendment of amendments) {
    const state = states.get(amendment.section) ?? newState();
    states.set(amendment.section, state);
    apply(amendment, state);
  }
  return new Map(
    [...states].map(([section, { fields, withdrawn, ...state }]) => [
      section,
      { ...state, document: buildSection(fields), withdrawn: [...withdrawn].sort() },
    ]),
  );
}

interface State {
  readonly fields: Map<string, JsonValue>;
  readonly withdrawn: Set<string>;
  version: number;
  finished: boolean;
  latestAmendment: number;
}

function newState(): State {
  return { fields: new Map(), withdrawn: new Set(), version: 0, finished: false, latestAmendment: 0 };
}

function apply({ sequence, changes }: PastAmendment, state: State): void {
  state.version += 1;
  state.latestAmendment = sequence;
  for (const { path, to } of changes) {
    if (path === ASIDE.finished) state.finished = true;
    if (!path.startsWith('/')) continue;
    state.fields.delete(path);
    state.withdrawn.delete(path);
    if (to === null) state.withdrawn.add(path);
    else if (to.value !== null) state.fields.set(path, to.value);
  }
}
