import { checkEvidence } from '../evidence/evidence.api.js';
import { checkRecord } from '../record/record.api.js';
import { type DeskFiles, environmentOf } from './desk-files.js';

/** What a copy holds, and what is wrong with it. */
export interface CopyCheck {
  readonly incidents: number;
  readonly amendments: number;
  readonly files: number;
  /** One line each; none where everything is as it was written. */
  readonly faults: readonly string[];
}

/** Holds a copy against itself: the record against its log and heads, every file of evidence against the record. */
export async function checkCopy(files: DeskFiles): Promise<CopyCheck> {
  const environment = environmentOf(files);
  const record = await checkRecord(environment);
  const evidence = await checkEvidence(environment);
  return {
    incidents: record.incidents,
    amendments: record.amendments,
    files: evidence.files,
    faults: [...record.faults, ...evidence.faults].map(({ code, text }) => `${code}: ${text}`),
  };
}
