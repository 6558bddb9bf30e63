import { parseArgs } from 'node:util';
import { RegisterExportDto } from '../../shared/wire/register-queries.dto.js';
import { readRecordInput } from '../../shared/wire/record-reading.js';
import { type ExportProgress, exportRegisterOf } from '../server/register/register.api.js';

/** `npm run -s export -- register.xlsx` writes the register to a file; the ending chooses the format. */
const USAGE = [
  'npm run -s export -- FILE.xlsx                        writes the register: incidents, duties, tasks, filings',
  'npm run -s export -- FILE.csv --subject duties        writes one of them as comma-separated values',
  'Which incidents: --from and --until (opened, RFC 3339), --status open|closed, --outcome undetermined,',
  '--reports open|overdue, --craft "NAME", --station "NAME", --casualty grounding,',
  '--hurt yes|no|unknown, --words "TEXT".',
  'DATABASE_URL names the database, as for the service.',
  '',
].join('\n');

const OPTIONS = {
  subject: 'subject',
  from: 'openedFrom',
  until: 'openedUntil',
  status: 'status',
  outcome: 'outcome',
  reports: 'reports',
  craft: 'craft',
  station: 'station',
  casualty: 'casualty',
  hurt: 'hurt',
  words: 'q',
} as const;

/** Written over itself on a terminal; a log gets the last line only. */
function tell({ done, total }: ExportProgress): void {
  if (process.stderr.isTTY) process.stderr.write(`\r${done} of ${total} read`);
}

async function main(words: string[]): Promise<number> {
  const options = Object.fromEntries(Object.keys(OPTIONS).map((name) => [name, { type: 'string' as const }]));
  const { values, positionals } = parseArgs({ args: words, allowPositionals: true, options });
  const [file, more] = positionals;
  if (file === undefined || more !== undefined) throw new TypeError('Name one file to write.');
  const filter = Object.entries(OPTIONS).flatMap(([option, member]) =>
    values[option] === undefined ? [] : [[member, values[option]]],
  );
  const format = file.slice(file.lastIndexOf('.') + 1).toLowerCase();
  const asked = readRecordInput(RegisterExportDto, { ...Object.fromEntries(filter), format });
  if (!asked.ok) {
    throw new TypeError(
      asked.errors.map(({ pointer, detail }) => `${pointer.slice(1)}: ${detail}`).join('\n'),
    );
  }
  await exportRegisterOf(process.env, file, asked.value, tell);
  process.stderr.write(`${process.stderr.isTTY ? '\n' : ''}Written to ${file}\n`);
  return 0;
}

main(process.argv.slice(2)).then(
  (status) => (process.exitCode = status),
  (error: unknown) => {
    const reason = error instanceof Error ? error.message : String(error);
    process.stderr.write(`${reason}\n${error instanceof TypeError ? `\n${USAGE}` : ''}`);
    process.exitCode = 2;
  },
);
