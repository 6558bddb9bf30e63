import { dayIn, tellClock, tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { outAndBack as say } from '../words/out-and-back.js';

/** How long a craft may still be out, as the figure; the day only where it is not today. */
export function TimeOut({ dueBackAt }: { dueBackAt: string | null }) {
  const now = useNow();
  if (dueBackAt === null) {
    return (
      <p class="deadline">
        <strong>{say.dueNotKnown}</strong>
      </p>
    );
  }
  const isToday = dayIn(undefined, Date.parse(dueBackAt)) === dayIn(undefined, now);
  const time = isToday ? tellClock(dueBackAt) : tellInstant(dueBackAt, undefined, now);
  return (
    <p class="deadline">
      <strong>{tellLeft(dueBackAt, now)}</strong>
      <time dateTime={dueBackAt}>{say.dueBack(time)}</time>
    </p>
  );
}
