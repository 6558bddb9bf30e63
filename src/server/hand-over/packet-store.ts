import { join } from 'node:path';
import { Readable } from 'node:stream';
import { type Manifest, type ManifestFile, PACKET_FILES } from '../../../shared/hand-over/packet.js';
import { wholeStream } from '../evidence/evidence.api.js';
import type { FileKey } from '../platform/storage/file-store.js';
import { FolderStore } from '../platform/storage/folder-store.js';
import type { KeptPacket } from './hand-over-book.js';
import type { PacketDocument } from './packet-documents.js';
import type { ZipEntry } from './write-packet-zip.js';

/** A file that should be there and is not, or not as it was. */
export class PacketFileMissingError extends Error {}

/**
 * Where packets lie: what was made for one is kept as it was sent, so that no later profile or program changes it; the
 * originals are read from the evidence itself.
 */
export class PacketStore {
  private readonly made: FolderStore;
  readonly evidence: FolderStore;

  /** @param folder of the evidence: copies for safe keeping take packets along with it */
  constructor(folder: string) {
    this.made = new FolderStore(join(folder, 'packets'));
    this.evidence = new FolderStore(folder);
  }

  /** Keeps one document, and gives its line in the manifest but for the custody. */
  async keep(
    packet: string,
    { path, type, content }: PacketDocument,
  ): Promise<Omit<ManifestFile, 'custody' | 'source'>> {
    const { sha256, size } = await this.made.put(packet, Readable.from([content]));
    return { path, type, size, sha256 };
  }

  /** The bytes of a file as it leaves: an original from the evidence, everything else from what was made for the packet. */
  read(
    packet: string,
    { source, evidence, sha256 }: Pick<ManifestFile, 'source' | 'evidence' | 'sha256'>,
  ): Readable {
    if (source === 'original' && evidence !== undefined)
      return this.evidence.read({ id: evidence.id, sha256 });
    return this.made.read({ id: packet, sha256 });
  }

  /** Bytes of something that was made; undefined where it is not there. */
  sizeOfMade(packet: string, sha256: string): Promise<number | undefined> {
    return this.made.sizeOf({ id: packet, sha256 });
  }

  /** Takes back what nobody was told of. */
  async drop(packet: string, files: readonly ManifestFile[], manifest: string): Promise<void> {
    const made = files.filter(({ source }) => source !== 'original').map(({ sha256 }) => sha256);
    for (const sha256 of [...made, manifest]) await this.made.delete({ id: packet, sha256 });
  }

  /** Takes everything that was made for a packet away, by its manifest; without one there is nothing to find it by. */
  async forget(packet: string, manifest: string): Promise<void> {
    const key = { id: packet, sha256: manifest };
    if ((await this.made.sizeOf(key)) === undefined) return;
    const { files } = await this.manifestOf(key);
    await this.drop(packet, files, manifest);
  }

  /**
   * The entries of the archive, the manifest first.
   * @throws PacketFileMissingError naming the file
   */
  async entries({ number: id, manifest: sha256, manifestSize: size }: KeptPacket): Promise<ZipEntry[]> {
    const manifest = { path: PACKET_FILES.manifest, sha256, size };
    await this.assertThere(this.made, { id, sha256 }, manifest);
    const { files } = await this.manifestOf({ id, sha256 });
    const entries = [entryOf(this.made, { id, sha256 }, manifest)];
    for (const file of files) {
      const isOriginal = file.source === 'original' && file.evidence !== undefined;
      const store = isOriginal ? this.evidence : this.made;
      const key = { id: isOriginal ? (file.evidence?.id ?? id) : id, sha256: file.sha256 };
      await this.assertThere(store, key, file);
      entries.push(entryOf(store, key, file));
    }
    return entries;
  }

  private async manifestOf(key: FileKey): Promise<Manifest> {
    const pieces: Buffer[] = [];
    for await (const piece of this.made.read(key)) pieces.push(piece as Buffer);
    return JSON.parse(Buffer.concat(pieces).toString('utf8')) as Manifest;
  }

  private async assertThere(
    store: FolderStore,
    key: FileKey,
    { path, size }: Pick<ManifestFile, 'path' | 'size'>,
  ) {
    if ((await store.sizeOf(key)) !== size) throw new PacketFileMissingError(path);
  }
}

function entryOf(
  store: FolderStore,
  key: FileKey,
  file: Pick<ManifestFile, 'path' | 'sha256' | 'size'>,
): ZipEntry {
  const { path, size } = file;
  return {
    path,
    size,
    open: () => wholeStream(store.read(key), file),
  };
}
