import { Deadline } from '../look/deadline.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { register as say } from '../words/register.js';
import type { LineDuty, RegisterLine } from './register-answers.js';
import { clockOf, openOf, standingOf } from './tell-line.js';

/** When it happened, or at least when it was opened. */
export function When({ line, zone }: { line: RegisterLine; zone: string }) {
  const now = useNow();
  const { occurredAt } = line.summary;
  const at = occurredAt ?? line.openedAt;
  const words = tellInstant(at, zone, now);
  return <time dateTime={at}>{occurredAt === undefined ? say.opened(words) : words}</time>;
}

/** The clock that runs out first. */
export function Clock({ duties, zone }: { duties: readonly LineDuty[]; zone: string }) {
  const clock = clockOf(duties);
  return clock === null ? <span class="quiet">{say.noClock}</span> : <Deadline at={clock} timeZone={zone} />;
}

/** How its reports stand, with the sign. */
export function Reports({ duties }: { duties: readonly LineDuty[] }) {
  const { sign, words, overdue } = standingOf(duties);
  const open = openOf(duties).length;
  return (
    <span class="standing">
      <strong>
        <Sign of={sign} />
        {words}
        {overdue && `, ${say.duty.overdue}`}
      </strong>
      {open > 0 && <small>{say.duty.open(open)}</small>}
    </span>
  );
}
