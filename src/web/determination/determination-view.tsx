import type { CandidateState, Determination, Duty } from '../../../shared/determination/determination.js';
import { clockOf, nameJurisdiction, nameKind } from '../../../shared/determination/duty-words.js';
import { localTime, timeLeft } from '../../../shared/time/tell-time.js';
import { tellInstant } from '../look/tell-instant.js';
import { DutyView } from './duty-view.js';

/** The whole determination, the earliest clock on top. */
export function DeterminationView({ determination, now }: { determination: Determination; now: number }) {
  return (
    <>
      <p class="quiet">{asOf(determination, now)}</p>
      <Earliest duties={determination.duties} now={now} />
      {determination.duties.map((duty) => (
        <DutyView key={duty.id} duty={duty} now={now} />
      ))}
    </>
  );
}

function asOf({ states, timeZone }: Determination, now: number): string {
  const where = states.length === 0 ? 'No state could be told.' : `${states.map(nameOfState).join('; ')}.`;
  const at = tellInstant(new Date(now).toISOString(), timeZone, now);
  return `On the facts as sent, ${at}. ${where} Times are those of ${timeZone}.`;
}

function nameOfState({ state, chosenBy, distanceToLineM }: CandidateState): string {
  const name = nameJurisdiction(`us-${state.toLowerCase()}`);
  const far = distanceToLineM === null ? '' : `, its line ${distanceInWords(distanceToLineM)} away`;
  const how = {
    stated: `${name} as stated`,
    'position-inside': `${name} by the position${far}`,
    'position-near-line': `${name} because it is near${far}`,
  };
  return how[chosenBy];
}

function distanceInWords(metres: number): string {
  return metres < 1000 ? `${Math.round(metres)} m` : `${(metres / 1000).toFixed(1)} km`;
}

/** The clock that runs out first among the duties that are required or may be. */
function Earliest({ duties, now }: { duties: readonly Duty[]; now: number }) {
  const running = duties.filter((duty) => duty.outcome !== 'not-required' && clockOf(duty) !== null);
  const instant = (duty: Duty): number => Date.parse(clockOf(duty) ?? '');
  const [first] = running.sort((a, b) => instant(a) - instant(b));
  if (first === undefined) return null;
  const due = clockOf(first) ?? '';
  const duty = `${nameKind(first.kind)}, ${nameJurisdiction(first.jurisdiction)}`;
  return (
    <p class="earliest">
      <strong>{first.immediate ? 'Act now' : timeLeft(due, now)}</strong>
      <span>
        {`Earliest clock: ${duty}, ${localTime(due, now)}${first.dueAt === null ? ', if it is required' : ''}`}
      </span>
    </p>
  );
}
