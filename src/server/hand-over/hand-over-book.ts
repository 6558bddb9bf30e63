import { Injectable } from '@nestjs/common';
import type { SignedBy } from '../../../shared/decision/decision.js';
import type { Recipient } from '../../../shared/hand-over/hand-over-profile.js';
import type { Unstamped } from '../../../shared/hand-over/packet.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';
import type { Actor } from '../accounts/accounts.api.js';
import { ServiceSections } from '../record/record.api.js';
import type { KeptStamp } from './time-stamp/time-stamps.js';

/** Something that left although the profile keeps it. */
export interface Override {
  id: string;
  what: string;
  reason: string;
}

/** A text that left and may tell what the profile keeps; whether the sender said to have read it. */
export interface KeptCaution {
  id: string;
  what: string;
  tells: string;
  read: boolean;
}

/** That somebody outside has the packet, and with it the head of the log. */
export interface Delivery {
  id: string;
  to: string;
  way: string;
  /** RFC 3339. */
  at: string;
  by: SignedBy;
}

/** That somebody took the archive out of the desk. */
export interface Look {
  id: string;
  /** RFC 3339. */
  at: string;
  by: SignedBy;
}

export interface Deleted {
  /** RFC 3339. */
  at: string;
  by: string;
}

/** A packet that was made; what is in it never changes. */
export interface KeptPacket {
  id: string;
  /** What its own papers call it, and where its files are kept. */
  number: string;
  recipient: Recipient;
  name: string;
  purpose: string;
  /** RFC 3339. */
  madeAt: string;
  by: SignedBy;
  head: LogHead;
  /** SHA-256 of its manifest, and its bytes. */
  manifest: string;
  manifestSize: number;
  files: number;
  /** It holds notes that a lawyer asked for. */
  privileged: boolean;
  /** When and by whom its files were deleted, once they had been kept long enough. */
  deleted?: Deleted;
  overrides: Override[];
  /** Of its head, and why there is none where one was asked for. */
  stamp?: KeptStamp;
  unstamped?: Unstamped;
  /** Absent in packets made before it was looked for. */
  cautions?: KeptCaution[];
  deliveries: Delivery[];
  looks: Look[];
}

/** One page for an insurer, kept as it was made. */
export interface KeptNotice {
  id: string;
  /** What its own paper calls it, and where that is kept. */
  number: string;
  /** Id of the policy, with its number and insurer as they were then. */
  policy: string;
  policyNumber: string;
  insurer: string;
  /** Where the craft can be seen, and whom to call. */
  seenAt: string;
  callName: string;
  callNumber: string;
  /** RFC 3339. */
  madeAt: string;
  by: SignedBy;
  /** SHA-256 of the paper, and its bytes. */
  sha256: string;
  size: number;
  deleted?: Deleted;
}

/** What the insurer said its file is called, and who works on it; a later one of a policy takes the place of an earlier. */
export interface KeptClaim {
  id: string;
  policy: string;
  number?: string;
  adjuster?: string;
  phone?: string;
  mail?: string;
  /** RFC 3339. */
  at: string;
  by: SignedBy;
}

/** A link by which somebody without an account collects a packet; of its secrets nothing stands here. */
export interface KeptLink {
  id: string;
  packet: string;
  to: string;
  /** Where the mail went. */
  address: string;
  /** RFC 3339, as all of these. */
  expiresAt: string;
  at: string;
  by: SignedBy;
  /** Account of the lawyer for whom alone it opens, where it holds notes that a lawyer asked for. */
  counselAccount?: string;
  /** Whether its mail holds the head of the packet's log. */
  head?: 'yes' | 'no';
  revoked?: { at: string; by: SignedBy };
}

/**
 * That the mail server of the sender took a mail with the head of a packet. Whether it came to anybody, the desk does not
 * know: it is weaker than a delivery.
 */
export interface KeptMailing {
  id: string;
  link: string;
  packet: string;
  to: string;
  address: string;
  /** RFC 3339. */
  at: string;
  /** What that server answered, such as the number under which it has the mail. */
  answer: string;
}

export const COLLECTED = ['looked', 'download-began', 'downloaded', 'locked'] as const;

/** Something that happened at a link. */
export interface KeptCollection {
  id: string;
  link: string;
  packet: string;
  /** RFC 3339. */
  at: string;
  what: (typeof COLLECTED)[number];
}

export interface HandOversSection {
  mailings?: KeptMailing[];
  links?: KeptLink[];
  collections?: KeptCollection[];
  packets?: KeptPacket[];
  notices?: KeptNotice[];
  claims?: KeptClaim[];
}

/** What left the house about an incident, in the record's own log. */
@Injectable()
export class HandOverBook {
  constructor(private readonly sections: ServiceSections) {}

  async read(incidentId: string): Promise<KeptPacket[]> {
    return (await this.section(incidentId)).packets ?? [];
  }

  section(incidentId: string): Promise<HandOversSection> {
    return this.sections.read<HandOversSection>(incidentId, 'hand-overs');
  }

  /** Within `ServiceSections.run`. */
  write(incidentId: string, packets: readonly KeptPacket[], actor: Actor): Promise<void> {
    return this.writePart(incidentId, { packets: [...packets] }, actor);
  }

  /** Writes some lists of the section and leaves the others as they are. Within `ServiceSections.run`. */
  async writePart(incidentId: string, part: HandOversSection, actor: Actor): Promise<void> {
    const before = await this.section(incidentId);
    await this.sections.write(incidentId, 'hand-overs', { ...before, ...part }, actor);
  }
}
