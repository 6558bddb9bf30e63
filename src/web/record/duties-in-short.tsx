import { Link } from 'wouter-preact';
import type { Outcome } from '../../../shared/determination/determination.js';
import { useAsk } from '../ask/use-ask.js';
import { EarliestClock } from '../decision/earliest-clock.js';
import type { DutiesAnswer } from '../decision/service-answers.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Sign } from '../look/sign.js';
import { overview as say } from '../words/overview.js';

const OUTCOMES: readonly Outcome[] = ['required', 'undetermined', 'not-required'];

/** How the duties stand: counted, with the clock that runs out first, and the way to them. */
export function DutiesInShort({ id, zone }: { id: string; zone: string }) {
  const { data, error, again } = useAsk<DutiesAnswer>(`/api/incidents/${id}/duties`, { keep: true });
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const { determination, items } = data;
  const open = items.filter(({ state }) => state === 'open').length;
  return (
    <>
      {determination === null ? (
        <p>{say.noDuties}</p>
      ) : (
        <>
          <EarliestClock duties={items} zone={zone} />
          <ul class="counts">
            {OUTCOMES.map((outcome) => {
              const count = items.filter((one) => one.outcome === outcome).length;
              return count === 0 ? null : (
                <li key={outcome}>
                  <Sign of={outcome} />
                  {say.dutyCount(say.outcomes[outcome], count)}
                </li>
              );
            })}
          </ul>
          {open > 0 && <p>{say.undecided(open)}</p>}
        </>
      )}
      <p class="links-line">
        <Link class="button" href={`/incidents/${id}/duties`}>
          {say.openDuties}
        </Link>
      </p>
    </>
  );
}
