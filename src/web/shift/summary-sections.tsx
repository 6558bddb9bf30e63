import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';
import type { ShiftSummary, ShiftTask } from '../../../shared/follow-up/summarize-shift.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { shiftHandOver as say } from '../words/shift-hand-over.js';

interface Line {
  readonly key: string;
  /** Where it is handled. */
  readonly href: string;
  readonly what: ComponentChildren;
  readonly about: string;
}

/** What the incoming shift has to know, what presses most first; nothing is left out because it is empty. */
export function SummarySections({ summary, zone }: { summary: ShiftSummary; zone: string }) {
  const now = useNow();
  // What was left when it was gathered: that is what was signed.
  const asOf = Date.parse(summary.asOf);
  const at = (instant: string): string => tellInstant(instant, zone, now);
  const task = ({ taskId, reference, title, dueAt }: ShiftTask): Line => ({
    key: taskId,
    href: '/follow-up',
    what: <span lang="en">{title}</span>,
    about: `${reference} · ${dueAt === null ? say.noTime : `${at(dueAt)}, ${tellLeft(dueAt, asOf)}`}`,
  });
  return (
    <>
      <Lines
        title={say.notBack}
        none={summary.notBack === undefined ? say.notBackEarlier : say.notBackNone}
        lines={(summary.notBack ?? []).map(({ notBackId, unit, since, ended }) => ({
          key: notBackId,
          href: `/out-and-back/not-back/${notBackId}`,
          what: unit,
          about: ended === null ? say.since(at(since)) : say.ended(say.ends[ended] ?? ended),
        }))}
      />
      <Lines
        title={say.calls}
        none={say.callsNone}
        lines={summary.openCalls.map(({ incidentId, reference, openedAt }) => ({
          key: incidentId,
          href: `/incidents/${incidentId}`,
          what: reference,
          about: say.opened(at(openedAt)),
        }))}
      />
      <Lines
        title={say.held}
        none={say.heldNone}
        lines={summary.craftHeld.map(({ craftId, name, station, why }) => ({
          key: craftId,
          href: `/fleet/${craftId}`,
          what: name,
          about: [station ?? say.noStation, ...why].join(' · '),
        }))}
      />
      <Lines title={say.promises} none={say.promisesNone} lines={summary.callBacks.map(task)} />
      <Lines title={say.due} none={say.dueNone} lines={summary.dueNext.map(task)} />
    </>
  );
}

function Lines({ title, none, lines }: { title: string; none: string; lines: readonly Line[] }) {
  return (
    <Section title={title} aside={<span class="quiet">{lines.length}</span>}>
      {lines.length === 0 && <p>{none}</p>}
      <ul class="hand-over-lines">
        {lines.map(({ key, href, what, about }) => (
          <li key={key}>
            <Link href={href}>
              <strong>{what}</strong>
              <span class="quiet">{about}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
