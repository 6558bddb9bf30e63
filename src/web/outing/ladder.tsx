import { Section } from '../look/section.js';
import { notBack as say } from '../words/not-back.js';
import { LadderRungItem } from './ladder-rung.js';
import type { NotBackHere } from './use-not-back.js';

/** Whom to call and what to do, in order, with the time by which; the first that nobody has climbed is the one to do now. */
export function Ladder({ here, ended }: { here: NotBackHere; ended: boolean }) {
  const done = new Set(here.climbed.map(({ rung }) => rung));
  const next = ended ? undefined : here.ladder.find(({ rung }) => !done.has(rung))?.rung;
  return (
    <Section title={say.ladder.title}>
      <ol class="ladder">
        {here.ladder.map((rung) => (
          <LadderRungItem key={rung.rung} rung={rung} here={here} isNext={rung.rung === next} />
        ))}
      </ol>
      <p class="hint">{say.ladder.basis}</p>
    </Section>
  );
}
