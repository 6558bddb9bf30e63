import { Entity, Index, Unique } from 'typeorm';
import { MAIL_STATES, type MailState } from '../../../../shared/kernel/mail-state.js';
import { CARRIERS, type CarrierKind, MAIL_DECISIONS, type MailDecision } from '../mail/mail-words.js';
import {
  ChoiceColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  ReferenceColumn,
  TextColumn,
} from './columns.js';

@Entity('mail')
@Unique(['causeKey'])
@Index(['state', 'nextTryAt'])
@Index(['toAddress', 'state'])
@Index(['incidentId'])
export class MailRow {
  /** In the order in which mails were queued. */
  @IdColumn() id: string;
  /** The same cause never queues twice. */
  @TextColumn() causeKey: string;
  @TextColumn() messageId: string;
  @TextColumn() purpose: string;
  @TextColumn({ nullable: true }) incidentId: string | null;
  @TextColumn() toAddress: string;
  @TextColumn() subject: string;
  @TextColumn() body: string;
  @ChoiceColumn(MAIL_STATES) state: MailState;
  @IntegerColumn() version: number;
  /** Since it was queued, or since a person had it sent again. */
  @IntegerColumn() tries: number;
  @InstantColumn() nextTryAt: string;
  @ChoiceColumn(CARRIERS, { nullable: true }) carrier: CarrierKind | null;
  /** By when the try under way has ended, whatever comes of it. */
  @InstantColumn({ nullable: true }) claimedUntil: string | null;
  /** What the server, or the folder, said last. */
  @TextColumn({ nullable: true }) words: string | null;
  @InstantColumn() queuedAt: string;
  @InstantColumn() changedAt: string;
}

/** Only ever added: who decided what about a mail, and why. */
@Entity('mail_decision')
@Index(['mailId'])
export class MailDecisionRow {
  @IdColumn() id: string;
  @ReferenceColumn('mail') mailId: string;
  @ChoiceColumn(MAIL_DECISIONS) decision: MailDecision;
  @TextColumn() reason: string;
  /** What it was before. */
  @ChoiceColumn(MAIL_STATES) stateBefore: MailState;
  @TextColumn({ nullable: true }) wordsBefore: string | null;
  @TextColumn() person: string;
  @TextColumn() accountId: string;
  @InstantColumn() decidedAt: string;
}
