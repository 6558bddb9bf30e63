import { valueOf } from '../../../shared/call/known.js';
import type { Craft } from '../../../shared/record/craft-section.js';
import type { EvidenceWords } from '../../../shared/record/evidence-section.js';
import type { RecordSections } from '../../../shared/record/incident-record.js';
import { type MissedShot, type ShotState, shotsOf, shotStates } from '../../../shared/record/shots.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { asInRecord, ourCraftOf } from '../officer/our-craft.js';
import type { FleetCraft } from '../officer/read-record.js';
import type { FileAnswer } from './evidence-answers.js';

/** The pictures to take of one craft, and how far that has come, on this device too. */
export interface ShotList {
  /** Id in the record; of the craft as this page adds it, where nobody has written that section. */
  readonly craft: string;
  readonly name: string;
  /** What adds the craft to the record, where the call alone names it. */
  readonly adds: Craft | null;
  readonly shots: readonly ShotState[];
}

/** A picture: in the record, or still on this device. */
export interface TakenShot extends Pick<EvidenceWords, 'craft' | 'shot'> {
  readonly id: string;
}

/** Pictures that arrived and those that wait on this device; what was withdrawn is no picture any more. */
export function takenShots(files: readonly FileAnswer[], waiting: readonly QueuedItem[]): TakenShot[] {
  return [
    ...files.flatMap(({ id, about, withdrawn }) => (withdrawn === undefined ? [{ ...about, id }] : [])),
    ...waiting.flatMap((item) =>
      item.kind === 'file' ? [{ ...(item.words as EvidenceWords), id: item.id }] : [],
    ),
  ];
}

/**
 * A list a craft: ours first, then those of others.
 * @param sections with what waits on this device
 */
export function shotLists(
  sections: Partial<RecordSections>,
  fleet: readonly FleetCraft[],
  taken: readonly TakenShot[],
): ShotList[] {
  const written = sections.craft?.craft ?? [];
  const shotsFor = (craft: string, type: string | null, isOurs: boolean): ShotState[] => {
    const missed: MissedShot[] = written.flatMap(({ id, notPhotographed = [] }) =>
      id === craft ? notPhotographed : [],
    );
    const files = taken.flatMap(({ id, craft: shown, shot }) =>
      shown?.includes(craft) ? [{ id, shot }] : [],
    );
    return shotStates(shotsOf(type, isOurs), files, missed);
  };
  const ours = ourCraftOf(sections, fleet).map((one) => {
    const added = asInRecord(one);
    const { id: craft } = added;
    const adds = one.id === null ? added : null;
    return { craft, name: one.name, adds, shots: shotsFor(craft, one.type, true) };
  });
  const others = written
    .filter(({ ours: isOurs }) => isOurs === false)
    .map(({ id, name = id, type }) => {
      return { craft: id, name, adds: null, shots: shotsFor(id, valueOf(type) ?? null, false) };
    });
  return [...ours, ...others];
}
