import { Entity } from 'typeorm';
import { InstantColumn, TextColumn } from './columns.js';

/** That a create was done, under which key, and what came of it. It holds nothing of what was sent. */
@Entity('create_once')
export class CreateOnceRow {
  @TextColumn({ primary: true }) operation: string;
  @TextColumn({ primary: true }) idempotencyKey: string;
  @TextColumn() createdId: string;
  @TextColumn() salt: string;
  @TextColumn() fingerprint: string;
  @InstantColumn() createdAt: string;
}
