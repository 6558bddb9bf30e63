import { Entity, Index, Unique } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/**
 * What opens a packet for somebody without an account. To whom it went, and every look, stands in the record's own log;
 * here is only what a try is held against, and of secrets only hashes.
 */
@Entity('packet_link')
@Unique(['tokenHash'])
@Index(['incidentId'])
export class PacketLinkRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  @TextColumn() packetId: string;
  /** SHA-256 of 256 bits by chance. */
  @TextColumn() tokenHash: string;
  /** argon2id; of a link for counsel, of a passcode that nobody was told. */
  @TextColumn() passcodeHash: string;
  /** The account of counsel that alone opens it, signed in; null where the passcode does. */
  @TextColumn({ nullable: true }) counselAccount: string | null;
  @IntegerColumn() triesLeft: number;
  @InstantColumn() expiresAt: string;
  /** `revoked` or `locked`; null while it opens. */
  @TextColumn({ nullable: true }) closed: 'revoked' | 'locked' | null;
  /** Whoever gave the passcode may download until then; SHA-256. */
  @TextColumn({ nullable: true }) permitHash: string | null;
  @InstantColumn({ nullable: true }) permitUntil: string | null;
}

export const HAND_OVER_ROWS = [PacketLinkRow];
