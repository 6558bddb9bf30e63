import type { Duty } from '../../../shared/determination/determination.js';
import { BASIS_SENTENCES, TRUTH_WORDS } from '../../../shared/determination/duty-words.js';
import { Link } from 'wouter-preact';
import { nameDate } from '../../../shared/law/name-law-terms.js';
import { packCode } from '../../../shared/law/pack-code.js';
import { Sign } from '../look/sign.js';
import { decision as say } from '../words/decision.js';
import { lawOf, type Matter } from './use-matter.js';

/** Every point of the law that was looked at, how well that law is known, and what is doubtful about it. Open on paper. */
export function DutyReasons({ matter, duty }: { matter: Matter; duty: Duty }) {
  const { reasons, citations, packBasis } = duty;
  const pack = lawOf(matter, duty);
  return (
    <>
      <details>
        <summary>{say.why(reasons.length)}</summary>
        <ul class="reasons">
          {reasons.map(({ value, text, citation }) => (
            <li key={`${value} ${text} ${citation ?? ''}`}>
              <span class="value">
                <Sign of={value} />
                {TRUTH_WORDS[value]}
              </span>
              <span>
                {text} {citation !== undefined && <cite>{citation}</cite>}
              </span>
            </li>
          ))}
        </ul>
      </details>
      <details>
        <summary>{say.law}</summary>
        <p>
          <strong>{BASIS_SENTENCES[packBasis]}</strong>{' '}
          {pack !== undefined && say.readOn(nameDate(pack.readOn))} {citations.join('; ')}
        </p>
        {pack !== undefined && (
          <p class="links-line unprinted">
            <Link href={`/law/${packCode(pack)}`}>{say.wholeLaw(pack.name)}</Link>
          </p>
        )}
        {pack !== undefined && pack.doubts.length > 0 && (
          <>
            <h4>{say.doubts}</h4>
            <ul>
              {pack.doubts.map((doubt) => (
                <li key={doubt}>{doubt}</li>
              ))}
            </ul>
          </>
        )}
      </details>
    </>
  );
}
