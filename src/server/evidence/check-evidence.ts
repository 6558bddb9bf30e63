import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import type { UnitOfWork } from '../platform/database/unit-of-work.js';
import { digestOf } from '../platform/storage/digest-of.js';
import type { FileStore } from '../platform/storage/file-store.js';
import { evidenceOfRecord } from './database/evidence-of-record.js';

export type EvidenceFaultCode = 'evidence-missing' | 'evidence-changed' | 'evidence-not-withdrawn';

export interface EvidenceFault {
  readonly code: EvidenceFaultCode;
  /** Names the file and its incident, and both hashes where they differ. */
  readonly text: string;
}

export interface EvidenceCheck {
  /** Files whose content should be there. */
  readonly files: number;
  readonly faults: EvidenceFault[];
}

/**
 * Holds every file that the record names against what is kept: each is read to its end, and none into memory. While the
 * service runs, a file may be withdrawn between the two looks; so what seems wrong is looked at a second time.
 */
export async function verifyEvidence(unitOfWork: UnitOfWork, store: FileStore): Promise<EvidenceCheck> {
  const all = await namedFiles(unitOfWork);
  const suspects = new Set<string>();
  for (const named of all) if ((await faultOf(named, store)) !== null) suspects.add(named.file.id);
  const faults: EvidenceFault[] = [];
  for (const named of suspects.size === 0 ? [] : await namedFiles(unitOfWork)) {
    const fault = suspects.has(named.file.id) ? await faultOf(named, store) : null;
    if (fault !== null) faults.push(fault);
  }
  return { files: all.filter(({ file }) => file.withdrawn === undefined).length, faults };
}

interface NamedFile {
  readonly file: EvidenceFile;
  /** Of its incident. */
  readonly reference: string;
}

async function namedFiles(unitOfWork: UnitOfWork): Promise<NamedFile[]> {
  const incidents = await evidenceOfRecord(unitOfWork);
  return incidents.flatMap(({ reference, section }) =>
    (section.files ?? []).map((file) => ({ file, reference })),
  );
}

async function faultOf({ file, reference }: NamedFile, store: FileStore): Promise<EvidenceFault | null> {
  const named = `${file.name ?? file.id} of ${reference}`;
  const size = await store.sizeOf(file);
  if (file.withdrawn !== undefined) {
    if (size === undefined) return null;
    return {
      code: 'evidence-not-withdrawn',
      text: `${named} was withdrawn, and its content is still there.`,
    };
  }
  if (size === undefined) {
    return { code: 'evidence-missing', text: `${named} is not there: it had SHA-256 ${file.sha256}.` };
  }
  const found = await digestOf(store.read(file));
  if (found.sha256 === file.sha256) return null;
  const sizes = size === file.size ? '' : ` It had ${file.size} bytes and now has ${size}.`;
  const text = `${named} is not what arrived: it had SHA-256 ${file.sha256} and now has ${found.sha256}.${sizes}`;
  return { code: 'evidence-changed', text };
}
