import { Injectable } from '@nestjs/common';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { WriteDraftDto } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { holderOf } from './actor-words.js';
import { DraftsRepository } from './database/drafts.repository.js';
import { assertMayWrite, IncidentAccess, sectionNamed } from './incident-access.js';

/** What somebody is writing: kept for that person alone, seen by nobody else, and no part of the record. */
@Injectable()
export class DraftsService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly drafts: DraftsRepository,
    private readonly access: IncidentAccess,
    private readonly clock: Clock,
  ) {}

  async list(id: string, actor: Actor) {
    await this.access.read(id, actor);
    const rows = await this.drafts.ofHolder(id, holderOf(actor));
    return rows.map(({ section, version, savedAt, document }) => ({ section, version, savedAt, document }));
  }

  async save(id: string, name: string, { document, version = 0 }: WriteDraftDto, actor: Actor) {
    assertMayWrite(actor);
    const section = sectionNamed(name);
    const savedAt = this.clock.now();
    await this.unitOfWork.run(async () => {
      await this.access.find(id, actor);
      await this.drafts.save({
        incidentId: id,
        section,
        holder: holderOf(actor),
        document: document as JsonObject,
        version,
        savedAt,
      });
    });
    return { section, version, savedAt };
  }

  async remove(id: string, name: string, actor: Actor): Promise<void> {
    assertMayWrite(actor);
    const section = sectionNamed(name);
    await this.unitOfWork.run(async () => {
      await this.access.find(id, actor);
      await this.drafts.remove({ incidentId: id, section, holder: holderOf(actor) });
    });
  }
}
