import { describeRulePack } from '../../shared/law/describe-rule-pack.js';
import { listRulePacks } from '../../shared/law/list-rule-packs.js';
import { listDuePacks } from '../../shared/law/list-due-packs.js';
import { packCode } from '../../shared/law/pack-code.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { wrapText } from '../../shared/law/wrap-text.js';
import { loadRulePacks, recheckMonths } from '../server/law/law.api.js';
import { runCommand } from './run-command.js';

/**
 * `npm run -s law -- TX [XX ...]` prints those jurisdictions' law; without a code, the list of all; with `--due`, what
 * is due to be read again.
 */
async function main(): Promise<number> {
  const packs = await loadRulePacks();
  if (process.argv.includes('--due')) {
    process.stdout.write(describeDue(packs, new Date().toISOString().slice(0, 10)));
    return 0;
  }
  const codes = process.argv.slice(2).map((code) => code.toUpperCase());
  const unknown = codes.filter((code) => !packs.some((pack) => packCode(pack) === code));
  if (unknown.length > 0) {
    const known = packs.map(packCode).join(' ');
    const lines = [
      `No law is kept here for: ${unknown.join(', ')}`,
      ...wrapText('Known codes: ', known),
      'That is no sign that nothing is due there: ask its boating law administrator.',
    ];
    process.stderr.write(`${lines.join('\n')}\n`);
    return 2;
  }
  if (codes.length === 0) {
    process.stdout.write(`${listRulePacks(packs)}\nOne jurisdiction in full: npm run -s law -- TX\n`);
    return 0;
  }
  const pages = codes.flatMap((code) =>
    packs.filter((pack) => packCode(pack) === code).map(describeRulePack),
  );
  process.stdout.write(pages.join(`\n${'='.repeat(80)}\n\n`));
  return 0;
}

function describeDue(packs: readonly RulePack[], today: string): string {
  const months = recheckMonths();
  const due = listDuePacks(packs, today, months);
  if (due.length === 0) return `No law is due to be read again (after ${months} months).\n`;
  return due
    .map(({ pack, name, readOn, dueOn }) => `${dueOn}  ${pack.padEnd(20)}  ${name}, read on ${readOn}\n`)
    .join('');
}

await runCommand(main);
