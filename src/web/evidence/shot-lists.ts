import { valueOf } from '../../../shared/call/known.js';
import type { Craft } from '../../../shared/record/craft-section.js';
import type { EvidenceWords } from '../../../shared/record/evidence-section.js';
import type { RecordSections } from '../../../shared/record/incident-record.js';
import { type MissedShot, type ShotState, shotsOf, shotStates } from '../../../shared/record/shots.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { ourCraftOf } from '../officer/our-craft.js';
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

/** A list a craft: ours first, then those of others. */
export function shotLists(
  sections: Partial<RecordSections>,
  fleet: readonly FleetCraft[],
  taken: readonly TakenShot[],
  waiting: readonly QueuedItem[],
): ShotList[] {
  const written = [...(sections.craft?.craft ?? []), ...waiting.flatMap(craftIn)];
  const shotsFor = (craft: string, type: string | null, isOurs: boolean): ShotState[] => {
    const missed: MissedShot[] = written.flatMap(({ id, notPhotographed = [] }) =>
      id === craft ? notPhotographed : [],
    );
    const files = taken.flatMap(({ id, craft: shown, shot }) =>
      shown?.includes(craft) ? [{ id, shot }] : [],
    );
    return shotStates(shotsOf(type, isOurs), files, missed);
  };
  const ours = ourCraftOf(sections, fleet).map(({ id, name, type, fleetCraft }) => {
    const craft = id ?? idOf(name);
    const adds = id === null ? addedCraft(craft, name, fleetCraft) : null;
    return { craft, name, adds, shots: shotsFor(craft, type, true) };
  });
  const others = (sections.craft?.craft ?? [])
    .filter(({ ours: isOurs }) => isOurs === false)
    .map(({ id, name = id, type }) => {
      return { craft: id, name, adds: null, shots: shotsFor(id, valueOf(type) ?? null, false) };
    });
  return [...ours, ...others];
}

function craftIn(item: QueuedItem): readonly Craft[] {
  if (item.kind !== 'request' || !item.path.endsWith('/sections/craft/additions')) return [];
  return (item.body as { craft?: Craft[] }).craft ?? [];
}

/** The same on every phone, so that two of them add one craft: `idOf('PWC 7')` is `'PWC-7'`. */
function idOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain.slice(0, 64) || 'craft';
}

function addedCraft(id: string, name: string, fleetCraft: string | null): Craft {
  return { id, ours: true, name, ...(fleetCraft !== null && { fleetCraft }) };
}
