import type { ShownAid } from '../../../shared/determination/determination.js';
import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import { BASIS_WORDS } from '../../../shared/law/name-law-terms.js';
import { Fold } from '../look/fold.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { reportable } from '../words/reportable.js';
import { ScopeAnswerForm } from './scope-answer-form.js';
import type { Matter } from './use-matter.js';

const say = reportable.aids;

/** Whether it is a reportable occurrence at all: what sources say of it, what is not known, and what people signed. */
export function ScopeAids({ matter, signs }: { matter: Matter; signs: boolean }) {
  const { aids = [], timeZone } = matter.determined.determination;
  if (aids.length === 0) return null;
  return (
    <Section title={say.title}>
      <p class="quiet">{say.lead}</p>
      {aids.map((aid) => (
        <article class="aid" key={`${aid.jurisdiction} ${aid.id}`}>
          <h3>{aid.question}</h3>
          <p>{aid.text}</p>
          <p>
            <strong>{say.notKnown(aid.notKnown)}</strong>
          </p>
          <p class="quiet">
            {say.of(nameJurisdiction(aid.jurisdiction))} {say.source(aid.source, BASIS_WORDS[aid.basis])}
          </p>
          <Answers aid={aid} zone={timeZone} />
          {signs && <Fold title={say.fold}>{() => <ScopeAnswerForm matter={matter} aid={aid} />}</Fold>}
        </article>
      ))}
    </Section>
  );
}

function Answers({ aid: { answers }, zone }: { aid: ShownAid; zone: string }) {
  if (answers.length === 0) return null;
  return (
    <ul>
      {answers.map(({ by, at, answer, reason, jurisdictions }) => (
        <li key={at}>
          {say.answered(by, tellInstant(at, zone), say.answers[answer])}{' '}
          {jurisdictions.map(nameJurisdiction).join(', ')}. {reason}
        </li>
      ))}
    </ul>
  );
}
