import type { EvidenceWords } from '../../../shared/record/evidence-section.js';
import type { Shot } from '../../../shared/record/shots.js';
import { queueFile, queueRequest } from '../device/outbox.js';
import { useSession } from '../session/session.js';
import { captionInRecord } from '../words/en/evidence.js';
import type { ShotList } from './shot-lists.js';

export interface TakeShots {
  /** Keeps a picture of the list for a craft; of no craft with null. */
  readonly take: (list: ShotList | null, shot: Shot, file: File) => Promise<void>;
  /** Keeps a picture or file that is on no list. */
  readonly takeOther: (file: File, caption: string) => Promise<void>;
  readonly cannot: (list: ShotList, shot: Shot, reason: string) => Promise<void>;
}

/** Everything goes through the outbox: it is on the disk when it returns, and sent when there is signal. */
export function useShots(incident: string): TakeShots {
  const takenBy = useSession().me?.name;
  const add = (body: object): Promise<unknown> =>
    queueRequest({
      line: incident,
      about: 'photographs',
      method: 'POST',
      path: `/api/incidents/${incident}/sections/craft/additions`,
      body,
    });
  const keep = (file: File, words: EvidenceWords): Promise<unknown> =>
    queueFile(incident, file, 'photograph', { ...words, ...(takenBy !== undefined && { takenBy }) });
  return {
    take: async (list, shot, file) => {
      // What a picture shows is named by its id: the craft is in the record before the picture.
      if (list?.adds) await add({ craft: [list.adds] });
      await keep(file, {
        caption: captionInRecord(list?.name ?? null, shot),
        shot,
        ...(list !== null && { craft: [list.craft] }),
      });
    },
    takeOther: async (file, caption) => {
      await keep(file, caption.trim() === '' ? {} : { caption: caption.trim() });
    },
    cannot: async ({ craft, adds }, shot, reason) => {
      const missed = { id: `no-${crypto.randomUUID()}`, shot, reason };
      await add({ craft: [{ ...(adds ?? { id: craft }), notPhotographed: [missed] }] });
    },
  };
}
