import type { CandidateState, Determination, Duty } from '../../../shared/determination/determination.js';
import { element } from '../look/element.js';
import { localTime, timeLeft } from '../../../shared/time/tell-time.js';
import { clockOf, nameJurisdiction, nameKind } from '../../../shared/determination/duty-words.js';
import { showDuty } from './show-duty.js';

/** The whole determination, the earliest clock on top. */
export function showDetermination(determination: Determination, now: number): HTMLElement[] {
  return [
    element('h2', { tabindex: '-1' }, 'Determination'),
    element('p', { class: 'as-of' }, asOf(determination, now)),
    ...showEarliest(determination.duties, now),
    ...determination.duties.map((duty) => showDuty(duty, now)),
  ];
}

function asOf({ states, timeZone }: Determination, now: number): string {
  const where = states.length === 0 ? 'No state could be told.' : `${states.map(nameOfState).join('; ')}.`;
  return `On the facts as sent, ${localTime(isoIn(timeZone, now), now)}. ${where} Times are those of ${timeZone}.`;
}

/** `2026-07-06 19:12:00`: Sweden writes instants the way ISO 8601 does. */
function isoIn(timeZone: string, now: number): string {
  return new Date(now).toLocaleString('sv-SE', { timeZone });
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
function showEarliest(duties: readonly Duty[], now: number): HTMLElement[] {
  const running = duties.filter((duty) => duty.outcome !== 'not-required' && clockOf(duty) !== null);
  const instant = (duty: Duty): number => Date.parse(clockOf(duty) ?? '');
  const [first] = running.sort((a, b) => instant(a) - instant(b));
  if (first === undefined) return [];
  const due = clockOf(first) ?? '';
  const duty = `${nameKind(first.kind)}, ${nameJurisdiction(first.jurisdiction)}`;
  return [
    element(
      'p',
      { class: 'earliest' },
      element('strong', {}, first.immediate ? 'Act now' : timeLeft(due, now)),
      element(
        'span',
        {},
        `Earliest clock: ${duty}, ${localTime(due, now)}${first.dueAt === null ? ', if it is required' : ''}`,
      ),
    ),
  ];
}
