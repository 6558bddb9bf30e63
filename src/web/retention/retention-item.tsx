import { Link } from 'wouter-preact';
import type { RetentionLine, ToldPeriod } from '../../../shared/retention/retention-line.js';
import { tellDay } from '../lists/tell-day.js';
import { Fold } from '../look/fold.js';
import { DefinitionRows } from '../look/section.js';
import { retention as say } from '../words/en/retention.js';
import { DecideForm } from './decide-form.js';
import { type Kind, nameOf, tellHolds, tellKept, tellSource } from './retention-answer.js';

interface ItemProps {
  readonly line: RetentionLine;
  readonly kinds: readonly Kind[];
  readonly onDone: (words: string) => void;
  /** Asks for the list anew, where somebody changed what it shows. */
  readonly again: () => void;
}

/** One thing to decide about: how long, why, what stops it, what is missing. */
export function RetentionItem({ line, kinds, ...rest }: ItemProps) {
  const { incidentId, periods, stops, missing, keptUntil, state, version } = line;
  const name = nameOf(line, kinds);
  const kind = kinds.find(({ id }) => id === line.kind);
  const [longest] = periods;
  const rows = [
    { term: say.there, value: tellHolds(line.holds) },
    ...(longest === undefined
      ? []
      : [{ term: say.longest, value: longest.reason, about: tellSource(longest) }]),
    ...(stops.length === 0
      ? []
      : [{ term: say.stops, value: <Words words={stops.map(({ words }) => words)} /> }]),
    ...(missing.length === 0 ? [] : [{ term: say.missing, value: <Words words={missing} /> }]),
  ];
  return (
    <article aria-label={name}>
      <h3>{name}</h3>
      <p>
        <strong>{tellKept(line)}</strong>
        {keptUntil !== null && ` ${say.keptUntil(tellDay(keptUntil))}`}
      </p>
      <DefinitionRows rows={rows} />
      {incidentId !== null && (
        <p class="links-line unprinted">
          <Link href={`/incidents/${incidentId}`}>{say.openIncident}</Link>
        </p>
      )}
      <Fold title={say.periods}>
        {() => (
          <ul>
            {periods.map((period) => (
              <li key={period.id}>
                <PeriodLine period={period} />
              </li>
            ))}
          </ul>
        )}
      </Fold>
      {kind !== undefined && state !== 'cannot-tell' && (
        <Fold title={say.decide.keep} key={`keep ${version}`}>
          {() => <DecideForm decision="keep" name={name} line={line} kind={kind} {...rest} />}
        </Fold>
      )}
      {kind !== undefined && state === 'due' && (
        <Fold title={say.decide.delete} key={`delete ${version}`}>
          {() => <DecideForm decision="delete" name={name} line={line} kind={kind} {...rest} />}
        </Fold>
      )}
    </article>
  );
}

export function Words({ words }: { words: readonly string[] }) {
  if (words.length === 1) return <>{words[0]}</>;
  return (
    <ul>
      {words.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}

function PeriodLine({ period }: { period: ToldPeriod }) {
  const { months, latest, applies, reason, doubts } = period;
  return (
    <>
      <p>
        {applies === 'unknown' && <strong>{say.mayApply}. </strong>}
        {latest === null ? say.periodOpen(months) : say.period(months, tellDay(latest))}. {reason}
      </p>
      <p class="quiet">{[tellSource(period), ...doubts].join('. ')}</p>
    </>
  );
}
