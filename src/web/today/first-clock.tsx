import { Link } from 'wouter-preact';
import { nameDuty } from '../../../shared/determination/duty-words.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { aboutOf, figureOf } from './clock-list.js';
import type { ClockLine } from './service-answers.js';

const DAY_MS = 86_400_000;

/** The clock that ends first over all incidents: the one large figure of the page, in the accent once a day is left. */
export function FirstClock({ clock, zone }: { clock: ClockLine | undefined; zone: string }) {
  const now = useNow();
  if (clock === undefined) {
    return (
      <p class="deadline first">
        <strong>{say.noClock}</strong>
        <span class="quiet">{say.noClockAbout}</span>
      </p>
    );
  }
  const soon = clock.immediate || (clock.dueAt !== null && Date.parse(clock.dueAt) - now < DAY_MS);
  return (
    <p class={`deadline first ${soon ? 'act-now' : ''}`}>
      <strong>{figureOf(clock, now)}</strong>
      <Link href={`/incidents/${clock.incident}/duties`} lang="en">
        {nameDuty(clock.duty, null)}
      </Link>
      <span class="quiet">{aboutOf(clock, zone, now)}</span>
    </p>
  );
}
