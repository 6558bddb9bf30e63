import { useState } from 'preact/hooks';
import type { SceneSection } from '../../../shared/record/scene-section.js';
import { Button } from '../look/button.js';
import { Empty, UndoStrip } from '../look/notes.js';
import { Section } from '../look/section.js';
import { scene as say } from '../words/scene.js';
import { AddThings } from './add-things.js';
import { without, withTap } from './change-scene.js';
import { LineForm } from './line-form.js';
import { MarkForm } from './mark-form.js';
import { SceneSketch } from './scene-sketch.js';
import { SceneText } from './scene-text.js';
import { SheetForm } from './sheet-form.js';
import { ThingList } from './thing-list.js';
import type { SceneHands } from './use-scene.js';

/** The sheet with everything that can be done to it. */
export function SceneEditor({ hands }: { hands: SceneHands }) {
  const { draft, ready, chosen, change } = hands;
  const [before, setBefore] = useState<{ scene: SceneSection; name: string } | null>(null);
  const things = [...ready.marks, ...ready.lines];
  const name = nameOf(hands);
  return (
    <div class="scene">
      <div class="scene-drawn">
        <SceneSketch
          scene={ready}
          label={say.title}
          {...(chosen !== null && { onTap: (point) => change((scene) => withTap(scene, chosen, point)) })}
        />
        {things.length === 0 ? <Empty>{say.empty}</Empty> : <p class="hint">{hintOf(hands, name)}</p>}
        {before !== null && (
          <UndoStrip
            undo={() => {
              change(() => before.scene);
              setBefore(null);
            }}
          >
            {say.change.removed(before.name)}
          </UndoStrip>
        )}
      </div>
      <div class="scene-hands">
        <AddThings hands={hands} />
        <ThingList hands={hands} />
        {chosen !== null && name !== null && (
          <Section title={say.change.title(name)}>
            <ChosenForm hands={hands} />
            <div class="scene-add">
              <Button onPress={() => hands.choose(null)}>{say.change.done}</Button>
              <Button
                look="plain"
                onPress={() => {
                  setBefore({ scene: draft, name });
                  change((scene) => without(scene, chosen));
                  hands.choose(null);
                }}
              >
                {say.change.remove(name)}
              </Button>
            </div>
          </Section>
        )}
        <SheetForm hands={hands} />
        <SceneText scene={ready} />
      </div>
    </div>
  );
}

function ChosenForm({ hands }: { hands: SceneHands }) {
  const { draft, chosen } = hands;
  const mark = chosen?.list === 'marks' ? draft.marks?.find(({ id }) => id === chosen.id) : undefined;
  if (mark !== undefined) return <MarkForm key={mark.id} hands={hands} mark={mark} />;
  const line = chosen?.list === 'lines' ? draft.lines?.find(({ id }) => id === chosen.id) : undefined;
  return line === undefined ? null : <LineForm key={line.id} hands={hands} line={line} />;
}

function nameOf({ ready, chosen }: SceneHands): string | null {
  if (chosen === null) return null;
  return ready[chosen.list].find(({ id }) => id === chosen.id)?.name ?? null;
}

function hintOf({ chosen }: SceneHands, name: string | null): string {
  if (chosen === null || name === null) return say.nothingChosen;
  return chosen.list === 'marks' ? say.tapHint(name) : say.tapLine(name);
}
