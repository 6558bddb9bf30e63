import { Injectable } from '@nestjs/common';
import {
  type ClaimsClock,
  firstWrittenClaim,
  runClaimsClocks,
} from '../../../shared/follow-up/claims-clocks.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import { Clock } from '../platform/clock.js';
import { ClaimStartsRepository } from './database/claim-starts.repository.js';
import { FollowUpForms } from './follow-up-forms.js';

/** The claims clocks of incidents. A start that was once taken stays, whatever is said later. */
@Injectable()
export class ClaimsClocks {
  constructor(
    private readonly starts: ClaimStartsRepository,
    private readonly forms: FollowUpForms,
    private readonly clock: Clock,
  ) {}

  /** As they stand, without writing anything. */
  async read(incidentId: string, record: IncidentRecord, zone: string): Promise<ClaimsClock[]> {
    return this.run(record, firstWrittenClaim(record, await this.earliest(incidentId)), zone);
  }

  /** The same, within a unit of work that keeps a start which is earlier than any before. */
  async bringForward(incidentId: string, record: IncidentRecord, zone: string): Promise<ClaimsClock[]> {
    const earlier = await this.earliest(incidentId);
    const first = firstWrittenClaim(record, earlier);
    if (first !== null && first !== earlier) {
      await this.starts.add(incidentId, new Date(first).toISOString(), this.clock.now());
    }
    return this.run(record, first, zone);
  }

  private async earliest(incidentId: string): Promise<number | null> {
    const at = await this.starts.earliest(incidentId);
    return at === null ? null : Date.parse(at);
  }

  private run(record: IncidentRecord, firstClaim: number | null, zone: string): ClaimsClock[] {
    const occurredAt = Date.parse(whenItHappened(record).occurredAt);
    return runClaimsClocks(this.forms.clocks, { occurredAt, firstClaim, zone });
  }
}
