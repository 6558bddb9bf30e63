import { Injectable } from '@nestjs/common';
import type { LegalRequest, RequestDetails } from '../../../shared/record/legal-request.js';
import { ServedPaperDto } from '../../../shared/wire/legal-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { ServiceSections } from '../record/record.api.js';
import { LegalRequestsRepository } from './database/legal-requests.repository.js';
import { RequestBook } from './request-book.js';
import { writtenBy } from './written-by.js';

/** What whoever took a paper is shown of it again: that it is kept, and under which number. */
export interface ServedPaper {
  readonly id: string;
  readonly version: number;
  readonly number: string;
  readonly receivedAt: string;
}

/**
 * Papers that somebody took at the counter. They need not have read them, and see nothing of what a manager then enters:
 * until one does, it is a request of which neither kind nor due time is known, and which stops every deletion.
 */
@Injectable()
export class ServedPapers {
  constructor(
    private readonly book: RequestBook,
    private readonly requests: LegalRequestsRepository,
    private readonly sections: ServiceSections,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async take(body: unknown, key: string | undefined, actor: Actor): Promise<ServedPaper> {
    const { from, receivedAt, way, incident, note } = readInput(readRecordInput(ServedPaperDto, body));
    const { id } = await this.sections.run(() =>
      this.createOnce.run({ operation: 'served-paper', key: readIdempotencyKey(key), body }, async (made) => {
        const now = this.clock.now();
        // A clock of a phone may be ahead of ours: what it says has come, has come.
        const came = Date.parse(receivedAt) > Date.parse(now) ? now : receivedAt;
        const by = writtenBy(actor);
        const details: RequestDetails = {
          ...{ kind: 'not-read', from, receivedAt: came, way, receivedBy: actor.personName, due: 'unknown' },
          ...(note !== undefined && { asked: note }),
        };
        if (incident !== undefined && !(await this.sections.references([incident])).has(incident)) {
          refuse(422, 'There is no incident with this id.', '/incident');
        }
        const request: LegalRequest = {
          ...{ id: made, number: await this.book.nextNumber(), loggedAt: now, by, details },
          incidents: incident === undefined ? [] : [{ incident, since: now, by }],
          ...{ steps: [], productions: [], objections: [] },
        };
        await this.book.write(request, 1, { what: 'paper-served' }, actor);
      }),
    );
    const row = (await this.requests.find(id)) ?? refuse(404, 'There is no such paper.');
    return { id, version: 1, number: row.number, receivedAt: row.request.details.receivedAt };
  }
}
