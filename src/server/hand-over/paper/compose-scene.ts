import type { JsonObject } from '../../../../shared/record/json-value.js';
import type { SceneSection } from '../../../../shared/record/scene-section.js';
import { readScene } from '../../../../shared/scene/read-scene.js';
import { sceneKindName, tellScene } from '../../../../shared/scene/tell-scene.js';
import type { Block } from './blocks.js';
import { type Composing, composeSection } from './compose-section.js';

/** What is said of the sketch, the sketch, and the same in words; of things that leave no place only the words. */
export function composeScene(document: JsonObject, composing: Composing): Block[] {
  const { marks, lines, ...sheet } = document as SceneSection & JsonObject;
  const scene = readScene(
    { ...sheet, ...(marks !== undefined && { marks }), ...(lines !== undefined && { lines }) },
    (craft) => composing.names.craft.get(craft),
    (kind) => sceneKindName(kind, 'en'),
  );
  const about = composeSection('scene', sheet, composing);
  if (scene.marks.length === 0 && scene.lines.length === 0) return about;
  return [...about, { kind: 'sketch', scene, lines: tellScene(scene, 'en') }];
}
