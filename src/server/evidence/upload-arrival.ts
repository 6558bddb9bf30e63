import { Injectable } from '@nestjs/common';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { refuse } from '../platform/http/refuse.js';
import type { FileDigest } from '../platform/storage/file-store.js';
import { FileStore } from '../platform/storage/file-store.js';
import { IncomingFiles } from '../platform/storage/incoming-files.js';
import type { UploadRow } from './database/upload.row.js';
import { UploadsRepository } from './database/uploads.repository.js';
import { EvidenceAccess } from './evidence-access.js';
import { EvidenceFiles } from './evidence-lists.js';
import { EvidenceSettings } from './evidence-settings.js';
import { type EvidenceReceipt, receiptOf } from './evidence-views.js';
import { Previews } from './previews.js';
import { readCaptured } from './read-captured.js';
import { readContent, type TakenContent } from './read-content.js';
import { assertRoom, problemAt, wrongOffset } from './upload-problems.js';
import { UploadTurns } from './upload-turns.js';

/** Makes evidence of a file whose bytes are all there. */
@Injectable()
export class UploadArrival {
  constructor(
    private readonly uploads: UploadsRepository,
    private readonly files: EvidenceFiles,
    private readonly incoming: IncomingFiles,
    private readonly store: FileStore,
    private readonly previews: Previews,
    private readonly turns: UploadTurns,
    private readonly access: EvidenceAccess,
    private readonly settings: EvidenceSettings,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** Once more for a file that is evidence already tells the same again. */
  async finish(incidentId: string, id: string, actor: Actor): Promise<EvidenceReceipt> {
    await this.access.add(incidentId, actor);
    const wait = (): void => undefined;
    return this.turns.take(id, wait, async () => {
      const upload = (await this.uploads.find(incidentId, id)) ?? refuse(404, 'There is no such upload.');
      const file = (await this.files.find(incidentId, id)) ?? (await this.keep(upload, actor));
      await this.incoming.drop(id);
      return receiptOf(file);
    });
  }

  /**
   * Refuses what its beginning shows to be nothing that is taken; what that leaves open waits for the end.
   * @throws ProblemException 422, and its bytes are dropped
   */
  async judgeBeginning(upload: UploadRow): Promise<void> {
    const content = await readContent(this.incoming.pathOf(upload.id));
    if (!('refused' in content)) await this.assertLength(upload, content);
    else if (content.certain) await this.refuseFile(upload.id, content.refused);
  }

  /** @throws ProblemException 422 for what is not taken, and its bytes are dropped */
  private async judge(upload: UploadRow): Promise<TakenContent> {
    const content = await readContent(this.incoming.pathOf(upload.id));
    if ('refused' in content) return this.refuseFile(upload.id, content.refused);
    await this.assertLength(upload, content);
    return content;
  }

  private async assertLength({ id, size }: UploadRow, content: TakenContent): Promise<void> {
    const longest = this.settings.longestBytes[content.kind];
    if (size > longest) {
      await this.refuseFile(id, `By its content this is a ${content.kind}, of at most ${longest} bytes.`);
    }
  }

  async drop(id: string): Promise<void> {
    await this.unitOfWork.run(() => this.uploads.drop(id));
    await this.incoming.drop(id);
  }

  private async refuseFile(id: string, reason: string): Promise<never> {
    await this.drop(id);
    return refuse(422, reason);
  }

  private async keep(upload: UploadRow, actor: Actor): Promise<EvidenceFile> {
    const { id, incidentId, size } = upload;
    const arrived = await this.incoming.offsetOf(id);
    if (arrived !== size) throw wrongOffset(arrived);
    const content = await this.judge(upload);
    await assertRoom(this.incoming, size);
    const digest = await this.store.put(id, this.incoming.read(id));
    await this.assertSame(upload, digest);
    const captured = content.kind === 'photo' ? await readCaptured(this.incoming.pathOf(id)) : undefined;
    const file = this.describe(upload, content, digest, actor);
    const whole = captured === undefined ? file : { ...file, captured };
    await this.files.run(async () => {
      await this.access.add(incidentId, actor);
      await this.files.add(incidentId, whole, actor);
      await this.uploads.finish(id, file.receivedAt);
    });
    this.previews.prepare(file);
    return whole;
  }

  private async assertSame({ id, announced }: UploadRow, { sha256 }: FileDigest): Promise<void> {
    if (announced?.sha256 === undefined || announced.sha256 === sha256) return;
    await this.store.delete({ id, sha256 });
    await this.incoming.startOver(id);
    const reason = 'What arrived is not what the device read (SHA-256): send it again from byte 0.';
    throw problemAt(409, 0, reason);
  }

  private describe(
    { id, announced }: UploadRow,
    { kind, type }: TakenContent,
    { size, sha256 }: FileDigest,
    { personName, deviceName }: Actor,
  ): EvidenceFile {
    const { name, type: declaredType, about = {} } = announced ?? {};
    return {
      id,
      version: 1,
      kind,
      type,
      ...(declaredType === undefined ? {} : { declaredType }),
      ...(name === undefined ? {} : { name }),
      size,
      sha256,
      receivedAt: this.clock.now(),
      receivedFrom: deviceName === undefined ? personName : `${personName}, ${deviceName}`,
      about,
    };
  }
}
