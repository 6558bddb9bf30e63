import { useSearch } from 'wouter-preact';
import './call.css';
import type { PageProps } from '../app/page-route.js';
import { StorageNote } from '../device/storage-note.js';
import { CautionStrip } from '../look/caution-strip.js';
import { Page } from '../look/page.js';
import { tellClock } from '../look/tell-instant.js';
import { call as say } from '../words/call.js';
import { AfterCall } from './after-call.js';
import { AskStep } from './ask-step.js';
import type { Entry } from './call-draft.js';
import { CallState } from './call-state.js';
import { stepOf } from './change-draft.js';
import { OtherWays } from './other-ways.js';
import { ReadOut } from './read-out.js';
import { SaidSoFar } from './said-so-far.js';
import { Stamps } from './stamps.js';
import { useCall } from './use-call.js';
import { useChoices } from './use-choices.js';
import { wordPair } from './word-pair.js';

/** The first notice that somebody needs help: one question at a time, everything said so far above it. */
export default function CallPage({ params }: PageProps) {
  const { entry, fromPaper } = readEntry(useSearch());
  const hands = useCall(params['id'], entry, fromPaper);
  const choices = useChoices();
  const { draft } = hands;
  const step = stepOf(draft, hands.entry);
  const isNow = hands.entry === 'now';
  return (
    <Page
      title={say.title[hands.entry]}
      lead={
        draft === null
          ? say.begin
          : say.lead(tellClock(draft.taken.at), draft.reference ?? `“${wordPair(draft.id)}”`)
      }
      {...(isNow && {
        strip: <CautionStrip />,
        actions: (
          <>
            <Stamps hands={hands} />
            {draft !== null && <ReadOut draft={draft} choices={choices} />}
          </>
        ),
      })}
    >
      {draft !== null && <CallState draft={draft} />}
      {draft !== null && <SaidSoFar hands={hands} draft={draft} choices={choices} />}
      {step === null ? (
        <AfterCall hands={hands} />
      ) : (
        <AskStep key={step} step={step} hands={hands} choices={choices} />
      )}
      {draft !== null && <StorageNote />}
      <OtherWays current={draft?.id ?? null} />
    </Page>
  );
}

const ENTRIES: readonly Entry[] = ['now', 'late', 'check-in'];

function readEntry(search: string): { entry: Entry; fromPaper: boolean } {
  const as = new URLSearchParams(search).get('as');
  return { entry: ENTRIES.find((one) => one === as) ?? 'now', fromPaper: as === 'paper' };
}
