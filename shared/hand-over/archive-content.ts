import { Writer } from '@zip.js/zip.js/lib/zip-core-native.js';
import type { RunningSha256 } from '../proof/start-sha256.js';

/** No record is so long; a longer one would only fill the memory of whoever checks it. */
const LONGEST_TEXT_BYTES = 64 * 1024 * 1024;

/** There in browser and Node.js alike; this room is compiled with the types of neither. */
declare const TextDecoder: new () => { decode(bytes: Uint8Array): string };

/** What one file of an archive holds, hashed as it comes; held only where it is text that is read. */
export class ArchiveContent extends Writer<undefined> {
  bytes = 0;
  private readonly pieces: Uint8Array[] = [];

  constructor(
    private readonly hash: RunningSha256,
    private readonly hold: boolean,
    private readonly tell: (bytes: number) => void,
  ) {
    super();
  }

  override writeUint8Array(piece: Uint8Array): Promise<void> {
    this.hash.add(piece);
    this.bytes += piece.length;
    if (this.hold && this.bytes <= LONGEST_TEXT_BYTES) this.pieces.push(piece.slice());
    this.tell(piece.length);
    return Promise.resolve();
  }

  override getData(): Promise<undefined> {
    return Promise.resolve(undefined);
  }

  /** 64 hexadecimal digits; once, at the end. */
  sha256(): string {
    return this.hash.hex();
  }

  text(): string {
    const whole = new Uint8Array(this.pieces.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const piece of this.pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return new TextDecoder().decode(whole);
  }
}
