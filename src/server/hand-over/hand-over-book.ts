import { Injectable } from '@nestjs/common';
import type { SignedBy } from '../../../shared/decision/decision.js';
import type { Recipient } from '../../../shared/hand-over/hand-over-profile.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';
import type { Actor } from '../accounts/accounts.api.js';
import { ServiceSections } from '../record/record.api.js';

/** Something that left although the profile keeps it. */
export interface Override {
  id: string;
  what: string;
  reason: string;
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
  overrides: Override[];
  deliveries: Delivery[];
  looks: Look[];
}

interface HandOversSection {
  packets: KeptPacket[];
}

/** What left the house about an incident, in the record's own log. */
@Injectable()
export class HandOverBook {
  constructor(private readonly sections: ServiceSections) {}

  async read(incidentId: string): Promise<KeptPacket[]> {
    return (await this.sections.read<HandOversSection>(incidentId, 'hand-overs')).packets ?? [];
  }

  /** Within `ServiceSections.run`. */
  write(incidentId: string, packets: readonly KeptPacket[], actor: Actor): Promise<void> {
    return this.sections.write(incidentId, 'hand-overs', { packets }, actor);
  }
}
