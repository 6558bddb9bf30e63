import { isAbsolute, join } from 'node:path';
import type { DatabaseTarget } from './database/database-target.js';

/** Where evidence is kept, and how large a file of a kind may be. */
export interface EvidenceConfig {
  readonly folder: string;
  readonly longestBytes: Readonly<Record<'photo' | 'video' | 'audio' | 'document', number>>;
}

type Environment = Record<string, string | undefined>;

const MIB = 1024 * 1024;
/** A photograph of 200 megapixels takes about 30 MiB (memory); 2 GiB is an hour of a dock camera. */
const LONGEST_MIB = { photo: 30, video: 2048, audio: 512, document: 50 };

/**
 * Reads EVIDENCE_FOLDER and EVIDENCE_PHOTO_MIB, EVIDENCE_VIDEO_MIB, EVIDENCE_AUDIO_MIB, EVIDENCE_DOCUMENT_MIB.
 * @param faults gets a line for each setting that cannot be used
 */
export function readEvidenceConfig(
  environment: Environment,
  target: DatabaseTarget,
  root: string,
  faults: string[],
): EvidenceConfig {
  const bytes = (kind: keyof typeof LONGEST_MIB): number => {
    const name = `EVIDENCE_${kind.toUpperCase()}_MIB`;
    const said = environment[name];
    const mib = said === undefined ? LONGEST_MIB[kind] : Number(said);
    if (!Number.isInteger(mib) || mib < 1 || mib > 1_000_000) {
      faults.push(`${name} is ${JSON.stringify(said)}: give a whole number of mebibytes, such as 30.`);
    }
    return mib * MIB;
  };
  return {
    folder: evidenceFolderOf(environment['EVIDENCE_FOLDER'], target, root),
    longestBytes: {
      photo: bytes('photo'),
      video: bytes('video'),
      audio: bytes('audio'),
      document: bytes('document'),
    },
  };
}

/** EVIDENCE_FOLDER, or a folder beside the SQLite file, or var/evidence in the project's folder. */
export function evidenceFolderOf(named: string | undefined, target: DatabaseTarget, root: string): string {
  if (named !== undefined && named !== '') return isAbsolute(named) ? named : join(root, named);
  return target.engine === 'sqlite' ? join(target.file, '..', 'evidence') : join(root, 'var', 'evidence');
}
