import { earliestDue } from '../../../shared/decision/decision.js';
import { Deadline } from '../look/deadline.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { titleOf } from './duty-card.js';
import { byClock, isSettled } from './list-questions.js';
import type { DutyView } from './service-answers.js';

/** The clock that runs out first among the duties that are not settled: the one large figure of the page. */
export function EarliestClock({ duties, zone }: { duties: readonly DutyView[]; zone: string }) {
  const [first] = duties.filter((view) => !isSettled(view) && earliestDue(view) !== null).sort(byClock);
  const due = first === undefined ? null : earliestDue(first);
  if (first === undefined || due === null) return null;
  const note = `${say.earliest(titleOf(first))}${first.dueAt === null ? `, ${say.ifRequired}` : ''}`;
  if (!first.immediate) return <Deadline at={due} timeZone={zone} note={note} first />;
  return (
    <p class="deadline first act-now">
      <strong>{say.atOnce}</strong>
      <span>{say.countedFrom(tellInstant(due, zone))}</span>
      <span class="quiet">{note}</span>
    </p>
  );
}
