import { parseArgs } from 'node:util';
import type { CopyCheck } from '../server/backup/backup.api.js';

type Work = (folder: string, tell: (words: string) => void) => Promise<{ check: CopyCheck; done: string }>;

/** Runs a command about copies: one folder is named, progress goes to a terminal, the check of the copy ends it. */
export function runCopying(usage: string, work: Work): void {
  run(work, process.argv.slice(2)).then(
    (status) => (process.exitCode = status),
    (error: unknown) => {
      const reason = error instanceof Error ? error.message : String(error);
      process.stderr.write(`${reason}\n${error instanceof TypeError ? `\n${usage}\n` : ''}`);
      process.exitCode = 2;
    },
  );
}

async function run(work: Work, words: string[]): Promise<number> {
  const [folder, more] = parseArgs({ args: words, allowPositionals: true, options: {} }).positionals;
  if (folder === undefined || more !== undefined) throw new TypeError('Name one folder.');
  const { check, done } = await work(folder, tell);
  if (process.stderr.isTTY) process.stderr.write('\n');
  for (const fault of check.faults) console.log(fault);
  const found = check.faults.length === 0 ? 'all as written' : `${check.faults.length} faults`;
  console.log(
    `${done}: ${check.incidents} incidents, ${check.amendments} amendments, ${check.files} files: ${found}.`,
  );
  return check.faults.length === 0 ? 0 : 1;
}

/** Written over itself on a terminal; a log has no use for it. */
function tell(words: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${words}`);
}
