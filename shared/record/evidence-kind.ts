export const EVIDENCE_KINDS = ['photo', 'video', 'audio', 'document'] as const;

/** What a file is to people; each kind has a limit of size of its own. */
export type EvidenceKind = (typeof EVIDENCE_KINDS)[number];

/**
 * Media types that are taken, as they are told by content. None of them runs anything when it is opened: what does is
 * refused, pages and drawings of the web among it, and archives, which hide what they hold.
 */
const KINDS: Readonly<Record<string, EvidenceKind>> = {
  'image/jpeg': 'photo',
  'image/png': 'photo',
  'image/webp': 'photo',
  'image/gif': 'photo',
  'image/tiff': 'photo',
  'image/bmp': 'photo',
  'image/avif': 'photo',
  'image/heic': 'photo',
  'image/heif': 'photo',
  'image/heic-sequence': 'photo',
  'image/heif-sequence': 'photo',
  'image/x-adobe-dng': 'photo',
  'video/mp4': 'video',
  'video/quicktime': 'video',
  'video/x-m4v': 'video',
  'video/webm': 'video',
  'video/matroska': 'video',
  'video/3gpp': 'video',
  'video/3gpp2': 'video',
  'video/mpeg': 'video',
  'video/mp2t': 'video',
  'video/vnd.avi': 'video',
  'video/ogg': 'video',
  'video/MP1S': 'video',
  'video/MP2P': 'video',
  'audio/mpeg': 'audio',
  'audio/mp4': 'audio',
  'audio/x-m4a': 'audio',
  'audio/aac': 'audio',
  'audio/amr': 'audio',
  'audio/flac': 'audio',
  'audio/wav': 'audio',
  'audio/ogg': 'audio',
  'audio/ogg; codecs=opus': 'audio',
  'application/pdf': 'document',
  'application/vnd.openxmlformats-officedocument.wordprocessingml.document': 'document',
  'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet': 'document',
  'application/vnd.oasis.opendocument.text': 'document',
  'application/vnd.oasis.opendocument.spreadsheet': 'document',
  'application/gpx+xml': 'document',
  'text/plain': 'document',
};

/** Two names of one thing, as devices say and readers of content tell them. */
const SAME: Readonly<Record<string, string>> = {
  'image/jpg': 'image/jpeg',
  'image/pjpeg': 'image/jpeg',
  'image/heif': 'image/heic',
  'audio/mp3': 'audio/mpeg',
  'audio/x-wav': 'audio/wav',
  'audio/wave': 'audio/wav',
  'audio/m4a': 'audio/mp4',
  'audio/x-m4a': 'audio/mp4',
  'video/avi': 'video/vnd.avi',
  'video/x-msvideo': 'video/vnd.avi',
  'video/x-m4v': 'video/mp4',
  'video/x-matroska': 'video/matroska',
  'text/csv': 'text/plain',
};

/**
 * The kind of a media type; undefined for one that is not taken.
 * @example evidenceKind('image/heic') // 'photo'
 * @example evidenceKind('text/html') // undefined
 */
export function evidenceKind(type: string): EvidenceKind | undefined {
  return Object.hasOwn(KINDS, type) ? KINDS[type] : undefined;
}

/**
 * Whether a device and the content of a file say the same. What a device does not know, it does not contradict.
 * @example sameMediaType('image/jpg', 'image/jpeg') // true
 */
export function sameMediaType(declared: string | undefined, type: string): boolean {
  const said = plain(declared ?? '');
  return said === '' || said === 'application/octet-stream' || said === plain(type);
}

function plain(type: string): string {
  const name = type.split(';', 1)[0]?.trim().toLowerCase() ?? '';
  return Object.hasOwn(SAME, name) ? (SAME[name] ?? name) : name;
}
