import { Link } from 'wouter-preact';
import type { Observation } from '../../../shared/follow-up/house-rule.js';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign, type SignOf } from '../look/sign.js';
import { followUp as say } from '../words/follow-up.js';
import type { ObservationsAnswer } from './service-answers.js';

const SIGNS: Readonly<Record<Observation['stands'], SignOf>> = {
  'as-adopted': 'yes',
  differs: 'no',
  'not-known': 'unknown',
};

/** What the record shows beside the written rules of the day; for managers alone, and kept nowhere. */
export function HouseRules({ incident }: { incident: string }) {
  const { data, error, again } = useAsk<ObservationsAnswer>(
    `/api/incidents/${incident}/house-rule-observations`,
  );
  return (
    <Section title={say.rules.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.rules === null && <p>{say.rules.none}</p>}
      {data !== undefined && data.rules !== null && (
        <>
          <p class="quiet">{say.rules.lead}</p>
          <p>{say.rules.adopted(data.rules.document, data.rules.adoptedOn)}</p>
          {data.items.length === 0 && <p>{say.rules.nothing}</p>}
          <ul class="against">
            {data.items.map(({ rule, stands, text }) => (
              <li key={`${rule} ${text}`}>
                <Sign of={SIGNS[stands]} />
                <strong>{say.rules.stands[stands]}</strong> <span lang="en">{text}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <p class="links-line unprinted">
        <Link href="/house-rules">{say.rules.toRules}</Link>
      </p>
    </Section>
  );
}
