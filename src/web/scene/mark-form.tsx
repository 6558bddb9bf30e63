import { normalBearing } from '../../../shared/scene/compass-point.js';
import { fieldLabel, fieldWords } from '../../../shared/record/field-words/tell-field.js';
import { SCENE_MOVEMENTS, SCENE_THINGS, type SceneMark } from '../../../shared/record/scene-section.js';
import { sceneKindName } from '../../../shared/scene/tell-scene.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';
import { withChangedMark } from './change-scene.js';
import { MoveButtons } from './move-buttons.js';
import type { SceneHands } from './use-scene.js';

const TURN = 15;
const label = (path: string): string => fieldLabel('scene', path, language()) ?? path;

/** One craft, person or thing: what it is, where its bow points, whether it moves. */
export function MarkForm({ hands, mark }: { hands: SceneHands; mark: SceneMark }) {
  const { id, kind = 'other', heading } = mark;
  const change = (changes: Parameters<typeof withChangedMark>[2]): void =>
    hands.change((draft) => withChangedMark(draft, id, changes));
  const isCraft = kind === 'our-craft' || kind === 'other-craft';
  const { sceneMovement } = fieldWords(language()).values;
  return (
    <>
      <MoveButtons hands={hands} chosen={{ list: 'marks', id }} />
      {isCraft && (
        <fieldset class="scene-moves">
          <legend>{say.change.turn}</legend>
          <Button onPress={() => change({ heading: normalBearing((heading ?? 0) - TURN) })}>
            {say.change.turnLeft}
          </Button>
          <Button onPress={() => change({ heading: normalBearing((heading ?? 0) + TURN) })}>
            {say.change.turnRight}
          </Button>
          {heading !== undefined && (
            <Button look="plain" onPress={() => change({ heading: undefined })}>
              {say.change.noHeading}
            </Button>
          )}
        </fieldset>
      )}
      {isCraft && (
        <Choice
          legend={label('/marks/*/movement')}
          options={SCENE_MOVEMENTS.map((value) => ({ value, label: sceneMovement[value] }))}
          value={mark.movement}
          onChoose={(movement) => change({ movement })}
        />
      )}
      <div class="scene-pair">
        <Select
          label={label('/marks/*/kind')}
          value={kind}
          none={say.add.choose}
          onChoose={(chosen) => chosen !== '' && change({ kind: chosen })}
          groups={[
            { options: SCENE_THINGS.map((value) => ({ value, label: sceneKindName(value, language()) })) },
          ]}
        />
        {isCraft && hands.craft.length > 0 && (
          <Select
            label={say.change.craft}
            value={mark.craft ?? ''}
            none={say.change.noCraft}
            optional
            onChoose={(chosen) => change({ craft: chosen === '' ? undefined : chosen })}
            groups={[{ options: hands.craft.map((one) => ({ value: one.id, label: one.name })) }]}
          />
        )}
        <Field
          label={label('/marks/*/label')}
          value={mark.label ?? ''}
          onInput={(value) => change({ label: value === '' ? undefined : value })}
        />
      </div>
    </>
  );
}
