import { useState } from 'preact/hooks';
import type { Outcome } from '../../../shared/determination/determination.js';
import { useAsk } from '../ask/use-ask.js';
import { Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { useSession } from '../session/session.js';
import { decision as say } from '../words/decision.js';
import { Assumed } from './assumed.js';
import { ConductDuties } from './conduct-duties.js';
import { DamageSection } from './damage-section.js';
import { DeterminationHistory } from './determination-history.js';
import { DutyActs } from './duty-acts.js';
import { DutyCard, titleOf } from './duty-card.js';
import { byClock, listQuestions } from './list-questions.js';
import { NotAsked } from './not-asked.js';
import { OtherActs } from './other-acts.js';
import { QuestionList } from './question-list.js';
import { Reopened } from './reopened.js';
import type { DecisionsAnswer, DutyView, FilingsAnswer } from './service-answers.js';
import { ScopeAids } from './scope-aids.js';
import { SignedHistory } from './signed-history.js';
import type { Matter } from './use-matter.js';
import { useWhatIf } from './use-what-if.js';
import { WhatIfSection } from './what-if.js';

/** What was reopened first, then the duties with the questions beside them, what can be done, and what was. */
export function DutiesSheet({ matter }: { matter: Matter }) {
  const role = useSession().me?.role;
  const [sought, setSought] = useState<{ anchor: string; times: number } | null>(null);
  const [said, setSaid] = useState('');
  const whatIf = useWhatIf(matter);
  const path = `/api/incidents/${matter.id}`;
  const signed = useAsk<DecisionsAnswer>(`${path}/decisions`);
  const filings = useAsk<FilingsAnswer>(`${path}/filings`);
  const { timeZone } = matter.determined.determination;
  const duties = [...matter.duties].sort(byClock);
  const questions = listQuestions(duties);
  const signs = role === 'manager' || role === 'administrator';
  return (
    <>
      <Reopened duties={duties} signed={signed.data} filings={filings.data} zone={timeZone} />
      <Counts duties={duties} />
      {said !== '' && <Note kind="saved">{said}</Note>}
      <div class="sheet">
        <Section title={say.duties}>
          {duties.length === 0 && <p>{say.noDuties}</p>}
          {duties.map((view) => (
            <DutyCard
              key={titleOf(view)}
              matter={matter}
              view={view}
              questions={questions}
              onSeek={(anchor) => setSought({ anchor, times: (sought?.times ?? 0) + 1 })}
            >
              <DutyActs matter={matter} view={view} signs={signs} onSigned={setSaid} />
            </DutyCard>
          ))}
        </Section>
        <div class="margin">
          <QuestionList matter={matter} questions={questions} whatIf={whatIf} sought={sought} />
          <NotAsked matter={matter} whatIf={whatIf} asked={questions} />
          <Assumed matter={matter} />
          <WhatIfSection matter={matter} whatIf={whatIf} />
          <DamageSection matter={matter} />
        </div>
      </div>
      <ConductDuties matter={matter} />
      <ScopeAids matter={matter} signs={signs} />
      {role !== undefined && role !== 'counsel' && <OtherActs matter={matter} signs={signs} />}
      <SignedHistory id={matter.id} zone={timeZone} />
      <DeterminationHistory id={matter.id} zone={timeZone} />
    </>
  );
}

const ORDER: readonly Outcome[] = ['undetermined', 'required', 'not-required'];

/** How many of each, what cannot be told first. */
function Counts({ duties }: { duties: readonly DutyView[] }) {
  const counted = ORDER.map((outcome) => ({
    outcome,
    count: duties.filter((view) => view.outcome === outcome).length,
  })).filter(({ count }) => count > 0);
  return (
    <ul class="counts">
      {counted.map(({ outcome, count }) => (
        <li key={outcome}>
          <Sign of={outcome} />
          {say.count(say.outcomes[outcome], count)}
        </li>
      ))}
    </ul>
  );
}
