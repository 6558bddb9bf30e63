import { MAIL_STATES, type MailState } from '../kernel/mail-state.js';
import { LinesFact } from './accounts-facts.js';
import { MayBeAbsent, OneOf } from './declare-fact.js';
import { PageQueryDto } from './page-query.dto.js';

const LONGEST_REASON = 1000;

/** Which mails are asked for; newest first. */
export class MailQueryDto extends PageQueryDto {
  @MayBeAbsent()
  @OneOf(MAIL_STATES)
  state?: MailState;
}

/** Why somebody has a mail sent again, or says that it arrived. */
export class MailDecisionDto {
  @LinesFact('the reason', LONGEST_REASON)
  reason: string;
}
