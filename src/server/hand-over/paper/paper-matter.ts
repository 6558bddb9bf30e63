import type { Profile } from '../../../../shared/hand-over/hand-over-profile.js';
import type { Manifest, ManifestFile } from '../../../../shared/hand-over/packet.js';
import type { PacketPlan } from '../plan-packet.js';
import type { PaperImage } from './blocks.js';

/** All that the paper of a packet is made from: what the plan lets leave, and never the record itself. */
export interface PaperMatter {
  readonly about: Omit<Manifest, 'files'>;
  readonly plan: Pick<PacketPlan, 'record' | 'withheld' | 'fields' | 'files' | 'others'>;
  readonly profile: Profile;
  /** Lines of the manifest about evidence that leaves. */
  readonly evidence: readonly ManifestFile[];
  /** Pictures as they leave, made small enough for paper, by the id of the evidence. */
  readonly pictures: ReadonlyMap<string, PaperImage>;
  /** IANA zone in which times are told: that of the place, or of the business. */
  readonly timeZone: string;
}

/**
 * Stands before the number of each page, so that a page that was taken out can be told which packet it is of.
 * @example pagePrefix({ reference: '2026-0042', packet: '7a2f0c9e-51de-…' }) // '2026-0042-7A2F0C9E'
 */
export function pagePrefix({ reference, packet }: Pick<Manifest, 'reference' | 'packet'>): string {
  return `${reference}-${packet.slice(0, 8).toUpperCase()}`;
}
