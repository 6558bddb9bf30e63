import type { Duty } from '../../../shared/determination/determination.js';
import { clockOf } from '../../../shared/determination/duty-words.js';
import { Loading, Note } from '../look/notes.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { ChangeList } from './change-list.js';
import { compareDeterminations, nameDuty } from './compare-determinations.js';
import type { Matter } from './use-matter.js';
import type { Tried } from './use-what-if.js';

/** What would come of the tries, beside what stands. */
export function WhatWouldBe({ matter, tried }: { matter: Matter; tried: Tried | null }) {
  if (tried === null || tried.state === 'working') return <Loading what={say.whatIf.working} />;
  if (tried.state === 'failed') return <Note kind="error">{say.whatIf.failed}</Note>;
  if (tried.state === 'refused') {
    return (
      <Note kind="error">
        <p>{say.whatIf.refused}</p>
        <ul class="faults">
          {tried.errors.map(({ pointer, detail }) => (
            <li key={`${pointer} ${detail}`}>
              <code>{pointer}</code> {detail}
            </li>
          ))}
        </ul>
      </Note>
    );
  }
  const changed = compareDeterminations(matter.determined, tried);
  if (changed.length === 0) return <p role="status">{say.whatIf.nothing}</p>;
  return (
    <div role="status">
      <table class="beside">
        <caption>{say.whatIf.changes}</caption>
        <thead>
          <tr>
            <th scope="col">{say.whatIf.duty}</th>
            <th scope="col">{say.whatIf.now}</th>
            <th scope="col">{say.whatIf.then}</th>
          </tr>
        </thead>
        <tbody>
          {dutiesOfEither(matter.determined.determination.duties, tried.determination.duties).map(
            ([id, now, then]) => (
              <tr key={id}>
                <th scope="row">{nameDuty(id, null)}</th>
                <td>
                  <Standing duty={now} timeZone={matter.determined.determination.timeZone} />
                </td>
                <td>
                  <Standing duty={then} timeZone={tried.determination.timeZone} />
                </td>
              </tr>
            ),
          )}
        </tbody>
      </table>
      <ChangeList changed={changed} />
    </div>
  );
}

type Beside = readonly [id: string, now: Duty | undefined, then: Duty | undefined];

function dutiesOfEither(now: readonly Duty[], then: readonly Duty[]): Beside[] {
  const ids = [...new Set([...now, ...then].map(({ id }) => id))];
  return ids.map((id) => [id, now.find((duty) => duty.id === id), then.find((duty) => duty.id === id)]);
}

function Standing({ duty, timeZone }: { duty: Duty | undefined; timeZone: string }) {
  if (duty === undefined) return <>{say.whatIf.noDuty}</>;
  const clock = duty.outcome === 'not-required' ? null : clockOf(duty);
  return (
    <>
      <Sign of={duty.outcome} />
      {say.outcomes[duty.outcome]}
      {clock !== null && <span class="row-about">{tellInstant(clock, timeZone)}</span>}
    </>
  );
}
