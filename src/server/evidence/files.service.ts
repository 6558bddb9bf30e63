import type { Readable } from 'node:stream';
import { Injectable } from '@nestjs/common';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import { ChangeEvidenceDto } from '../../../shared/wire/evidence-file.dto.js';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { FileStore } from '../platform/storage/file-store.js';
import { ServiceSections } from '../record/record.api.js';
import { EvidenceAccess } from './evidence-access.js';
import { EvidenceFiles } from './evidence-lists.js';
import { type EvidenceFileView, fileView, type UploadView } from './evidence-views.js';
import { PREVIEW_EDGES, Previews } from './previews.js';
import { UploadsService } from './uploads.service.js';
import { wholeStream } from './whole-stream.js';

export interface EvidenceList {
  readonly files: readonly EvidenceFileView[];
  /** How many more there are that whoever asks does not see. */
  readonly restricted: number;
  readonly arriving: readonly UploadView[];
}

export interface Original {
  readonly file: EvidenceFile;
  readonly bytes: Readable;
}

/** Evidence as it is read, described and downloaded. */
@Injectable()
export class FilesService {
  constructor(
    private readonly files: EvidenceFiles,
    private readonly sections: ServiceSections,
    private readonly access: EvidenceAccess,
    private readonly uploads: UploadsService,
    private readonly store: FileStore,
    private readonly previews: Previews,
  ) {}

  /**
   * As of a moment they are told in the words of then, beside the record of then; who sees a file, and whether its
   * content is still there, is a matter of now.
   */
  async list(incidentId: string, query: unknown, actor: Actor): Promise<EvidenceList> {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    await this.access.read(incidentId, actor);
    const record = await this.sections.record(incidentId);
    const now = await this.files.all(incidentId);
    const mayBeSeen = now.filter((file) => this.access.maySee(file, record, actor));
    if (at === undefined) {
      return {
        files: mayBeSeen.map((file) => fileView(file, record, this.previews.isShowable(file))),
        restricted: now.length - mayBeSeen.length,
        arriving: await this.uploads.arriving(incidentId),
      };
    }
    const then = await this.files.all(incidentId, at);
    const recordThen = await this.sections.record(incidentId, at);
    const seen = then.flatMap((file) => {
      const present = mayBeSeen.find(({ id }) => id === file.id);
      if (present === undefined) return [];
      const { withdrawn } = present;
      // Words that hold nothing are no field of the record, and so were not read back.
      const told = { ...file, about: { ...file.about }, ...(withdrawn !== undefined && { withdrawn }) };
      if (!this.access.maySee(told, record, actor)) return [];
      return [fileView(told, recordThen, this.previews.isShowable(present))];
    });
    return { files: seen, restricted: then.length - seen.length, arriving: [] };
  }

  async read(incidentId: string, id: string, actor: Actor): Promise<EvidenceFileView> {
    const file = await this.seen(incidentId, id, actor);
    return this.view(incidentId, file);
  }

  /** The original, byte for byte. */
  async original(incidentId: string, id: string, actor: Actor): Promise<Original> {
    const file = await this.seen(incidentId, id, actor);
    assertThere(file);
    if ((await this.store.sizeOf(file)) !== file.size) {
      refuse(
        409,
        'What is kept is missing or not what arrived: have whoever runs the service check the record.',
      );
    }
    return { file, bytes: wholeStream(this.store.read(file), file) };
  }

  async preview(incidentId: string, id: string, edge: string, actor: Actor): Promise<Readable> {
    const file = await this.seen(incidentId, id, actor);
    assertThere(file);
    const wanted = PREVIEW_EDGES.find((one) => String(one) === edge);
    const none = 'There is no preview of it: download the original.';
    if (wanted === undefined || !this.previews.isShowable(file)) return refuse(404, none);
    return (await this.previews.read(file, wanted)) ?? refuse(404, none);
  }

  /** Says other words about it; the file itself never changes. */
  async change(
    incidentId: string,
    id: string,
    body: unknown,
    ifMatch: string | undefined,
    actor: Actor,
  ): Promise<EvidenceFileView> {
    const { about, reason } = readInput(readRecordInput(ChangeEvidenceDto, body));
    this.access.assertMaySay(about, actor);
    const changed = await this.files.run(async () => {
      const file = await this.seen(incidentId, id, actor);
      assertThere(file);
      assertFresh(ifMatch, file, { about });
      return this.files.replace(incidentId, { ...file, about }, actor, reason);
    });
    return this.view(incidentId, changed);
  }

  /** @throws ProblemException 404 for a file that is not there, or that the actor may not see */
  private async seen(incidentId: string, id: string, actor: Actor): Promise<EvidenceFile> {
    await this.access.read(incidentId, actor);
    const file = await this.files.get(incidentId, id);
    const record = await this.sections.record(incidentId);
    return this.access.maySee(file, record, actor) ? file : refuse(404, 'There is nothing at this address.');
  }

  private async view(incidentId: string, file: EvidenceFile): Promise<EvidenceFileView> {
    return fileView(file, await this.sections.record(incidentId), this.previews.isShowable(file));
  }
}

export function assertThere({ withdrawn }: EvidenceFile): void {
  if (withdrawn !== undefined)
    refuse(404, 'Its content was withdrawn: when, by whom and why stands in the list.');
}
