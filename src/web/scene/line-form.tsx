import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import type { SceneLine } from '../../../shared/record/scene-section.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';
import { withChangedLine } from './change-scene.js';
import { MoveButtons } from './move-buttons.js';
import type { SceneHands } from './use-scene.js';

/** One line: its points, its name, and whose track it is. */
export function LineForm({ hands, line }: { hands: SceneHands; line: SceneLine }) {
  const { id, points = [] } = line;
  const change = (changes: Parameters<typeof withChangedLine>[2]): void =>
    hands.change((draft) => withChangedLine(draft, id, changes));
  return (
    <>
      <p>{say.change.points(points.length)}</p>
      {points.length > 0 && <MoveButtons hands={hands} chosen={{ list: 'lines', id }} />}
      {points.length > 0 && (
        <Button onPress={() => change({ points: points.slice(0, -1) })}>{say.change.lastPoint}</Button>
      )}
      <div class="scene-pair">
        {line.kind === 'track' && hands.craft.length > 0 && (
          <Select
            label={fieldLabel('scene', '/lines/*/craft', language()) ?? ''}
            value={line.craft ?? ''}
            none={say.change.noCraft}
            optional
            onChoose={(chosen) => change({ craft: chosen === '' ? undefined : chosen })}
            groups={[{ options: hands.craft.map((one) => ({ value: one.id, label: one.name })) }]}
          />
        )}
        <Field
          label={fieldLabel('scene', '/lines/*/label', language()) ?? ''}
          value={line.label ?? ''}
          onInput={(value) => change({ label: value === '' ? undefined : value })}
        />
      </div>
    </>
  );
}
