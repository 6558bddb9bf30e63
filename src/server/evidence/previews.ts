import { randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { Logger } from '@nestjs/common';
import sharp from 'sharp';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import { ARRIVING, makePrivateFolder, PRIVATE_FILE, sizeOfFile } from '../platform/storage/durable-files.js';
import type { FileStore } from '../platform/storage/file-store.js';

/** Pixels of the longer edge: for looking closely, and for lists. */
export const PREVIEW_EDGES = [1600, 320] as const;
export type PreviewEdge = (typeof PREVIEW_EDGES)[number];

export const PREVIEW_TYPE = 'image/webp';

/** Types of which a picture can be made here. HEIC needs a decoder under patents that no package brings. */
const SHOWABLE = ['image/jpeg', 'image/png', 'image/webp', 'image/gif', 'image/tiff', 'image/avif'];
const SLOWEST_S = 60;

// One picture at a time on one core: requests come first.
sharp.concurrency(1);

// Readers of other formats stay shut, whatever a file calls itself.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['Jpeg', 'Png', 'Webp', 'Nsgif', 'Tiff', 'Heif'].map((name) => `VipsForeignLoad${name}`),
});

/**
 * Small pictures of photographs, turned upright, without anything that the camera wrote into them. They are made one
 * after the other, once a photograph is kept or when one is asked for, and can be thrown away at any time.
 */
export class Previews {
  private readonly log = new Logger('evidence');
  private last: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly folder: string,
    private readonly store: FileStore,
  ) {}

  /** Whether there can be one. */
  isShowable({ type, withdrawn }: EvidenceFile): boolean {
    return withdrawn === undefined && SHOWABLE.includes(type);
  }

  /** Has them made while nobody waits. */
  prepare(file: EvidenceFile): void {
    if (this.isShowable(file)) void this.inTurn(() => this.make(file));
  }

  /** The preview, made now if need be; undefined where none can be made of what the file holds. */
  async read(file: EvidenceFile, edge: PreviewEdge): Promise<Readable | undefined> {
    const path = this.pathOf(file.id, edge);
    if ((await sizeOfFile(path)) === undefined) await this.inTurn(() => this.make(file));
    return (await sizeOfFile(path)) === undefined ? undefined : createReadStream(path);
  }

  async remove(id: string): Promise<void> {
    await this.inTurn(async () => {
      for (const edge of PREVIEW_EDGES) await rm(this.pathOf(id, edge), { force: true });
    });
  }

  /** When everything that was asked for so far is done. */
  async settled(): Promise<void> {
    await this.last;
  }

  private inTurn(work: () => Promise<void>): Promise<void> {
    const turn = this.last.then(work);
    this.last = turn.catch(() => undefined);
    return turn;
  }

  private async make(file: EvidenceFile): Promise<void> {
    const [large, small] = PREVIEW_EDGES;
    try {
      if ((await sizeOfFile(this.pathOf(file.id, small))) !== undefined) return;
      // Withdrawn while this waited for its turn.
      if ((await this.store.sizeOf(file)) === undefined) return;
      const shrink = smaller(large);
      const [picture] = await Promise.all([shrink.toBuffer(), pipeline(this.store.read(file), shrink)]);
      await this.keep(file.id, large, picture);
      await this.keep(file.id, small, await sharp(picture).resize(fit(small)).webp().toBuffer());
    } catch (error) {
      // Whose picture and why; never what stands in it.
      this.log.warn(`No preview of ${file.id}: ${error instanceof Error ? error.name : 'unknown'}`);
    }
  }

  private async keep(id: string, edge: PreviewEdge, picture: Buffer): Promise<void> {
    const path = this.pathOf(id, edge);
    const temporary = join(this.folder, ARRIVING, randomUUID());
    await makePrivateFolder(join(this.folder, ARRIVING));
    await makePrivateFolder(join(this.folder, 'previews'));
    await writeFile(temporary, picture, { mode: PRIVATE_FILE });
    await rename(temporary, path);
  }

  private pathOf(id: string, edge: PreviewEdge): string {
    return join(this.folder, 'previews', `${id}-${edge}.webp`);
  }
}

const fit = (edge: number) =>
  ({ width: edge, height: edge, fit: 'inside', withoutEnlargement: true }) as const;

/** Writes no metadata, as the library leaves it out unless it is told to keep it. */
function smaller(edge: PreviewEdge) {
  return sharp({ failOn: 'none', sequentialRead: true })
    .timeout({ seconds: SLOWEST_S })
    .autoOrient()
    .resize(fit(edge))
    .webp();
}
