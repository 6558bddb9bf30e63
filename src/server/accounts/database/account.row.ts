import { Entity, Unique } from 'typeorm';
import { type Role, ROLES } from '../../../../shared/kernel/role.js';
import {
  ChoiceColumn,
  FlagColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  TextColumn,
} from '../../platform/database/columns.js';

@Entity('account')
@Unique(['signInKey'])
export class AccountRow {
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn() signInName: string;
  /** The sign-in name as it is compared. */
  @TextColumn() signInKey: string;
  @ChoiceColumn(ROLES) role: Role;
  @TextColumn({ nullable: true }) address: string | null;
  @FlagColumn() active: boolean;
  @TextColumn({ hidden: true }) passwordHash: string;
  /** The password was given by somebody else: nothing goes before a new one. */
  @FlagColumn() passwordDue: boolean;
  @InstantColumn({ nullable: true }) passwordExpiresAt: string | null;
  @TextColumn({ nullable: true, hidden: true }) pinHash: string | null;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
}
