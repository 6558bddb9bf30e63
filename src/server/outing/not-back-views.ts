import {
  NOT_BACK_ENDS,
  proposeIncident,
  type RungStamp,
  type SearchSheet,
} from '../../../shared/outing/not-back.js';
import {
  findNightLimit,
  type LadderRung,
  type NightLimit,
  planLadder,
} from '../../../shared/outing/plan-ladder.js';
import type { ZoneClock } from '../../../shared/time/zone-clock.js';
import type { CraftInUse, FoundStation } from '../fleet/fleet.api.js';
import type { NotBackRow } from './database/not-back.row.js';
import type { OutingView } from './outing-views.js';

/** Endings after which somebody has to say whether it is an incident. */
export const WAITING_ENDS: readonly string[] = NOT_BACK_ENDS.filter((end) => proposeIncident(end) !== null);

/** What everybody may know of a craft that is not back, a device among them: no person of the outing is in it. */
export interface NotBackReceipt {
  readonly id: string;
  readonly version: number;
  readonly craftId: string;
  readonly unit: string;
  readonly openedAt: string;
  readonly ended: NotBackRow['ended'];
  readonly incidentId: string | null;
  readonly climbed: readonly Pick<RungStamp, 'id' | 'rung' | 'stamp'>[];
}

export interface NotBackView extends NotBackReceipt {
  /** IANA zone of the station, or of the business; every time of the ladder is on its clock. */
  readonly timeZone: string;
  readonly openedBy: string;
  readonly craft: Pick<
    CraftInUse,
    'unitName' | 'colours' | 'type' | 'registrationNumber' | 'make' | 'model' | 'fuel'
  >;
  readonly outing: OutingView | null;
  readonly sheet: SearchSheet;
  readonly nightLimit: NightLimit;
  readonly ladder: readonly (LadderRung & { readonly climbed: readonly RungStamp[] })[];
  readonly endedAt: string | null;
  readonly endedBy: string | null;
  readonly endedHow: string | null;
  readonly notIncident: string | null;
  readonly notIncidentBy: string | null;
  /** Why it should become an incident, while nobody has opened one or said that it is none. */
  readonly proposesIncident: string | null;
}

interface Around {
  readonly craft: CraftInUse;
  readonly outing: OutingView | null;
  readonly station: FoundStation | null;
  readonly clock: ZoneClock;
  /** Epoch milliseconds. */
  readonly now: number;
}

export function receiptOfNotBack(row: NotBackRow, { unitName }: CraftInUse): NotBackReceipt {
  const { id, version, craftId, openedAt, ended, incidentId, climbed } = row;
  return {
    id,
    version,
    craftId,
    unit: unitName,
    openedAt,
    ended,
    incidentId,
    climbed: climbed.map((one) => ({ id: one.id, rung: one.rung, stamp: one.stamp })),
  };
}

export function viewOfNotBack(row: NotBackRow, { craft, outing, station, clock, now }: Around): NotBackView {
  const local = <T extends string | null>(at: T): T =>
    (at === null ? null : clock.format(Date.parse(at))) as T;
  const facts = { openedAt: Date.parse(row.openedAt), now, place: placeOf(station, clock, row.openedAt) };
  const limit = findNightLimit(facts);
  const { unitName, colours, type, registrationNumber, make, model, fuel } = craft;
  const waits = row.incidentId === null && row.notIncident === null;
  return {
    ...receiptOfNotBack(row, craft),
    timeZone: clock.zone,
    openedAt: local(row.openedAt),
    openedBy: row.openedBy,
    craft: { unitName, colours, type, registrationNumber, make, model, fuel },
    outing,
    sheet: row.sheet,
    nightLimit: { ...limit, sunset: local(limit.sunset), civilDusk: local(limit.civilDusk) },
    ladder: planLadder(facts).map((rung) => ({
      ...rung,
      by: local(rung.by),
      until: local(rung.until),
      climbed: row.climbed.filter((one) => one.rung === rung.rung),
    })),
    endedAt: local(row.endedAt),
    endedBy: row.endedBy,
    endedHow: row.endedHow,
    notIncident: row.notIncident,
    notIncidentBy: row.notIncidentBy,
    proposesIncident: waits ? proposeIncident(row.ended) : null,
  };
}

function placeOf(station: FoundStation | null, clock: ZoneClock, openedAt: string) {
  const { latitude = null, longitude = null } = station ?? {};
  if (latitude === null || longitude === null) return null;
  return { latitude, longitude, utcOffsetMinutes: offsetMinutes(clock.format(Date.parse(openedAt))) };
}

/** `offsetMinutes('2026-06-13T14:30:00-05:00')` is -300. */
function offsetMinutes(formatted: string): number {
  const found = /([+-])(\d{2}):(\d{2})$/.exec(formatted);
  if (found === null) return 0;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === '-' ? -minutes : minutes;
}
