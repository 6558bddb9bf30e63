import type { ScenePoint } from '../../../shared/record/scene-section.js';
import { Button } from '../look/button.js';
import { scene as say } from '../words/scene.js';
import { STEP, withStep, type Chosen } from './change-scene.js';
import type { SceneHands } from './use-scene.js';

const STEPS: readonly { readonly name: 'left' | 'up' | 'down' | 'right'; readonly by: ScenePoint }[] = [
  { name: 'left', by: [-STEP, 0] },
  { name: 'up', by: [0, STEP] },
  { name: 'down', by: [0, -STEP] },
  { name: 'right', by: [STEP, 0] },
];

/** A step to each side: the way to move something without a tap. */
export function MoveButtons({ hands, chosen }: { hands: SceneHands; chosen: Chosen }) {
  return (
    <fieldset class="scene-moves">
      <legend>{say.change.move}</legend>
      {STEPS.map(({ name, by }) => (
        <Button key={name} onPress={() => hands.change((draft) => withStep(draft, chosen, by))}>
          {say.change[name]}
        </Button>
      ))}
    </fieldset>
  );
}
