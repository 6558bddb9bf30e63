import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { CraftSection } from '../../../shared/record/craft-section.js';
import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';
import type { WrittenSection } from './asked-first.js';
import type { RefTarget } from './control-of.js';
import type { Source } from './section-draft.js';

/** One thing that a field may name: an item of a list, or what the business lists. */
export interface Choosable {
  readonly id: string;
  readonly name: string;
}

/** A section while it is written: what every field of the form needs. */
export interface SectionEditor {
  readonly section: WrittenSection;
  readonly document: JsonObject;
  /** As it stands in the record: words that are not there yet are a first save. */
  readonly base: JsonObject;
  readonly timeZone: string;
  readonly source: Source | undefined;
  readonly readOnly: boolean;
  /** On a shared device: nothing that stands in the record is shown, and nothing of it can be chosen. */
  readonly addsOnly: boolean;
  readonly craft: CraftSection;
  readonly choices: Readonly<Record<RefTarget, readonly Choosable[]>>;
  /** Paths that the official report lacks. */
  readonly lacking: ReadonlySet<string>;
  /** What is wrong at a path or below it; null where nothing is. */
  readonly faultAt: (path: string) => string | null;
  readonly set: (path: string, value: JsonValue | undefined) => void;
}

const Editor = createContext<SectionEditor | null>(null);

export const EditorProvider = Editor.Provider;

/** The section that a field is a part of. */
export function useEditor(): SectionEditor {
  const editor = useContext(Editor);
  if (editor === null) throw new Error('A field of the record stands outside of a section.');
  return editor;
}
