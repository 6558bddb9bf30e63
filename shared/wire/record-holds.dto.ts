import { Needed, Value } from './record-members.js';
import { reason } from './record-requests.dto.js';
import { day, id, line } from './record-values.js';

/** Lets counsel read an incident. */
export class AssignCounselDto {
  /** Id of an account of the role counsel. */
  @Needed(line)
  account: string;
}

/** Starts a hold by hand. */
export class StartHoldDto {
  @Needed(reason)
  reason: string;
}

/** Names somebody who keeps things that bear on the incident: an account, or a name where there is none. */
export class NameCustodianDto {
  @Value(line)
  account?: string;

  @Value(line)
  name?: string;
}

/** One's own acknowledgement; a manager enters that of somebody without an account. */
export class AcknowledgeHoldDto {
  @Value(id)
  custodian?: string;
}

/** That counsel released a hold: who, when and why, without their advice. */
export class ReleaseHoldDto {
  @Needed(line)
  counsel: string;

  @Needed(day)
  releasedOn: string;

  @Needed(reason)
  reason: string;
}
