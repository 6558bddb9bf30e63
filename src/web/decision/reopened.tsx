import type { Reopening } from '../../../shared/decision/decision.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { titleOf } from './duty-card.js';
import type { DecisionsAnswer, DutyView, FilingsAnswer } from './service-answers.js';

interface ReopenedProps {
  readonly duties: readonly DutyView[];
  readonly signed: DecisionsAnswer | undefined;
  readonly filings: FilingsAnswer | undefined;
  readonly zone: string;
}

/** What no longer stands as it was signed or filed, and what changed: first on the page. */
export function Reopened({ duties, signed, filings, zone }: ReopenedProps) {
  const reopened = duties.filter(({ reopenings }) => reopenings.length > 0);
  if (reopened.length === 0) return null;
  return (
    <Section title={say.reopened.title}>
      {reopened.map((view) => (
        <article class="reopened" key={titleOf(view)}>
          <h3>{titleOf(view)}</h3>
          {view.state === 'supplement-due' && <p class="supplement">{say.reopened.supplement}</p>}
          <ul>
            {view.reopenings.flatMap(({ id, at, changes }) =>
              changes.map(({ text }) => (
                <li key={`${id} ${text}`}>
                  {text} <span class="quiet">{tellInstant(at, zone)}</span>
                </li>
              )),
            )}
          </ul>
          <Before reopening={view.reopenings.at(-1)} signed={signed} filings={filings} zone={zone} />
          <p>{say.reopened.now}</p>
        </article>
      ))}
    </Section>
  );
}

type BeforeProps = Pick<ReopenedProps, 'signed' | 'filings' | 'zone'> & { reopening: Reopening | undefined };

function Before({ reopening, signed, filings, zone }: BeforeProps) {
  const decision = signed?.items.find(({ id }) => id === reopening?.decision);
  const filing = filings?.items.find(({ id }) => id === reopening?.filing);
  if (decision === undefined && filing === undefined) return null;
  return (
    <p class="quiet">
      {decision !== undefined &&
        say.reopened.signedThen(say.sign.kinds[decision.kind], tellInstant(decision.signedAt, zone))}{' '}
      {filing !== undefined && say.reopened.filedThen(tellInstant(filing.at, zone))}
    </p>
  );
}
