import { Injectable } from '@nestjs/common';
import { concerned, type LegalRequest, wantsDays } from '../../../shared/record/legal-request.js';
import { type DeletionStop, DeletionStops, type DeletionTarget } from '../record/record.api.js';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';

/** Nothing is deleted that an open request may want. */
@Injectable()
export class OpenRequests {
  constructor(
    private readonly requests: LegalRequestsRepository,
    stops: DeletionStops,
  ) {
    stops.onAsked(async (target) => (await this.wanting(target)).map(stopOf));
  }

  /**
   * Of an incident, the open requests that concern it, and those of which nobody knows which incidents they concern; of
   * what belongs to no incident, those that name these days or nothing narrower.
   */
  async wanting({ incidentId, days }: Pick<DeletionTarget, 'incidentId' | 'days'>): Promise<LegalRequest[]> {
    const open = (await this.requests.open()).map(({ request }) => request);
    return open.filter((request) => {
      if (incidentId === null) return wantsDays(request, days);
      const named = concerned(request);
      return named.length === 0 || named.some(({ incident }) => incident === incidentId);
    });
  }
}

/** Without a name: whoever wants to delete need not know who asks. */
function stopOf(request: LegalRequest): DeletionStop {
  const { id, number, details } = request;
  const day = details.receivedAt.slice(0, 10);
  const words =
    concerned(request).length === 0
      ? `Request ${number} of ${day} is open, and nobody has said yet what it concerns.`
      : `Request ${number} of ${day} is open and may want it.`;
  return { by: 'request', id, words };
}
