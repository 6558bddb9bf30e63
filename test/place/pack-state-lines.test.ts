import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packStateLines, unpackStateLines } from '../../shared/place/pack-state-lines.js';
import { STATE_NAMES } from '../../shared/place/state-codes.js';
import { stateLinesFromTopology, type StatesTopology } from '../../shared/place/state-lines-from-topology.js';
import { prepareStateLines } from '../../src/build/prepare-state-lines.js';

const atlas = createRequire(import.meta.url)('us-atlas/states-10m.json') as StatesTopology;
const lines = stateLinesFromTopology(atlas);

describe('prepared state lines', () => {
  it('names every state and territory once', () => {
    expect([...lines.states].sort()).toEqual(Object.keys(STATE_NAMES).sort());
  });

  it('come back from their bytes as they were, wherever the bytes lie in memory', () => {
    const packed = packStateLines(lines);
    expect(unpackStateLines(packed)).toEqual(lines);
    const shifted = new Uint8Array(packed.length + 3);
    shifted.set(packed, 3);
    expect(unpackStateLines(shifted.subarray(3))).toEqual(lines);
  });

  it('are refused when bytes are missing or left over', () => {
    const packed = packStateLines(lines);
    expect(() => unpackStateLines(packed.subarray(0, packed.length - 1))).toThrow(RangeError);
    expect(() => unpackStateLines(packed.subarray(0, 5))).toThrow(RangeError);
    expect(() => unpackStateLines(Uint8Array.from([...packed, 0]))).toThrow(RangeError);
  });

  it('are written by the build under dist/data, smaller than 200 kB', () => {
    const root = mkdtempSync(join(tmpdir(), 'state-lines-'));
    try {
      prepareStateLines(root);
      const file = join(root, 'dist', 'data', 'state-lines.bin');
      expect(unpackStateLines(readFileSync(file))).toEqual(lines);
      expect(statSync(file).size).toBeLessThan(200_000);
    } finally {
      rmSync(root, { recursive: true });
    }
  });

  it('are not made from a boundary file with a name that is not a state', () => {
    const [first, ...others] = atlas.objects.states.geometries;
    if (first === undefined) throw new Error('no outlines');
    const geometries = [{ ...first, properties: { name: 'Atlantis' } }, ...others];
    expect(() => stateLinesFromTopology({ ...atlas, objects: { states: { geometries } } })).toThrow(
      'Atlantis',
    );
  });
});
