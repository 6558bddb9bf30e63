import { checkEvidence } from '../server/evidence/evidence.api.js';
import { checkRecord } from '../server/record/record.api.js';

/**
 * `npm run -s verify` holds the record against its log and the heads kept outside the database, and every file of
 * evidence against the record. Exit status 0 when everything is as it was written, 1 with one line a fault when not, 2
 * when it could not be looked at.
 */
async function main(): Promise<number> {
  const { incidents, amendments, faults: ofRecord } = await checkRecord(process.env);
  const { files, faults: ofEvidence } = await checkEvidence(process.env);
  const faults = [...ofRecord, ...ofEvidence];
  for (const { code, text } of faults) console.log(`${code}: ${text}`);
  const found = faults.length === 0 ? 'all as written' : `${faults.length} faults`;
  console.log(`${incidents} incidents, ${amendments} amendments, ${files} files of evidence: ${found}.`);
  return faults.length === 0 ? 0 : 1;
}

main().then(
  (status) => (process.exitCode = status),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = 2;
  },
);
