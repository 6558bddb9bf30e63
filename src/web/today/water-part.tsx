import { Link } from 'wouter-preact';
import { STANDINGS } from '../../../shared/outing/outing.js';
import { useAsk } from '../ask/use-ask.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { DayLine } from './day-line.js';
import { DayPart } from './day-part.js';
import type { Listed, NotBackLine, WhereaboutsLine } from './service-answers.js';

const EVERY_MINUTE = 60_000;

/** What is not back, late, out and held. */
export function WaterPart({ zone }: { zone: string }) {
  const now = useNow();
  const asked = useAsk<Listed<WhereaboutsLine>>('/api/outings', { keep: true, everyMs: EVERY_MINUTE });
  const lost = useAsk<Listed<NotBackLine>>('/api/not-back', { keep: true, everyMs: EVERY_MINUTE });
  return (
    <DayPart title={say.water.title} asked={asked}>
      {({ items }) => (
        <>
          <ul class="day-lines">
            {lost.data?.items.map(({ id, unit, openedAt, ended }) => (
              <DayLine
                key={id}
                href={`/out-and-back/not-back/${id}`}
                title={say.water.notBack(unit)}
                about={
                  ended === null
                    ? say.water.notBackSince(tellInstant(openedAt, zone, now))
                    : say.water.notBackEnded
                }
              />
            ))}
            {items
              .filter(({ standing }) => standing === 'late')
              .map(({ craftId, unitName, dueBackAt }) => (
                <DayLine
                  key={craftId}
                  href="/out-and-back"
                  title={say.water.late(unitName)}
                  {...(dueBackAt !== null && { figure: tellLeft(dueBackAt, now) })}
                />
              ))}
          </ul>
          <p>{countsOf(items)}</p>
          <p>{heldOf(items)}</p>
          <p class="links-line">
            <Link href="/out-and-back">{say.water.toWater}</Link>
            <Link href="/fleet">{say.water.toFleet}</Link>
          </p>
        </>
      )}
    </DayPart>
  );
}

/** `2 late, 5 out, 20 in`; what nobody wrote down is said to be that, and never in. */
function countsOf(items: readonly WhereaboutsLine[]): string {
  if (items.length === 0) return say.water.fleetEmpty;
  const counts = STANDINGS.map(
    (standing) => [standing, items.filter((one) => one.standing === standing).length] as const,
  ).filter(([, count]) => count > 0);
  return `${counts.map(([standing, count]) => `${count} ${say.water.standings[standing]}`).join(', ')}.`;
}

function heldOf(items: readonly WhereaboutsLine[]): string {
  const held = items.filter(({ inService }) => !inService).map(({ unitName }) => unitName);
  return held.length === 0 ? say.water.noneHeld : say.water.held(held.join(', '));
}
