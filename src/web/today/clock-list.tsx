import { Link } from 'wouter-preact';
import { nameDuty } from '../../../shared/determination/duty-words.js';
import type { Asked } from '../ask/use-ask.js';
import { Empty } from '../look/notes.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { DayLine } from './day-line.js';
import { DayPart } from './day-part.js';
import type { ClockLine, Paged } from './service-answers.js';

/** The clocks of all incidents by what is left, each leading to the duties of its incident. */
export function ClockList({ asked, zone }: { asked: Asked<Paged<ClockLine>>; zone: string }) {
  const now = useNow();
  return (
    <DayPart title={say.clocks.title} asked={asked}>
      {({ items, next }) =>
        items.length === 0 ? (
          <Empty>
            <p>{say.clocks.none}</p>
          </Empty>
        ) : (
          <>
            <ul class="day-lines">
              {items.map((clock) => (
                <DayLine
                  key={`${clock.incident} ${clock.duty} ${clock.dueAt ?? ''}`}
                  href={`/incidents/${clock.incident}/duties`}
                  figure={figureOf(clock, now)}
                  title={
                    <>
                      <Sign of={clock.outcome} />
                      {say.clocks.outcomes[clock.outcome]}:{' '}
                      <span lang="en">{nameDuty(clock.duty, null)}</span>
                    </>
                  }
                  about={aboutOf(clock, zone, now)}
                />
              ))}
            </ul>
            {next !== null && (
              <p class="links-line">
                <Link href="/register?reports=open">{say.clocks.all}</Link>
              </p>
            )}
          </>
        )
      }
    </DayPart>
  );
}

/** What is left. A notice without delay has no time left to tell, only when it was to be given. */
export function figureOf({ immediate, dueAt }: ClockLine, now: number): string {
  if (dueAt === null) return say.clocks.noTime;
  return immediate ? say.clocks.atOnce : tellLeft(dueAt, now);
}

/** Which incident, by when, and what is odd about it. */
export function aboutOf(clock: ClockLine, zone: string, now: number): string {
  const { reference, craft, dueAt, outcome, waitUntil, supplementDue, status } = clock;
  return [
    [reference, ...craft].join(', '),
    dueAt === null ? null : tellInstant(dueAt, zone, now),
    outcome === 'undetermined' ? say.clocks.ifRequired : null,
    supplementDue ? say.clocks.supplement : null,
    waitUntil === null ? null : say.clocks.waits(tellInstant(waitUntil, zone, now)),
    status === 'closed' ? say.clocks.closed : null,
  ]
    .filter((part) => part !== null)
    .join(' · ');
}
