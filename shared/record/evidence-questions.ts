import { metresPerDegree } from '../place/metres-per-degree.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import { sameMediaType } from './evidence-kind.js';
import type { Captured, EvidenceFile } from './evidence-section.js';
import type { IncidentRecord } from './incident-record.js';
import { whenItHappened } from './when-it-happened.js';

export type EvidenceQuestionCode = 'taken-before' | 'taken-after-arrival' | 'taken-elsewhere' | 'other-type';

/** Where a file and the record say different things. A person answers it; nothing is changed by it. */
export interface EvidenceQuestion {
  readonly code: EvidenceQuestionCode;
  readonly text: string;
}

/** Clocks of phones and watches differ by a few minutes without anybody being wrong. */
const CLOCK_GIVE_MS = 5 * 60_000;
/** Phones name their place to some 10 m in the open; a kilometre is another place. */
const PLACE_GIVE_M = 1000;

/**
 * What a file's own time, position and type leave open beside the record. A camera's clock without an offset is read in
 * the zone of the incident.
 * @example listEvidenceQuestions(photo, record)[0]?.text
 * // 'The file says that it was taken at 14:02, the record that it happened at 15:10: which clock is off, or was …'
 */
export function listEvidenceQuestions(file: EvidenceFile, record: IncidentRecord): EvidenceQuestion[] {
  const { captured = {}, type, declaredType } = file;
  const questions = [...askTime(file, captured, record), ...askPlace(captured, record)];
  if (!sameMediaType(declaredType, type)) {
    const text = `The device called it ${declaredType ?? ''}; by its content it is ${type}. Is it the right file?`;
    questions.push({ code: 'other-type', text });
  }
  return questions;
}

function askTime(file: EvidenceFile, captured: Captured, record: IncidentRecord): EvidenceQuestion[] {
  const zone = record.sections['time-and-place']?.timeZone?.value ?? record.incident.timeZone;
  const taken = wallClock(captured, zone);
  if (taken === undefined) return [];
  const arrived = onWall(file.receivedAt, zone);
  if (taken - arrived > CLOCK_GIVE_MS) {
    const [said, at] = tellBoth(taken, arrived);
    const text = `The file says that it was taken at ${said}, and it arrived at ${at}: which clock is off?`;
    return [{ code: 'taken-after-arrival', text }];
  }
  const when = whenItHappened(record);
  // A span from departure, or a bare call, is no statement of when it happened.
  if (when.from !== 'occurred') return [];
  const happened = onWall(when.occurredAt, zone);
  if (happened - taken <= CLOCK_GIVE_MS) return [];
  const [said, at] = tellBoth(taken, happened);
  const text =
    `The file says that it was taken at ${said}, the record that it happened at ${at}: ` +
    'which clock is off, or was it taken before?';
  return [{ code: 'taken-before', text }];
}

function askPlace({ latitude, longitude }: Captured, record: IncidentRecord): EvidenceQuestion[] {
  const place = record.sections['time-and-place']?.position?.value;
  if (place === undefined || latitude === undefined || longitude === undefined) return [];
  const degree = metresPerDegree((latitude + place.latitude) / 2);
  const east = Math.abs(longitude - place.longitude);
  const metres = Math.hypot(
    (latitude - place.latitude) * degree.latitude,
    Math.min(east, 360 - east) * degree.longitude,
  );
  if (metres <= PLACE_GIVE_M + (place.accuracyM ?? 0)) return [];
  const text =
    `The file's own position is ${(metres / 1000).toFixed(1)} km from the place in the record: ` +
    'which is right, or was it taken elsewhere?';
  return [{ code: 'taken-elsewhere', text }];
}

/** The hands of the clock on the wall, as milliseconds that only compare with each other. */
function wallClock({ local, offset }: Captured, zone: string): number | undefined {
  if (local === undefined) return undefined;
  if (offset !== undefined) return onWall(`${local}${offset}`, zone);
  return readInstant(`${local}Z`);
}

function onWall(instant: string, zone: string): number {
  return readInstant(`${zoneClock(zone).format(readInstant(instant)).slice(0, 19)}Z`);
}

/** Both times, with their days where those differ. */
function tellBoth(one: number, other: number): [string, string] {
  const [a, b] = [new Date(one).toISOString(), new Date(other).toISOString()];
  const sameDay = a.slice(0, 10) === b.slice(0, 10);
  const tell = (iso: string): string =>
    sameDay ? iso.slice(11, 16) : `${iso.slice(11, 16)} on ${iso.slice(0, 10)}`;
  return [tell(a), tell(b)];
}
