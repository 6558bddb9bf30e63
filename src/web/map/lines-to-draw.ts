import { NO_STATE, type StateLines } from '../../../shared/place/state-lines.js';

type LatLng = [latitude: number, longitude: number];

/** The lines of the states as runs of points: a segment that belongs to no state parts two of them. */
export function linesToDraw({ latitude, longitude, oneSide, otherSide }: StateLines): LatLng[][] {
  const runs: LatLng[][] = [];
  let run: LatLng[] = [];
  for (let at = 0; at < latitude.length; at += 1) {
    run.push([latitude[at] ?? 0, longitude[at] ?? 0]);
    if (oneSide[at] !== NO_STATE || otherSide[at] !== NO_STATE) continue;
    if (run.length > 1) runs.push(run);
    run = [];
  }
  if (run.length > 1) runs.push(run);
  return runs;
}
