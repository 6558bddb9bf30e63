import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { determine } from '../../shared/determination/determine.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';
import { durableCreate } from './durable-create.js';
import { handWritten } from './hand-written.js';
import { callOnPhone } from './call-on-phone.js';
import { openPhoneDesk } from './phone-desk.js';
import { registerPage } from './register-page.js';
import { typingOnPhone } from './typing-on-phone.js';

/**
 * `npm run bench`: each figure beside its yardstick of the same run, as a ratio. Shared machines are noisy,
 * so medians of many rounds, taken turn by turn, are what is printed; nothing here fails a build.
 */
const packs = await loadRulePacks();
const geography = loadGeography();

const facts: IncidentFacts = {
  schemaVersion: 1,
  occurredAt: '2026-06-13T11:20:00-05:00',
  place: { states: ['TX'], timeZone: 'America/Chicago' },
  casualtyTypes: ['person-ejected'],
  everyoneAccountedFor: 'yes',
  operatorAbleToReport: 'unknown',
  vessels: [{ id: 'A', use: 'rental', ours: true, numbered: 'yes', inspected: 'no', completeLoss: 'no' }],
  peopleAssessment: 'complete',
  people: [
    { id: 'p1', role: 'operator', vessel: 'A', outcome: 'injured', care: 'unknown' },
    { id: 'p2', role: 'passenger', vessel: 'A', outcome: 'unhurt' },
  ],
  damageAssessment: 'partial',
  damage: [{ id: 'd1', of: 'vessel', vessel: 'A', amount: { low: 300, high: 1200 } }],
};

/** Median microseconds of a call over rounds of `calls`. */
function time(calls: number, work: () => unknown): number {
  const begun = performance.now();
  for (let at = 0; at < calls; at += 1) work();
  return ((performance.now() - begun) * 1000) / calls;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

function compare(
  name: string,
  aim: number,
  calls: number,
  ours: () => unknown,
  yardstick: () => unknown,
): void {
  time(calls, ours);
  time(calls, yardstick);
  const rounds = Array.from({ length: 15 }, () => [time(calls, ours), time(calls, yardstick)] as const);
  report(name, aim, median(rounds.map(([one]) => one)), median(rounds.map(([, other]) => other)), 'µs');
}

function report(name: string, aim: number, ours: number, yardstick: number, unit: string): void {
  const ratio = ours / yardstick;
  const verdict = ratio <= aim ? 'reached' : 'not reached';
  console.log(
    `${name}: ${ours.toFixed(1)} ${unit} against ${yardstick.toFixed(1)} ${unit}, ratio ${ratio.toFixed(1)} (aim ${aim}: ${verdict})`,
  );
}

const texas = packs.filter(({ jurisdiction }) => ['US', 'TX'].includes(jurisdiction));
compare(
  'One determination, federal and Texas, against the same comparisons and clocks hand-written without trace',
  4,
  500,
  () => determine(facts, { packs: texas, geography, source: 'bench' }),
  () => handWritten(facts, texas, 'America/Chicago'),
);

const everywhere = packs.map(({ jurisdiction }) => jurisdiction).filter((code) => code !== 'US');
const allStates = { ...facts, place: { states: everywhere, timeZone: 'America/Chicago' } };
compare(
  `One determination, federal and all ${everywhere.length} other packs, against the same hand-written`,
  4,
  30,
  () => determine(allStates, { packs, geography, source: 'bench' }),
  () => handWritten(allStates, packs, 'America/Chicago'),
);

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const file = join(folder, 'facts.json');
writeFileSync(file, JSON.stringify(facts));
const command = join(import.meta.dirname, '..', '..', 'cli', 'determine.js');
const start = (args: readonly string[]): number => {
  const begun = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}`);
  return performance.now() - begun;
};
const starts = Array.from({ length: 15 }, () => [start([command, file]), start(['-e', '0'])] as const);
rmSync(folder, { recursive: true });
report(
  'Start-up of determine with one file, against node -e 0',
  5,
  median(starts.map(([one]) => one)),
  median(starts.map(([, other]) => other)),
  'ms',
);

/** As many as the yardstick answers in the same time, or a part of it. */
function share(name: string, aim: number, rounds: readonly (readonly [number, number])[]): void {
  const [ours, yardstick] = [0, 1].map((side) => median(rounds.map((round) => round[side] ?? NaN)));
  const ratio = median(rounds.map(([one, other]) => one / other));
  console.log(
    `${name}: ${ours?.toFixed(1)}/s against ${yardstick?.toFixed(1)}/s, ratio ${ratio.toFixed(2)} (aim ${aim}: ${ratio >= aim ? 'reached' : 'not reached'})`,
  );
}

const creates = await durableCreate();
share(
  'Durable creates of 50 clients, against the same statements by hand on bare Fastify',
  0.8,
  creates.bare,
);
share(
  'The same, against a hand that also determines, commits and hashes as each create must',
  0.8,
  creates.lawful,
);
share(
  'Register pages of 25 at 100,000 incidents, against SQL by hand on bare Fastify',
  0.75,
  await registerPage(),
);

/** A figure beside what it must not pass. */
function within(name: string, aim: number, figure: number, unit: string): void {
  console.log(
    `${name}: ${figure.toFixed(0)} ${unit} (aim ${aim} ${unit}: ${figure <= aim ? 'reached' : 'not reached'})`,
  );
}

const phone = await openPhoneDesk();
const SLOW = 'on a phone at a quarter of this processor, 1.6 Mbit/s and 150 ms';
const { first, again, scriptBytes } = await callOnPhone(phone);
within(`Call page usable, first visit, ${SLOW}`, 2500, median(first), 'ms');
within(`Call page usable, opened again, ${SLOW}`, 1000, median(again), 'ms');
within('Script of the call page over the wire, compressed', 120, scriptBytes / 1000, 'kB');
const { reference, characters, worst } = await typingOnPhone(phone, 'ruth');
within(
  `Worst lag of a key in the account of ${reference}, whose record has ${characters} characters, ${SLOW}`,
  100,
  worst,
  'ms',
);
await phone.close();
