import {
  findNightLimit,
  type LadderRung,
  type NightLimit,
  planLadder,
} from '../../../shared/outing/plan-ladder.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { type Asked, useAsk } from '../ask/use-ask.js';
import { type ChoiceStation, useChoices } from '../call/use-choices.js';
import { useOutbox } from '../device/outbox.js';
import { ownZone } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import type { NotBackReceipt, NotBackView } from './not-back-answers.js';
import { climbedWith, notBackPath, type ShownStamp } from './not-back-queue.js';
import { useReceipt } from './receipts.js';
import type { CraftWhere, WhereAnswer } from './service-answers.js';

export interface NotBackHere {
  /** The whole of it; undefined on a device, and without signal where it was never seen. */
  readonly view: NotBackView | undefined;
  readonly known: NotBackReceipt;
  /** What the list says of the craft, where there is no view. */
  readonly listed: CraftWhere | undefined;
  readonly climbed: readonly ShownStamp[];
  readonly ladder: readonly LadderRung[];
  readonly limit: NightLimit;
  readonly zone: string;
  readonly stations: readonly ChoiceStation[];
}

/** A search with what waits on this device; `here` is undefined while nothing is known of it. */
export function useNotBack(id: string): Pick<Asked<unknown>, 'error' | 'loading' | 'keptAt' | 'again'> & {
  readonly here: NotBackHere | undefined;
} {
  const { me } = useSession();
  const asked = useAsk<NotBackView>(me === null ? null : notBackPath(id), { keep: true });
  const list = useAsk<WhereAnswer>(me === null ? null : '/api/outings', { keep: true });
  const receipt = useReceipt<NotBackReceipt>(id);
  const { stations } = useChoices();
  const waiting = useOutbox(id);
  const now = useNow();
  const view = asked.data;
  const known = view ?? receipt;
  const rest = { error: asked.error, loading: asked.loading, keptAt: asked.keptAt, again: asked.again };
  if (known === undefined) return { ...rest, here: undefined };
  const facts = { openedAt: Date.parse(known.openedAt), now, place: placeOf(stations, known.openedAt) };
  return {
    ...rest,
    here: {
      view,
      known,
      listed: list.data?.items.find(({ unitName }) => unitName === known.unit),
      climbed: climbedWith(view?.ladder.flatMap(({ climbed }) => climbed) ?? known.climbed, waiting),
      ladder: view?.ladder ?? planLadder(facts),
      limit: view?.nightLimit ?? findNightLimit(facts),
      zone: view?.timeZone ?? stations[0]?.timeZone ?? ownZone(),
      stations,
    },
  };
}

/** Where there is one station, its position; a device does not know from which of several a craft goes. */
function placeOf(stations: readonly ChoiceStation[], openedAt: string) {
  const [station, ...others] = stations;
  if (station === undefined || others.length > 0) return null;
  const { latitude, longitude, timeZone } = station;
  if (latitude === null || longitude === null) return null;
  const local = zoneClock(timeZone).format(Date.parse(openedAt));
  // The wall clock read as UTC, less the instant: how far the clock is from UTC.
  const utcOffsetMinutes = Math.round((Date.parse(`${local.slice(0, 19)}Z`) - Date.parse(local)) / 60_000);
  return { latitude, longitude, utcOffsetMinutes };
}
