import type { Amendment } from '../proof/hash-amendment.js';
import type { LogHead } from '../proof/merkle-log.js';
import type { ShownValue } from '../proof/verify-amendment.js';
import type { Masking, Recipient } from './hand-over-profile.js';

/** Names of what is in every packet. */
export const PACKET_FILES = {
  readme: 'README.txt',
  record: 'record.json',
  schema: 'record.schema.json',
  withheld: 'withheld.json',
  proof: 'proof.json',
  profile: 'profile.json',
  timeStamp: 'time-stamp.tst',
  workbook: 'record.xlsx',
  paper: 'record.pdf',
  /** The hashes of the manifest in the form that `sha256sum -c` and its like read. */
  sums: 'sha256sums.txt',
  manifest: 'manifest.json',
} as const;

/** Where originals and copies of evidence lie in the archive. */
export const EVIDENCE_FOLDER = 'evidence/';

/** One line of how a file came here and what was done with it. */
export interface CustodyLine {
  /** RFC 3339. */
  readonly at: string;
  readonly by: string;
  readonly what: string;
}

export interface ManifestFile {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
  readonly sha256: string;
  /** Media type. */
  readonly type: string;
  /** Made for this packet, the original as it arrived, or a copy with something taken out of it. */
  readonly source: 'made' | 'original' | 'copy';
  /** The evidence that it is or was made of. */
  readonly evidence?: { readonly id: string; readonly sha256: string; readonly size: number };
  /** What a copy lacks. */
  readonly without?: string;
  readonly custody: readonly CustodyLine[];
}

export interface Manifest {
  readonly format: typeof MANIFEST_FORMAT;
  readonly packet: string;
  readonly reference: string;
  readonly recipient: { readonly kind: Recipient; readonly name: string };
  readonly purpose: string;
  /** RFC 3339. */
  readonly madeAt: string;
  readonly madeBy: string;
  readonly head: LogHead;
  /** Every file of the archive but this one. */
  readonly files: readonly ManifestFile[];
}

export const MANIFEST_FORMAT = 'incident-desk/packet-manifest/1';

/** An amendment with its place in the log and the values that are shown. */
export interface ProvenAmendment {
  readonly amendment: Amendment;
  readonly leafHash: string;
  /** Audit path to the head (RFC 6962, 2.1.1). */
  readonly path: readonly string[];
  readonly shown: readonly ShownValue[];
}

/** A head that left the house earlier: somebody outside received it, or it was mailed to them and may have arrived. */
export interface EarlierHead {
  readonly head: LogHead;
  /** Who has it, or to whom it was mailed, by the word of the sender. */
  readonly by: string;
  /** RFC 3339. */
  readonly at: string;
  /** Whether it is known to have arrived; received, where nothing is said. */
  readonly how?: 'received' | 'mailed';
}

/** The same with the proof that the log only grew since. */
export interface ReceivedHead extends EarlierHead {
  /** RFC 6962, 2.1.2. */
  readonly consistency: readonly string[];
}

/** A head with the statement of a time-stamping authority that it was there at that time (RFC 3161). */
export interface StampedHead {
  readonly head: LogHead;
  /** The token in DER, as hex. */
  readonly token: string;
  /** RFC 6962, 2.1.2. */
  readonly consistency: readonly string[];
}

/** Why there is no time stamp although one was asked for: no answer came, it was refused, or what came did not fit. */
export const UNSTAMPED = ['no-answer', 'refused', 'unfit'] as const;
export type Unstamped = (typeof UNSTAMPED)[number];

export interface PacketProof {
  readonly format: typeof PROOF_FORMAT;
  readonly head: LogHead;
  readonly received: readonly ReceivedHead[];
  /** That of this packet last, where it has one. */
  readonly stamped?: readonly StampedHead[];
  readonly unstamped?: Unstamped;
  readonly amendments: readonly ProvenAmendment[];
}

export const PROOF_FORMAT = 'incident-desk/packet-proof/1';

export interface Withheld {
  readonly format: typeof WITHHELD_FORMAT;
  /** Fields that are there and tell less than the record. */
  readonly masked: readonly {
    readonly section: string;
    readonly path: string;
    readonly how: Masking;
    readonly reason: string;
  }[];
  /** What is not there, by kind, with how many of it. */
  readonly withheld: readonly {
    readonly kind: string;
    readonly what: string;
    readonly count: number;
    readonly reason: string;
  }[];
}

export const WITHHELD_FORMAT = 'incident-desk/packet-withheld/1';

/** `record.json`: the record as far as it leaves. */
export interface PacketRecord {
  readonly format: 'incident-desk/packet-record/1';
  readonly reference: string;
  readonly asOf: string;
  readonly recipient: Recipient;
  readonly timeZone: string;
  readonly cautions: readonly string[];
  readonly sections: Readonly<Record<string, object>>;
  readonly attachments: Readonly<Record<string, object>>;
}
