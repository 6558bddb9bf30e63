import { type Stamp, stampInstant } from '../../../shared/call/stamp.js';
import { Empty } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { officer as say } from '../words/officer.js';

export interface GivenEntry {
  readonly id: string;
  readonly at: Stamp | undefined;
  readonly by: string | undefined;
  /** Who was given it; null where nobody wrote that down. */
  readonly to: string | null;
  readonly what: string | undefined;
}

interface GivenEntriesProps {
  readonly arrived: readonly GivenEntry[];
  /** Not sent yet. */
  readonly waiting: readonly GivenEntry[];
  readonly timeZone: string | undefined;
}

/** What was given so far, the latest first; what has not been sent yet stands there too. */
export function GivenEntries({ arrived, waiting, timeZone }: GivenEntriesProps) {
  const there = new Set(arrived.map(({ id }) => id));
  const given = [
    ...arrived.map((one) => ({ ...one, isWaiting: false })),
    ...waiting.filter(({ id }) => !there.has(id)).map((one) => ({ ...one, isWaiting: true })),
  ].sort((a, b) => timeOf(b) - timeOf(a));
  return (
    <div class="unprinted">
      <Section title={say.given.title}>
        {given.length === 0 && (
          <Empty>
            <p>{say.given.none}</p>
          </Empty>
        )}
        <ul class="given-list">
          {given.map(({ id, to, at, by, what, isWaiting }) => (
            <li key={id}>
              <strong>{to ?? say.given.unnamed}</strong>
              <span>
                {at !== undefined && tellInstant(new Date(stampInstant(at)).toISOString(), timeZone)}{' '}
                {by !== undefined && say.given.by(by)}
              </span>
              <span class="quiet">{what}</span>
              {isWaiting && <span>{say.given.waiting}</span>}
            </li>
          ))}
        </ul>
      </Section>
    </div>
  );
}

const timeOf = ({ at }: GivenEntry): number => (at === undefined ? 0 : stampInstant(at));
