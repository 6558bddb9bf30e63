import type { Stamp } from '../../../shared/call/stamp.js';
import type { Answers, CallDraft, Entry, Question, StampName, Step } from './call-draft.js';
import { STEPS } from './call-draft.js';

/** A call at its first touch. */
export function newDraft(
  id: string,
  { entry, fromPaper, takenBy }: { entry: Entry; fromPaper: boolean; takenBy: string | null },
  taken: Stamp,
): CallDraft {
  const nothing = {
    answers: {},
    passed: [],
    stamps: {},
    lines: [],
    photographs: 0,

    parts: {},
  };
  return { id, entry, fromPaper, taken, takenBy, ...nothing };
}

export function withAnswer<Name extends Question>(
  draft: CallDraft,
  question: Name,
  value: NonNullable<Answers[Name]>['value'],
  at: Stamp,
): CallDraft {
  return { ...draft, answers: { ...draft.answers, [question]: { value, at: at.at } } };
}

export function withPassed(draft: CallDraft, step: Step): CallDraft {
  return draft.passed.includes(step) ? draft : { ...draft, passed: [...draft.passed, step] };
}

/** Asks a question again. */
export function withoutPassed(draft: CallDraft, step: Step): CallDraft {
  return { ...draft, passed: draft.passed.filter((one) => one !== step) };
}

/** Adds a line to the timeline; the same words twice in a row are one. */
export function withLine(draft: CallDraft, what: string, at: Stamp): CallDraft {
  if (draft.lines.at(-1)?.what === what) return draft;
  return { ...draft, lines: [...draft.lines, { id: `call-${draft.lines.length + 1}`, at, what }] };
}

export function withStamp(draft: CallDraft, name: StampName, at: Stamp): CallDraft {
  return { ...draft, stamps: { ...draft.stamps, [name]: at } };
}

export function withoutStamp(draft: CallDraft, name: StampName): CallDraft {
  const { [name]: gone, ...stamps } = draft.stamps;
  void gone;
  return { ...draft, stamps };
}

/** What is asked now; null when everything was. */
export function stepOf(draft: CallDraft | null, entry: Entry): Step | null {
  return STEPS[entry].find((step) => draft === null || !draft.passed.includes(step)) ?? null;
}
