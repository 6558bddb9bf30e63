import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { DefinitionRows, Section } from '../look/section.js';
import { tellClock, tellDay, tellInstant } from '../look/tell-instant.js';
import { closingCount as say } from '../words/closing-count.js';
import type { CountView } from './count-answers.js';
import { CountLinks } from './count-links.js';

/** A count that was signed, and what came of it; each craft that is looked for leads to its sheet. */
export function CountOutcome({ view }: { view: CountView }) {
  const { data } = useAsk<{ items: readonly { id: string; unit: string }[] }>('/api/not-back');
  const { opened = [], markedBack = [], stillToEnd = [] } = view.outcome ?? {};
  const searchOf = (unit: string): string | undefined => data?.items.find((one) => one.unit === unit)?.id;
  const parts = [
    { title: say.outcome.opened, units: opened },
    { title: say.outcome.stillToEnd, units: stillToEnd },
    { title: say.outcome.markedBack, units: markedBack },
  ].filter(({ units }) => units.length > 0);
  return (
    <Page
      title={say.titleOf(tellDay(view.day))}
      lead={say.outcome.signed(tellInstant(view.closedAt ?? ''), view.closedBy ?? '')}
    >
      <PrintedBy />
      {parts.length === 0 && <p>{say.outcome.nothing}</p>}
      {parts.map(({ title, units }) => (
        <Section key={title} title={title}>
          <ul class="links">
            {units.map((unit) => {
              const search = searchOf(unit);
              return (
                <li key={unit}>
                  {search === undefined ? (
                    <span>{unit}</span>
                  ) : (
                    <Link href={`/out-and-back/not-back/${search}`}>{unit}</Link>
                  )}
                </li>
              );
            })}
          </ul>
        </Section>
      ))}
      <Section title={say.outcome.answers}>
        <DefinitionRows
          rows={view.answers.map(({ unitName, answer, where, person = '', at = '' }) => ({
            term: unitName,
            value: where === null ? say[answer] : `${say[answer]}: ${where}`,
            about: `${tellClock(at)}, ${person}`,
          }))}
        />
      </Section>
      <CountLinks />
    </Page>
  );
}
