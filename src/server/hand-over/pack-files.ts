import type { DecidedFile } from '../../../shared/hand-over/decide-file.js';
import { EVIDENCE_FOLDER, type ManifestFile } from '../../../shared/hand-over/packet.js';
import { refuse } from '../platform/http/refuse.js';
import { COPY_TYPE, copyPicture } from './copy-picture.js';
import type { PacketStore } from './packet-store.js';

/** Endings of files by media type; a stranger's computer opens them by these. */
const ENDINGS: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/gif': 'gif',
  'image/tiff': 'tif',
  'image/heic': 'heic',
  'image/avif': 'avif',
  'video/mp4': 'mp4',
  'video/quicktime': 'mov',
  'audio/mpeg': 'mp3',
  'audio/mp4': 'm4a',
  'audio/wav': 'wav',
  'application/pdf': 'pdf',
  'text/plain': 'txt',
};

interface Packing {
  readonly packet: string;
  /** RFC 3339. */
  readonly madeAt: string;
  readonly madeBy: string;
  /** Whether it is told by whom a file came. */
  readonly tellAuthors: boolean;
}

/**
 * The files that leave: originals stay where they are, copies are made and kept. Each is called by its number and id,
 * as what somebody called it may tell something and may lead out of the archive.
 * @throws ProblemException 409 for an original that is missing or changed, 422 for a region outside of its picture
 */
export async function packFiles(
  files: readonly DecidedFile[],
  store: PacketStore,
  packing: Packing,
): Promise<ManifestFile[]> {
  const going = files.filter(({ verdict }) => verdict.does !== 'stays');
  const packed: ManifestFile[] = [];
  for (const [place, decided] of going.entries()) {
    packed.push(await packFile(decided, String(place + 1).padStart(3, '0'), store, packing));
  }
  return packed;
}

async function packFile(
  { file, verdict, blur }: DecidedFile,
  number: string,
  store: PacketStore,
  { packet, madeAt, madeBy, tellAuthors }: Packing,
): Promise<ManifestFile> {
  const { id, sha256, size, type, receivedAt, receivedFrom } = file;
  if ((await store.evidence.sizeOf(file)) !== size) {
    refuse(409, `The original of ${file.name ?? id} is missing or was changed: have the record checked.`);
  }
  const named = `${EVIDENCE_FOLDER}${number}-${id.replaceAll(/[^A-Za-z0-9-]/g, '')}`;
  const arrived = {
    at: receivedAt,
    by: tellAuthors ? receivedFrom : 'the business',
    what: 'arrived as evidence',
  };
  const evidence = { id, sha256, size };
  if (verdict.does !== 'masked') {
    const packedNow = { at: madeAt, by: madeBy, what: 'put into this packet, byte for byte' };
    const path = `${named}.${ENDINGS[type] ?? 'bin'}`;
    return { path, size, sha256, type, source: 'original', evidence, custody: [arrived, packedNow] };
  }
  const content = await copyOf(store, file, blur);
  const without = blur.length > 0 ? WITHOUT_FACES : WITHOUT_METADATA;
  const made = {
    at: madeAt,
    by: madeBy,
    what: `copied for this packet, without ${without}; the original is kept`,
  };
  const kept = await store.keep(packet, { path: `${named}-copy.jpg`, type: COPY_TYPE, content });
  return { ...kept, source: 'copy', evidence, without, custody: [arrived, made] };
}

const WITHOUT_METADATA = 'what the camera wrote into it';
const WITHOUT_FACES = 'what the camera wrote into it and the faces of strangers';

async function copyOf(
  store: PacketStore,
  file: DecidedFile['file'],
  blur: DecidedFile['blur'],
): Promise<Buffer> {
  try {
    return await copyPicture(store.evidence.read(file), blur);
  } catch (error) {
    if (error instanceof RangeError) return refuse(422, error.message, '/strangers');
    throw error;
  }
}
