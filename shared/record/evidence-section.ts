import type { EvidenceKind } from './evidence-kind.js';
import type { Shot } from './shots.js';

/** What a camera wrote into its picture. Nothing of it is taken into the record by itself: it only makes questions. */
export interface Captured {
  /** By the camera's own clock: `2026-06-13T14:02:00`, in whatever zone that was set to. */
  local?: string;
  /** `-05:00`, where the camera wrote one. */
  offset?: string;
  /** Degrees, WGS 84, north and east positive. */
  latitude?: number;
  longitude?: number;
}

/** Who took content out of the evidence, when and why; hash and size stay where they are. */
export interface EvidenceWithdrawal {
  /** RFC 3339. */
  at: string;
  by: string;
  reason: string;
  /** The lawyer who directed it, and the day of the calendar; needed while a hold is on. */
  counsel?: string;
  directedOn?: string;
}

/** What people say about a file. */
export interface EvidenceWords {
  /** What it shows. */
  caption?: string;
  takenBy?: string;
  /** Ids of the people it shows; an empty list says that it shows nobody, an absent one that nobody said. */
  people?: string[];
  /** Ids of the craft it shows. */
  craft?: string[];
  /** Which picture of the list for a craft it is. */
  shot?: Shot;
  /** Id of the statement that it is the original of. */
  statement?: string;
  /** Whether only managers, administrators and counsel see it. Absent: it follows from what it shows. */
  restricted?: boolean;
}

/** One photograph, video, recording or document, kept byte for byte as it came. */
export interface EvidenceFile {
  id: string;
  /** 1 when it arrived, one more with each change of the words about it. */
  version: number;
  kind: EvidenceKind;
  /** Media type by content. */
  type: string;
  /** Media type that the device said; compared, never believed. */
  declaredType?: string;
  /** What it was called where it came from. */
  name?: string;
  /** Bytes. */
  size: number;
  /** SHA-256 of the original, 64 hexadecimal digits. */
  sha256: string;
  /** RFC 3339. */
  receivedAt: string;
  receivedFrom: string;
  about: EvidenceWords;
  captured?: Captured;
  withdrawn?: EvidenceWithdrawal;
}

export interface EvidenceSection {
  files?: EvidenceFile[];
}

/** A thing that changed hands. */
export interface HandOver {
  id: string;
  from: string;
  to: string;
  /** RFC 3339. */
  at: string;
  why: string;
  /** Number on the seal, or what it looks like. */
  seal?: string;
  keptWhere?: string;
}

/** A thing kept as evidence: a life jacket, a lanyard, a fuel hose. */
export interface CustodyItem {
  id: string;
  version: number;
  what: string;
  foundWhere?: string;
  /** RFC 3339. */
  foundAt?: string;
  foundBy?: string;
  keptWhere?: string;
  seal?: string;
  /** Ids of photographs of it, taken before it was moved. */
  photographs?: string[];
  /** In the order in which they were entered. */
  handOvers?: HandOver[];
}

export interface CustodySection {
  items?: CustodyItem[];
}

export const OUTSIDE_KINDS = [
  'dock-camera',
  'craft-tracker',
  'engine-computer',
  'radio-recording',
  'phone-recording',
  'emergency-call-audio',
  'weather',
  'water-level',
  'posted-video',
  'other',
] as const;

export type OutsideKind = (typeof OUTSIDE_KINDS)[number];

export const OUTSIDE_STATES = ['not-asked', 'asked', 'promised', 'received', 'refused', 'gone'] as const;

export type OutsideState = (typeof OUTSIDE_STATES)[number];

/** Evidence that somebody else holds and may soon lose. */
export interface OutsideEvidence {
  id: string;
  version: number;
  kind: OutsideKind;
  what?: string;
  holder?: string;
  howToReach?: string;
  /** RFC 3339: from then on it may be gone. */
  overwrittenAt?: string;
  /** RFC 3339. */
  askedAt?: string;
  askedBy?: string;
  answer?: string;
  state: OutsideState;
  /** Of what somebody posted: where, from which account, when and by whom it was seen. */
  address?: string;
  account?: string;
  seenAt?: string;
  finder?: string;
  /** Ids of the files that came of it. */
  files?: string[];
}

export interface OutsideEvidenceSection {
  items?: OutsideEvidence[];
}
