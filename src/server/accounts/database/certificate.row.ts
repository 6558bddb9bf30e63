import { Entity, Index } from 'typeorm';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

@Entity('certificate')
@Index(['accountId'])
export class CertificateRow {
  @IdColumn() id: string;
  @ReferenceColumn('account') accountId: string;
  @TextColumn() title: string;
  @TextColumn({ nullable: true }) number: string | null;
  @DayColumn({ nullable: true }) issuedOn: string | null;
  @DayColumn({ nullable: true }) expiresOn: string | null;
  @ReferenceColumn('account') writtenBy: string;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
  @InstantColumn({ nullable: true }) withdrawnAt: string | null;
}
