import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** SHA-256 of something that arrives in pieces and is never whole in memory. */
export interface RunningSha256 {
  readonly add: (piece: Uint8Array) => void;
  /** 64 lower-case hex digits; nothing can be added afterwards. */
  readonly hex: () => string;
}

/** `startSha256().hex()` is that of nothing: `'e3b0c442…'`. */
export function startSha256(): RunningSha256 {
  const running = sha256.create();
  return {
    add: (piece) => void running.update(piece),
    hex: () => bytesToHex(running.digest()),
  };
}
