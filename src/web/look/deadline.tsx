import { ownZone, tellInstant } from './tell-instant.js';
import { tellLeft } from './tell-left.js';
import { useNow } from './use-now.js';

interface DeadlineProps {
  /** RFC 3339. */
  readonly at: string;
  readonly timeZone?: string;
  /** What the time means, such as "if it is required". */
  readonly note?: string;
  /** The one clock of the page: set large, and in the accent once less than a day is left. */
  readonly first?: boolean;
}

const DAY_MS = 86_400_000;

/** A deadline as a figure: what is left, and the local time. Overdue is a word. */
export function Deadline({ at, timeZone = ownZone(), note, first = false }: DeadlineProps) {
  const now = useNow();
  const soon = first && Date.parse(at) - now < DAY_MS;
  return (
    <p class={`deadline ${first ? 'first' : ''} ${soon ? 'act-now' : ''}`}>
      <strong>{tellLeft(at, now)}</strong>
      <time dateTime={at}>{tellInstant(at, timeZone, now)}</time>
      {note !== undefined && <span class="quiet">{note}</span>}
    </p>
  );
}
