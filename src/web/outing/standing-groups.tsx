import { type Standing, STANDINGS } from '../../../shared/outing/outing.js';
import { Empty } from '../look/notes.js';
import { Section } from '../look/section.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { CraftRow } from './craft-row.js';
import type { ShownCraft } from './lay-over.js';

interface StandingGroupsProps {
  readonly craft: readonly ShownCraft[];
  readonly onBack: (craft: ShownCraft) => void;
  readonly onNotBack: (craft: ShownCraft) => void;
  readonly onChange: (craft: ShownCraft) => void;
}

/** What is late, out, not written down and in, in the order in which somebody should look. */
export function StandingGroups({ craft, ...acts }: StandingGroupsProps) {
  const of = (standing: Standing): readonly ShownCraft[] => craft.filter((one) => one.standing === standing);
  const isAnyOut = craft.some(({ standing }) => standing !== 'in' && standing !== 'not-known');
  return (
    <>
      {!isAnyOut && (
        <Empty>
          <p>{say.nothingOut}</p>
        </Empty>
      )}
      {STANDINGS.filter((standing) => of(standing).length > 0).map((standing) => (
        <Section
          key={standing}
          title={say.groups[standing]}
          aside={<span class="quiet">{say.count(of(standing).length)}</span>}
        >
          {standing === 'not-known' && <p class="hint">{say.notKnownHint}</p>}
          <ul class="craft-list">
            {of(standing).map((one) => (
              <CraftRow
                key={one.craftId}
                craft={one}
                onBack={() => acts.onBack(one)}
                onNotBack={() => acts.onNotBack(one)}
                onChange={() => acts.onChange(one)}
              />
            ))}
          </ul>
        </Section>
      ))}
    </>
  );
}
