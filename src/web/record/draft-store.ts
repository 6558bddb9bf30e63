import { Store } from '../app/store.js';
import { drop, findAll, keep } from '../device/sealed-store.js';
import type { SectionDraft, Source } from './section-draft.js';

/** What is being written on this device, in all sections. */
export const drafts = new Store<readonly SectionDraft[]>([]);

/** False once this device could not keep what was written. */
export const draftsKept = new Store(true);

/** Reads what was being written when the desk was last open. What was written since stays. */
export async function readDrafts(): Promise<void> {
  try {
    const found = await findAll<SectionDraft>('drafts');
    const known = new Set(drafts.value.map(({ id }) => id));
    drafts.set([...drafts.value, ...found.filter(({ id }) => !known.has(id))]);
  } catch (error) {
    console.warn('What was being written could not be read.', error);
    draftsKept.set(false);
  }
}

export function findDraft(id: string): SectionDraft | undefined {
  return drafts.value.find((draft) => draft.id === id);
}

/** Keeps a draft: at once for the page, and as soon as the disk is free for a browser that may be killed. */
export function keepDraft(draft: SectionDraft): void {
  if (draft.source !== undefined) lastSources.set(draft.id, draft.source);
  drafts.set([...drafts.value.filter(({ id }) => id !== draft.id), draft]);
  void writeDown(draft.id);
}

export function dropDraft(id: string): void {
  drafts.set(drafts.value.filter((draft) => draft.id !== id));
  void writeDown(id);
}

const writing = new Set<string>();
const changedSince = new Set<string>();

/** One write at a time for each draft; typing faster than the disk writes the latest. */
async function writeDown(id: string): Promise<void> {
  changedSince.add(id);
  if (writing.has(id)) return;
  writing.add(id);
  try {
    while (changedSince.delete(id)) {
      const draft = findDraft(id);
      await (draft === undefined ? drop('drafts', id) : keep('drafts', id, draft));
    }
    draftsKept.set(true);
  } catch (error) {
    console.warn('What is being written could not be kept on this device.', error);
    draftsKept.set(false);
  } finally {
    writing.delete(id);
  }
}

/** How somebody last knew things in a section, while the page is open: the next answer is most often known in the same way. */
const lastSources = new Map<string, Source>();

export function withLastSource(draft: SectionDraft): SectionDraft {
  const source = lastSources.get(draft.id);
  return source === undefined ? draft : { ...draft, source };
}
