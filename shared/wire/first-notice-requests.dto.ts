import { mail, phone, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';

/** What a first notice says beside the record: which policy, where the craft can be seen, whom to call. */
export class FirstNoticeDto {
  /** Id of the policy. */
  @Needed(uuid)
  policy: string;

  @Needed(words('where the craft can be seen', 200))
  seenAt: string;

  @Needed(words('whom to call, by name', 120))
  callName: string;

  @Needed(phone)
  callNumber: string;
}

/** What the insurer calls its own file, and who works on it. */
export class ClaimDto {
  /** Id of the policy. */
  @Needed(uuid)
  policy: string;

  @Value(words('the number that the insurer gave', 80))
  number?: string;

  @Value(words('the adjuster, by name', 120))
  adjuster?: string;

  @Value(phone)
  phone?: string;

  @Value(mail)
  mail?: string;
}
