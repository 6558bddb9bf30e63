import { useEffect, useState } from 'preact/hooks';
import type { CraftSection } from '../../../shared/record/craft-section.js';
import type { SceneSection } from '../../../shared/record/scene-section.js';
import { readScene, type ReadScene } from '../../../shared/scene/read-scene.js';
import { sceneKindName } from '../../../shared/scene/tell-scene.js';
import type { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import { queueRequest, useOutbox } from '../device/outbox.js';
import { session } from '../session/session-state.js';
import { scene as say } from '../words/scene.js';
import { language } from '../words/speak.js';
import { asKept, type Chosen } from './change-scene.js';

/** `GET /api/incidents/:id/sections/:section` */
interface SectionOf<Document> {
  readonly version: number;
  readonly document: Document;
}

export interface NamedCraft {
  readonly id: string;
  readonly name: string;
}

/** What the parts of the page do to the sketch. */
export interface SceneHands {
  readonly draft: SceneSection;
  readonly ready: ReadScene;
  readonly craft: readonly NamedCraft[];
  readonly chosen: Chosen | null;
  readonly choose: (chosen: Chosen | null) => void;
  readonly change: (change: (before: SceneSection) => SceneSection) => void;
  /** Takes a sketch with something new on it, which is at hand from then on. */
  readonly put: (grown: readonly [SceneSection, Chosen]) => void;
}

export interface SceneAtHand extends SceneHands {
  readonly loaded: boolean;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  readonly again: () => void;
  /** Something is on the sheet that is not kept. */
  readonly isChanged: boolean;
  /** Kept before: to change it needs a reason. */
  readonly stood: boolean;
  readonly discard: () => void;
  readonly save: (reason: string) => Promise<void>;
}

/** The sketch of an incident: as it is kept, as this device waits to send it, and as it is drawn just now. */
export function useScene(incident: string): SceneAtHand {
  const path = `/api/incidents/${incident}/sections`;
  const kept = useAsk<SectionOf<SceneSection>>(`${path}/scene`, { keep: true });
  const named = useAsk<SectionOf<CraftSection>>(`${path}/craft`, { keep: true });
  const waiting = useOutbox(incident).find(
    (item) => item.kind === 'request' && item.path === `${path}/scene`,
  );
  const [changed, setChanged] = useState<SceneSection | null>(null);
  const [chosen, choose] = useState<Chosen | null>(null);
  const stands =
    waiting?.kind === 'request'
      ? (waiting.body as { document: SceneSection }).document
      : (kept.data?.document ?? {});
  const draft = changed ?? stands;
  const isWaiting = waiting !== undefined;
  // What was sent is read back, so that it stands there with its version.
  useEffect(() => {
    if (!isWaiting) kept.again();
  }, [isWaiting]);

  const craft = (named.data?.document.craft ?? []).map(({ id, name }) => ({
    id,
    name: name ?? id,
  }));
  return {
    draft,
    ready: readScene(
      draft,
      (id) => craft.find((one) => one.id === id)?.name,
      (kind) => sceneKindName(kind, language()),
    ),
    craft,
    chosen,
    choose,
    change: (change) => setChanged((before) => change(before ?? stands)),
    put: ([grown, added]) => {
      setChanged(grown);
      choose(added);
    },
    loaded: kept.data !== undefined,
    error: kept.error,
    keptAt: kept.keptAt,
    again: kept.again,
    isChanged: changed !== null,
    stood: (kept.data?.version ?? 0) > 0,
    discard: () => {
      setChanged(null);
      choose(null);
    },
    save: async (reason) => {
      const drawnBy = draft.drawnBy ?? session.value.me?.name;
      const document = { ...asKept(draft), ...(drawnBy !== undefined && { drawnBy }) };
      await queueRequest({
        line: incident,
        about: say.title,
        method: 'PUT',
        path: `${path}/scene`,
        version: kept.data?.version ?? 0,
        body: { document, ...(reason.trim() !== '' && { reason: reason.trim() }) },
      });
      setChanged(null);
      choose(null);
    },
  };
}
