import { Injectable } from '@nestjs/common';
import { WithdrawEvidenceDto } from '../../../shared/wire/evidence-file.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { Holds } from '../record/record.api.js';
import { EvidenceAccess } from './evidence-access.js';
import { EvidenceFiles } from './evidence-lists.js';
import { type EvidenceReceipt, receiptOf } from './evidence-views.js';
import { shellOf, WORDS } from './evidence-deletion.js';
import { WithdrawnFiles } from './withdrawn-files.js';

type Direction = Pick<WithdrawEvidenceDto, 'counsel' | 'directedOn'>;

const HELD =
  'A hold is on: a file is withdrawn on the direction of counsel alone. Name counsel, and the day of it.';
const BOTH = 'Name counsel and the day of the direction, both or neither.';

/**
 * Takes the content of a wrong file out, with its name and whatever was said about it. That it was there stays: its
 * hash and size, who took it out and why, and every amendment about it in the log.
 */
@Injectable()
export class WithdrawalService {
  constructor(
    private readonly files: EvidenceFiles,
    private readonly access: EvidenceAccess,
    private readonly holds: Holds,
    private readonly gone: WithdrawnFiles,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  async withdraw(incidentId: string, id: string, body: unknown, actor: Actor): Promise<EvidenceReceipt> {
    const { reason, ...direction } = readInput(readRecordInput(WithdrawEvidenceDto, body));
    return this.files.run(async () => {
      await this.access.read(incidentId, actor);
      const file = await this.files.get(incidentId, id);
      if (file.withdrawn !== undefined) refuse(409, 'It was withdrawn before.');
      await this.assertDirected(incidentId, id, direction, actor);
      this.unitOfWork.afterCommit(() => this.gone.remove(file));
      const withdrawn = { at: this.clock.now(), by: actor.personName, reason, ...direction };
      const { version } = file;
      const rest = { ...shellOf(file, withdrawn), version };
      return receiptOf(await this.files.withdraw(incidentId, rest, WORDS, actor, reason));
    });
  }

  /** While the incident is held, counsel is named with the day of the direction; that is noted with the holds. */
  private async assertDirected(
    incidentId: string,
    id: string,
    { counsel, directedOn }: Direction,
    actor: Actor,
  ): Promise<void> {
    if (counsel !== undefined && directedOn !== undefined) {
      const noted = { section: 'evidence', path: `/files/${id}`, counsel, directedOn };
      await this.holds.noteWithdrawal(incidentId, noted, actor);
      return;
    }
    const missing = counsel === undefined ? '/counsel' : '/directedOn';
    if (await this.holds.isHeld(incidentId)) refuse(409, HELD, missing);
    if (counsel !== undefined || directedOn !== undefined) refuse(422, BOTH, missing);
  }
}
