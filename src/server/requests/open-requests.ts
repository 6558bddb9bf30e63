import { Injectable } from '@nestjs/common';
import { concerned, type Days, type LegalRequest, wantsDays } from '../../../shared/record/legal-request.js';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';

/** The open requests that want something, for whoever is about to delete it. */
@Injectable()
export class OpenRequests {
  constructor(private readonly requests: LegalRequestsRepository) {}

  /** Those that concern an incident, and those of which nobody knows yet which incidents they concern. */
  async concerning(incidentId: string): Promise<LegalRequest[]> {
    return (await this.all()).filter((request) => {
      const named = concerned(request);
      return named.length === 0 || named.some(({ incident }) => incident === incidentId);
    });
  }

  /**
   * Those that may want what belongs to no incident, such as the rental data of outings.
   * @param days of which it is; null where nobody knows
   */
  async wantingDays(days: Days | null): Promise<LegalRequest[]> {
    return (await this.all()).filter((request) => wantsDays(request, days));
  }

  private async all(): Promise<LegalRequest[]> {
    return (await this.requests.open()).map(({ request }) => request);
  }
}
