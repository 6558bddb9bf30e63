import { pipeline } from 'node:stream/promises';
import sharp from 'sharp';
import type { ManifestFile } from '../../../shared/hand-over/packet.js';
import type { PacketStore } from './packet-store.js';
import type { PaperImage } from './paper/blocks.js';

/** Types that can be put on paper; of others the paper names the file. */
const ON_PAPER: ReadonlySet<string> = new Set([
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/tiff',
  'image/avif',
]);

/** Pixels of the longer side: some 200 an inch at the size in which it is printed. */
const LONGEST_PX = 1400;
const QUALITY = 80;
const SLOWEST_S = 60;

/**
 * Small copies of the pictures that leave, made of what leaves and not of the original, so that what is covered there is
 * covered here too. Nothing that a camera wrote is taken over. One that cannot be read is left out, and the paper says so.
 * @returns by the id of the evidence
 */
export async function paperPictures(
  files: readonly ManifestFile[],
  store: PacketStore,
  packet: string,
): Promise<ReadonlyMap<string, PaperImage>> {
  const pictures = new Map<string, PaperImage>();
  for (const file of files) {
    if (file.evidence === undefined || !ON_PAPER.has(file.type)) continue;
    const picture = await shrink(store, packet, file);
    if (picture !== null) pictures.set(file.evidence.id, picture);
  }
  return pictures;
}

/** Null for a picture that is broken or of a kind that this program cannot read: it leaves all the same. */
async function shrink(store: PacketStore, packet: string, file: ManifestFile): Promise<PaperImage | null> {
  const small = sharp({ failOn: 'none', sequentialRead: true })
    .timeout({ seconds: SLOWEST_S })
    .autoOrient()
    .resize({ width: LONGEST_PX, height: LONGEST_PX, fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb')
    .flatten({ background: '#ffffff' })
    .jpeg({ quality: QUALITY });
  const [made, read] = await Promise.allSettled([
    small.toBuffer({ resolveWithObject: true }),
    pipeline(store.read(packet, file), small),
  ]);
  if (made.status === 'rejected' || read.status === 'rejected') return null;
  const { data, info } = made.value;
  return { bytes: data, width: info.width, height: info.height };
}
