import type { AdoptedRules, HouseRule } from '../../../shared/follow-up/house-rule.js';
import '../lists/lists.css';
import { tellDay } from '../lists/tell-day.js';
import { Fold } from '../look/fold.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { houseRules as say } from '../words/en/house-rules.js';
import { AdoptForm } from './adopt-form.js';
import { type HouseRulesAnswer, standingOf, tellRule } from './house-rules-answer.js';

interface AdoptedLogProps {
  readonly answer: HouseRulesAnswer;
  /** Told of a correction; left out where whoever is there may not make one. */
  readonly onDone?: () => void;
}

/** Every entry, the last written first, each with its rules and the way to correct it. */
export function AdoptedLog({ answer, onDone }: AdoptedLogProps) {
  const { adopted, offered } = answer;
  return (
    <Section title={say.all}>
      <p class="quiet">{say.allLead}</p>
      <ol class="log">
        {adopted.toReversed().map((entry) => (
          <li key={entry.id}>
            <p>
              <strong>{say.standing[standingOf(entry, answer)]}</strong>{' '}
              {say.from(entry.document, tellDay(entry.adoptedOn))}
            </p>
            <p class="quiet">{say.by(entry.person, tellInstant(entry.recordedAt))}</p>
            <RuleLines rules={entry.rules} offered={offered} />
            {onDone !== undefined && standingOf(entry, answer) !== 'corrected' && (
              <Fold title={say.correct(entry.document)} key={adopted.length}>
                {() => <AdoptForm kind="correct" offered={offered} first={entry} onDone={onDone} />}
              </Fold>
            )}
          </li>
        ))}
      </ol>
    </Section>
  );
}

export function RuleLines({
  rules,
  offered,
}: {
  rules: AdoptedRules['rules'];
  offered: readonly HouseRule[];
}) {
  if (rules.length === 0) return <p>{say.takenOut}</p>;
  return (
    <ul>
      {rules.map(({ id, value }) => {
        const rule = offered.find((one) => one.id === id);
        return <li key={id}>{rule === undefined ? id : tellRule(rule, value)}</li>;
      })}
    </ul>
  );
}
