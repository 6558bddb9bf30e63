import { Injectable } from '@nestjs/common';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import { FileStore } from '../platform/storage/file-store.js';
import { IncomingFiles } from '../platform/storage/incoming-files.js';
import { Previews } from './previews.js';

/** Takes the bytes of a file out of every place where they lie, once the record has said so. */
@Injectable()
export class WithdrawnFiles {
  constructor(
    private readonly store: FileStore,
    private readonly incoming: IncomingFiles,
    private readonly previews: Previews,
  ) {}

  async remove(file: EvidenceFile): Promise<void> {
    await this.store.delete(file);
    await this.incoming.drop(file.id);
    await this.previews.remove(file.id);
  }

  /** Of a file that never became evidence. */
  dropArriving(id: string): Promise<void> {
    return this.incoming.drop(id);
  }
}
