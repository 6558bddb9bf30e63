import { SCENE_LINES, SCENE_THINGS } from '../../../shared/record/scene-section.js';
import { sceneKindName } from '../../../shared/scene/tell-scene.js';
import { Button } from '../look/button.js';
import { Section } from '../look/section.js';
import { Select } from '../look/select.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';
import { withLine, withMark } from './change-scene.js';
import type { SceneHands } from './use-scene.js';

/** What may be put on the sheet: the craft of the record by name, everything else by kind. */
export function AddThings({ hands }: { hands: SceneHands }) {
  const { draft, craft, put } = hands;
  const drawn = new Set((draft.marks ?? []).map((mark) => mark.craft));
  return (
    <Section title={say.add.title}>
      <div class="scene-add">
        {craft
          .filter(({ id }) => !drawn.has(id))
          .map(({ id, name }) => (
            <Button key={id} onPress={() => put(withMark(draft, 'our-craft', id))}>
              {say.add.craft(name)}
            </Button>
          ))}
      </div>
      <div class="scene-pair">
        <Select
          label={say.add.thing}
          value=""
          none={say.add.choose}
          onChoose={(kind) => kind !== '' && put(withMark(draft, kind))}
          groups={[
            { options: SCENE_THINGS.map((value) => ({ value, label: sceneKindName(value, language()) })) },
          ]}
        />
        <Select
          label={say.add.line}
          value=""
          none={say.add.choose}
          onChoose={(kind) => kind !== '' && put(withLine(draft, kind))}
          groups={[
            { options: SCENE_LINES.map((value) => ({ value, label: sceneKindName(value, language()) })) },
          ]}
        />
      </div>
    </Section>
  );
}
