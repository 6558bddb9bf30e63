import { Button } from '../look/button.js';
import { Section } from '../look/section.js';
import { scene as say } from '../words/scene.js';
import type { SceneHands } from './use-scene.js';

/** Everything on the sheet, each with the way to it. */
export function ThingList({ hands }: { hands: SceneHands }) {
  const { ready, chosen, choose } = hands;
  const things = [
    ...ready.marks.map(({ id, name }) => ({ list: 'marks' as const, id, name })),
    ...ready.lines.map(({ id, name }) => ({ list: 'lines' as const, id, name })),
  ];
  if (things.length === 0) return null;
  return (
    <Section title={say.things.title}>
      <ul class="scene-things">
        {things.map(({ name, ...thing }) => (
          <li key={`${thing.list} ${thing.id}`}>
            <Button
              onPress={() => choose(thing)}
              label={say.things.change(name)}
              pressed={chosen?.list === thing.list && chosen.id === thing.id}
            >
              {name}
            </Button>
          </li>
        ))}
      </ul>
    </Section>
  );
}
