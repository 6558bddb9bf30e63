import { STATE_NAMES } from './state-codes.js';
import { NO_STATE, bandOf, type StateLines } from './state-lines.js';

/** What is read of the us-atlas package's boundary file: quantized TopoJSON whose neighbours share their arcs. */
export interface StatesTopology {
  transform: { scale: [number, number]; translate: [number, number] };
  /** Points of each arc in steps, each but the first counted from the one before. */
  arcs: number[][][];
  objects: { states: { geometries: StateOutline[] } };
}

interface StateOutline {
  properties: { name: string };
  /** Arc numbers, ring by ring (and polygon by polygon); `~n` is arc n run backwards. */
  arcs: (number | number[])[][];
}

/**
 * Keeps of a boundary file what finding states needs: each line once, with the states on its sides.
 * Throws on a name that is not a state's: another edition of the data must stop the build, not lose a state.
 * @example stateLinesFromTopology(atlas).states.length // 56
 */
export function stateLinesFromTopology(topology: StatesTopology): StateLines {
  const outlines = topology.objects.states.geometries;
  const states = outlines.map(({ properties }) => codeOfName(properties.name));
  const sides = sidesOfArcs(topology);
  const { scale, translate } = topology.transform;
  const longitude: number[] = [];
  const latitude: number[] = [];
  const oneSide: number[] = [];
  const otherSide: number[] = [];
  topology.arcs.forEach((arc, number) => {
    const [one = NO_STATE, other = NO_STATE] = sides[number] ?? [];
    let [x, y] = [0, 0];
    arc.forEach(([stepX = 0, stepY = 0], at) => {
      [x, y] = [x + stepX, y + stepY];
      longitude.push(x * scale[0] + translate[0]);
      latitude.push(y * scale[1] + translate[1]);
      const last = at === arc.length - 1;
      oneSide.push(last ? NO_STATE : one);
      otherSide.push(last ? NO_STATE : other);
    });
  });
  return {
    states,
    longitude: Float32Array.from(longitude),
    latitude: Float32Array.from(latitude),
    oneSide: Uint8Array.from(oneSide),
    otherSide: Uint8Array.from(otherSide),
    ...sortIntoBands(Float32Array.from(latitude), oneSide),
  };
}

/** The states that each arc bounds. One that a state runs along twice (there and back) does not bound it. */
function sidesOfArcs({ arcs, objects }: StatesTopology): number[][] {
  const sides = arcs.map(() => new Set<number>());
  objects.states.geometries.forEach((outline, state) => {
    for (const arc of outline.arcs.flat(2)) {
      const side = sides[arc < 0 ? ~arc : arc];
      if (side?.delete(state) === false) side.add(state);
    }
  });
  return sides.map((side) => [...side]);
}

function sortIntoBands(
  latitude: Float32Array,
  oneSide: readonly number[],
): Pick<StateLines, 'bandStart' | 'segments'> {
  const bands: number[][] = [];
  oneSide.forEach((state, segment) => {
    if (state === NO_STATE) return;
    const from = bandOf(latitude[segment] ?? 0);
    const to = bandOf(latitude[segment + 1] ?? 0);
    for (let band = Math.min(from, to); band <= Math.max(from, to); band += 1) {
      (bands[band] ??= []).push(segment);
    }
  });
  const bandStart = [0];
  const segments: number[] = [];
  for (const band of bands) {
    segments.push(...(band ?? []));
    bandStart.push(segments.length);
  }
  return { bandStart: Uint32Array.from(bandStart), segments: Uint16Array.from(segments) };
}

function codeOfName(name: string): string {
  const entry = Object.entries(STATE_NAMES).find(([, known]) => known === name);
  if (entry === undefined) throw new Error(`The boundary file names an unknown state: ${name}.`);
  return entry[0];
}
