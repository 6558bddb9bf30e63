import type { Method } from '../ask/ask.js';
import type { Problem } from '../ask/ask-error.js';

/** How far a queued thing has come; what was sent is no longer in the outbox. */
export type SendState = 'waiting' | 'sending' | 'conflict' | 'refused';

interface Queued {
  /** In the order in which it was queued. */
  readonly id: string;
  /** What belongs together, such as the id of an incident: where what opens it was refused, the rest waits. */
  readonly line: string;
  /** What it is, for people: `Call, PWC 7`. */
  readonly about: string;
  /** Account of the person who wrote it; null where nobody was signed in on an enrolled device. */
  readonly by: string | null;
  readonly queuedAt: string;
  /** The same on each try, so that it is done once. */
  readonly key: string;
  readonly state: SendState;
  /** Why the service did not take it; for a conflict with both versions. */
  readonly problem?: Problem;
}

/** A change that is sent as JSON. */
export interface QueuedRequest extends Queued {
  readonly kind: 'request';
  readonly method: Method;
  readonly path: string;
  readonly body?: unknown;
  /** The version that it was made on. */
  readonly version?: number;
  /** The item whose answer tells the version that this one is made on. */
  readonly follows?: string;
  /**
   * What is sent in its place once it has arrived, `{id}` in the path being the id of the answer: it was taken back while
   * it was on its way, and whether it had arrived by then nobody knew.
   */
  readonly andThen?: Pick<QueuedRequest, 'about' | 'method' | 'path' | 'body'>;
  /** It makes the thing that the others of its line add to. */
  readonly opens?: boolean;
}

/** A photograph, recording or document; its bytes lie in the drawer `files` under the item's id. */
export interface QueuedFile extends Queued {
  readonly kind: 'file';
  readonly incident: string;
  readonly name: string;
  readonly size: number;
  /** SHA-256 of the bytes, in hexadecimal. */
  readonly sha256: string;
  /** What is said about it, as `about` of the upload: `{ caption }`. */
  readonly words?: object;
}

export type QueuedItem = QueuedRequest | QueuedFile;
