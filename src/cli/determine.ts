import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { determine } from '../../shared/determination/determine.js';
import type { Determination } from '../../shared/determination/determination.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { Geography } from '../../shared/place/geography.js';
import { problemOf, type Problem } from '../../shared/wire/problem.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { loadRulePacks } from '../server/law/law.api.js';
import { loadGeography } from '../server/place/place.api.js';
import { runCommand } from './run-command.js';

const USAGE = `Usage: npm run -s determine -- [--explain] [FILE ...]
Facts of an occurrence in, one line of JSON for each file out; - or no file reads standard input.
--explain prints a page for people instead.`;

interface Law {
  readonly packs: readonly RulePack[];
  readonly geography: Geography;
}

/** A file's determination, or the problem that says why there is none. */
function determineFile(path: string, law: Law): Determination | Problem {
  let document: unknown;
  try {
    document = JSON.parse(readFileSync(path === '-' ? 0 : path, 'utf8'));
  } catch (error) {
    return problemOf(400, [{ pointer: '', detail: unreadable(path, error) }], path);
  }
  const read = readIncidentFacts(document);
  return read.ok ? determine(read.facts, { ...law, source: path }) : problemOf(422, read.errors, path);
}

function unreadable(path: string, error: unknown): string {
  const reason = error instanceof Error ? error.message : String(error);
  return error instanceof SyntaxError ? `Not JSON: ${reason}` : `${path} cannot be read: ${reason}`;
}

type Show = (answer: Determination | Problem) => string;

const asLine: Show = (answer) => JSON.stringify(answer);

/** The page for people is loaded only when asked for: a machine that reads lines starts faster without it. */
async function explaining(): Promise<Show> {
  const { explainAnswer } = await import('./explain-determination.js');
  const now = Date.now();
  return (answer) => explainAnswer(answer, now);
}

async function main(): Promise<number> {
  let options;
  try {
    options = parseArgs({ allowPositionals: true, options: { explain: { type: 'boolean' } } });
  } catch (error) {
    console.error(`${error instanceof Error ? error.message : String(error)}\n\n${USAGE}`);
    return 2;
  }
  const files = options.positionals.length > 0 ? options.positionals : ['-'];
  const law: Law = { packs: await loadRulePacks(), geography: loadGeography() };
  const show = options.values.explain ? await explaining() : asLine;
  let status = 0;
  for (const file of files) {
    const answer = determineFile(file, law);
    if ('errors' in answer) status = 2;
    process.stdout.write(`${show(answer)}\n`);
  }
  return status;
}

await runCommand(main);
