import { unpackStateLines } from '../../../shared/place/pack-state-lines.js';
import type { StateLines } from '../../../shared/place/state-lines.js';

let loading: Promise<StateLines> | undefined;

/**
 * The lines of the states as the build prepared them (115 kB compressed), once for whoever asks.
 * @throws TypeError where there is no signal and this device has not kept them
 */
export function loadStateLines(): Promise<StateLines> {
  loading ??= fetchStateLines().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function fetchStateLines(): Promise<StateLines> {
  const response = await fetch('/data/state-lines.bin');
  if (!response.ok) throw new TypeError(`State lines: ${response.status}`);
  return unpackStateLines(new Uint8Array(await response.arrayBuffer()));
}
