import { InstantColumn, TextColumn } from '../../platform/database/columns.js';

/**
 * Who did it, on which device, and when we wrote it down. Names as they were then: what was done stays readable when
 * an account is renamed or closed.
 */
export abstract class ByRow {
  @TextColumn() person: string;
  @TextColumn({ nullable: true }) accountId: string | null;
  @TextColumn({ nullable: true }) role: string | null;
  @TextColumn({ nullable: true }) device: string | null;
  @TextColumn({ nullable: true }) deviceId: string | null;
  @InstantColumn() recordedAt: string;
}
