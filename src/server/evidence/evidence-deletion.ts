import { Injectable } from '@nestjs/common';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { ServiceSections } from '../record/record.api.js';
import { UploadsRepository } from './database/uploads.repository.js';
import { EvidenceFiles } from './evidence-lists.js';
import { WithdrawnFiles } from './withdrawn-files.js';

/** Deletes the files of an incident that have been kept long enough. */
@Injectable()
export class EvidenceDeletion {
  constructor(
    private readonly files: EvidenceFiles,
    private readonly uploads: UploadsRepository,
    private readonly gone: WithdrawnFiles,
    private readonly sections: ServiceSections,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** Within `ServiceSections.run`; bytes go after the commit. @returns how many files went */
  async ofIncident(incidentId: string, reason: string, actor: Actor): Promise<number> {
    const files = await this.files.all(incidentId);
    const there = files.filter(({ withdrawn }) => withdrawn === undefined);
    if (there.length > 0) {
      const withdrawn = { at: this.clock.now(), by: actor.personName, reason };
      const left = files.map((file) => (file.withdrawn === undefined ? shellOf(file, withdrawn) : file));
      const paths = there.flatMap(({ id }) => WORDS.map((member) => `/files/${id}/${member}`));
      await this.sections.withdraw(
        incidentId,
        'evidence',
        { document: { files: left }, paths },
        actor,
        reason,
      );
    }
    const arriving = await this.uploads.arriving(incidentId);
    for (const { id } of arriving) await this.uploads.drop(id);
    this.unitOfWork.afterCommit(async () => {
      for (const file of there) await this.gone.remove(file);
      for (const { id } of arriving) await this.gone.dropArriving(id);
    });
    return there.length + arriving.length;
  }
}

/** What people and cameras said of a file. */
export const WORDS = ['name', 'about', 'captured'];

/** That a file was there, and what became of it: nothing of what it holds or shows. */
export function shellOf(
  { id, version, kind, type, size, sha256, receivedAt, receivedFrom }: EvidenceFile,
  withdrawn: NonNullable<EvidenceFile['withdrawn']>,
): EvidenceFile {
  const next = version + 1;
  return { id, version: next, kind, type, size, sha256, receivedAt, receivedFrom, about: {}, withdrawn };
}
