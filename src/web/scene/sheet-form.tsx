import { useState } from 'preact/hooks';
import {
  fieldHelp,
  fieldLabel,
  fieldUnit,
  fieldWords,
} from '../../../shared/record/field-words/tell-field.js';
import { HOW_KNOWN, type HowKnown } from '../../../shared/call/known.js';
import type { SceneSection } from '../../../shared/record/scene-section.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Section } from '../look/section.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';
import type { SceneHands } from './use-scene.js';

type FigureName = 'metresAcross' | 'windFrom' | 'currentToward';

const LIMITS: Readonly<Record<FigureName, readonly [low: number, high: number]>> = {
  metresAcross: [5, 20_000],
  windFrom: [0, 360],
  currentToward: [0, 360],
};

/** What is said of the whole sheet: how wide it is, wind and current, and from what it was drawn. */
export function SheetForm({ hands }: { hands: SceneHands }) {
  const { draft, change } = hands;
  const known = draft.metresAcross?.known;
  const { known: ways } = fieldWords(language()).values;
  return (
    <Section title={say.sheet.title}>
      <div class="scene-pair">
        <FigureField name="metresAcross" hands={hands} />
        <FigureField name="windFrom" hands={hands} />
        <FigureField name="currentToward" hands={hands} />
      </div>
      {draft.metresAcross !== undefined && (
        <Choice<HowKnown>
          legend={say.sheet.known}
          options={HOW_KNOWN.map((value) => ({ value, label: ways[value] }))}
          value={known}
          onChoose={(way) =>
            change(({ metresAcross, ...rest }) =>
              metresAcross === undefined ? rest : { ...rest, metresAcross: { ...metresAcross, known: way } },
            )
          }
        />
      )}
      <Field
        label={labelOf('/drawnFrom')}
        hint={fieldHelp('scene', '/drawnFrom', language())}
        rows={2}
        value={draft.drawnFrom?.value ?? ''}
        onInput={(value) => change((before) => withText(before, value))}
      />
    </Section>
  );
}

const labelOf = (path: string): string => fieldLabel('scene', path, language()) ?? path;

/** A figure that somebody told; what is typed and is none stays in the field, with what to do about it. */
function FigureField({ name, hands: { draft, change } }: { name: FigureName; hands: SceneHands }) {
  const [typed, setTyped] = useState<string | null>(null);
  const [low, high] = LIMITS[name];
  const shown = typed ?? String(draft[name]?.value ?? '');
  const isFigure = (text: string): boolean => Number(text) >= low && Number(text) <= high;
  const type = (text: string): void => {
    setTyped(text);
    if (text.trim() === '') {
      change(({ [name]: gone, ...rest }) => (gone === undefined ? { ...rest, [name]: gone } : rest));
    } else if (isFigure(text)) {
      change((before) => ({
        ...before,
        [name]: { known: 'told', ...before[name], value: Number(text) },
      }));
    }
  };
  return (
    <Field
      label={labelOf(`/${name}`)}
      hint={fieldHelp('scene', `/${name}`, language()) ?? say.sheet.empty}
      unit={fieldUnit('scene', `/${name}`, language()) ?? ''}
      value={shown}
      inputMode="decimal"
      onInput={type}
      error={shown.trim() === '' || isFigure(shown) ? null : say.sheet.notNumber(low, high)}
    />
  );
}

function withText(scene: SceneSection, value: string): SceneSection {
  const { drawnFrom, ...rest } = scene;
  return value === '' ? rest : { ...rest, drawnFrom: { known: 'told', ...drawnFrom, value } };
}
