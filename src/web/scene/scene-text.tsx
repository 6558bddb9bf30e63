import { Section } from '../look/section.js';
import type { ReadScene } from '../../../shared/scene/read-scene.js';
import { tellScene } from '../../../shared/scene/tell-scene.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';

/** The sketch in sentences: for whoever cannot see it, and to check it by. */
export function SceneText({ scene }: { scene: ReadScene }) {
  return (
    <Section title={say.asText}>
      <ul class="scene-text">
        {tellScene(scene, language()).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Section>
  );
}
