import { type ShotState, shotStates } from '../../../shared/record/shots.js';
import { Section } from '../look/section.js';
import { evidence as say } from '../words/evidence.js';
import { ShotLine } from './shot-line.js';
import type { ShotList, TakenShot } from './shot-lists.js';
import type { TakeShots } from './use-shots.js';

/** The list of one craft; without `shots` it is only read. */
export function ShotsOfCraft({ list, shots }: { list: ShotList; shots: TakeShots | null }) {
  const count = (wanted: ShotState['state']): number =>
    list.shots.filter(({ state }) => state === wanted).length;
  return (
    <Section
      title={say.shots.title(list.name)}
      aside={<strong>{say.shots.count(count('done'), list.shots.length, count('cannot'))}</strong>}
    >
      <ul class="shots">
        {list.shots.map((state) => (
          <ShotLine
            key={state.shot}
            state={state}
            of={list.name}
            take={shots === null ? undefined : (file) => shots.take(list, state.shot, file)}
            cannot={shots === null ? undefined : (reason) => shots.cannot(list, state.shot, reason)}
          />
        ))}
      </ul>
    </Section>
  );
}

/** A craft that is not ours and is in no record yet: its pictures belong to no craft before somebody writes it down. */
export function OtherCraftShots({ taken, shots }: { taken: readonly TakenShot[]; shots: TakeShots | null }) {
  const files = taken.map(({ id, shot }) => ({ id, shot }));
  return (
    <Section title={say.shots.around}>
      <ul class="shots">
        {shotStates(['other-craft'], files, []).map((state) => (
          <ShotLine
            key={state.shot}
            state={state}
            of={say.shots.around}
            take={shots === null ? undefined : (file) => shots.take(null, state.shot, file)}
          />
        ))}
      </ul>
    </Section>
  );
}
