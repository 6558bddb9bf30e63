import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import type { Stamp } from '../../../shared/call/stamp.js';
import { useStore } from '../app/store.js';
import { pressedNow } from '../device/pressed-now.js';
import { session } from '../session/session-state.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { Answers, CallDraft, Entry, Question, StampName, Step } from './call-draft.js';
import { calls, changeCall, readCalls } from './call-store.js';
import {
  newDraft,
  withAnswer,
  withLine,
  withoutPassed,
  withoutStamp,
  withPassed,
  withStamp,
} from './change-draft.js';
import { openCall, syncSoon } from './sync-call.js';

type Change = (draft: CallDraft, now: Stamp) => CallDraft;

/** What the parts of the call page do to the call. */
export interface CallHands {
  readonly draft: CallDraft | null;
  readonly entry: Entry;
  /** Keeps an answer; with a line for the timeline where it is final. */
  readonly answer: <Name extends Question>(
    question: Name,
    value: NonNullable<Answers[Name]>['value'],
    line?: string,
  ) => void;
  readonly pass: (step: Step, line?: string) => void;
  readonly askAgain: (step: Step) => void;
  readonly stamp: (name: StampName, line: string) => void;
  readonly takeBack: (name: StampName, line: string) => void;
  readonly change: (change: Change) => Promise<CallDraft>;
}

const newUuid = (): string => crypto.randomUUID();

/** The call of an address; without an id a new one, which begins to exist, and is kept, with the first touch. */
export function useCall(id: string | undefined, entry: Entry, fromPaper: boolean): CallHands {
  const all = useStore(calls);
  const [, go] = useLocation();
  const [newId, setNewId] = useState(newUuid);
  useEffect(() => void readCalls(), []);
  // The next new call is another one.
  useEffect(() => {
    if (id !== undefined) setNewId(newUuid());
  }, [id]);
  const draft = all.find((one) => one.id === (id ?? newId)) ?? null;

  const change = async (wanted: Change): Promise<CallDraft> => {
    const now = pressedNow();
    const changed = await changeCall(
      id ?? newId,
      (before) => wanted(before, now),
      () => firstTouch(now),
    );
    if (id === undefined) go(`/call/${newId}`, { replace: true });
    await openCall(changed.id);
    syncSoon(changed.id);
    return changed;
  };
  const firstTouch = (now: Stamp): CallDraft => {
    const takenBy = session.value.me?.name ?? null;
    const first = newDraft(
      newId,
      { entry, fromPaper, takenBy },
      fromPaper ? { ...now, how: 'entered' } : now,
    );
    return fromPaper ? withLine(first, callInRecord.paper, now) : first;
  };
  const lined = (line: string | undefined, now: Stamp) => (draft: CallDraft) =>
    line === undefined ? draft : withLine(draft, line, now);

  return {
    draft,
    entry: draft?.entry ?? entry,
    change,
    answer: (question, value, line) =>
      void change((before, now) => lined(line, now)(withAnswer(before, question, value, now))),
    pass: (step, line) => void change((before, now) => lined(line, now)(withPassed(before, step))),
    askAgain: (step) => void change((before) => withoutPassed(before, step)),
    stamp: (name, line) => void change((before, now) => withLine(withStamp(before, name, now), line, now)),
    takeBack: (name, line) => void change((before, now) => withLine(withoutStamp(before, name), line, now)),
  };
}
