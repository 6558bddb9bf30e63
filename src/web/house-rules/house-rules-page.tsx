import { useEffect, useRef, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { tellDay } from '../lists/tell-day.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { dayIn } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { houseRules as say } from '../words/en/house-rules.js';
import { titles } from '../words/titles.js';
import { AdoptForm } from './adopt-form.js';
import { AdoptedLog, RuleLines } from './adopted-log.js';
import { type HouseRulesAnswer, standingOf } from './house-rules-answer.js';

/** The written rules of the house: what holds today, what will, and all that ever held. */
export default function HouseRulesPage() {
  const { data, error, keptAt, again } = useAsk<HouseRulesAnswer>('/api/house-rules', { keep: true });
  const adopts = useSession().me?.role === 'administrator' && keptAt === null;
  return (
    <Page title={say.title} lead={<p>{say.lead}</p>}>
      <PrintedBy />
      <KeptNote keptAt={keptAt} />
      <p class="links-line unprinted">
        <Link href="/follow-up">{titles.followUp}</Link>
        <PrintButton />
      </p>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data !== undefined && <Rules answer={data} adopts={adopts} />}
    </Page>
  );
}

function Rules({ answer, adopts }: { answer: HouseRulesAnswer; adopts: boolean }) {
  const { offered, adopted, inForce } = answer;
  const [said, setSaid] = useState(false);
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (said) note.current?.focus();
  }, [said, adopted.length]);
  const onDone = (): void => setSaid(true);
  const current = adopted.find(({ id }) => id === inForce);
  const coming = adopted.filter((entry) => standingOf(entry, answer) === 'coming');
  return (
    <>
      <div ref={note} tabIndex={-1}>
        {said && <Note kind="saved">{say.said}</Note>}
      </div>
      <Section title={say.inForce}>
        {current === undefined && (
          <Empty>
            <p>{say.none}</p>
          </Empty>
        )}
        {current?.rules.length === 0 && <p>{say.ended(current.document)}</p>}
        {current !== undefined && current.rules.length > 0 && (
          <>
            <p>{say.from(current.document, tellDay(current.adoptedOn))}</p>
            <RuleLines rules={current.rules} offered={offered} />
          </>
        )}
        {coming.length > 0 && <h3>{say.coming}</h3>}
        {coming.map(({ id, document, adoptedOn, rules }) => (
          <div key={id}>
            <p>{say.from(document, tellDay(adoptedOn))}</p>
            <RuleLines rules={rules} offered={offered} />
          </div>
        ))}
        {adopts ? (
          <Forms key={adopted.length} answer={answer} onDone={onDone} />
        ) : (
          <p class="quiet">{say.owner}</p>
        )}
      </Section>
      {adopted.length > 0 && <AdoptedLog answer={answer} {...(adopts && { onDone })} />}
    </>
  );
}

/** Both forms begin anew with each entry that was written down. */
function Forms({ answer, onDone }: { answer: HouseRulesAnswer; onDone: () => void }) {
  const { offered, adopted, inForce } = answer;
  const rules = adopted.find(({ id }) => id === inForce)?.rules ?? [];
  const first = { adoptedOn: dayIn(), document: '' };
  return (
    <>
      <Fold title={say.adopt}>
        {() => <AdoptForm kind="adopt" offered={offered} first={{ ...first, rules }} onDone={onDone} />}
      </Fold>
      {rules.length > 0 && (
        <Fold title={say.end}>
          {() => <AdoptForm kind="end" offered={offered} first={{ ...first, rules: [] }} onDone={onDone} />}
        </Fold>
      )}
    </>
  );
}
