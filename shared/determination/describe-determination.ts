import { wrapText } from '../law/wrap-text.js';
import { localTime, timeLeft } from '../time/tell-time.js';
import type { CandidateState, Determination, Duty, Question, Reason } from './determination.js';
import {
  BASIS_SENTENCES,
  clockOf,
  nameJurisdiction,
  nameKind,
  OUTCOME_WORDS,
  SQUARES,
  TRUTH_WORDS,
  whatToDo,
} from './duty-words.js';

const WIDTH = 80;
const CAUTIONS = [
  'Anyone hurt, missing or in danger: emergency services first, 911 or VHF channel 16.',
  'This is not legal advice. Confirm with the state agency and with counsel before deciding that nothing is due.',
];

/**
 * A determination as a page for people, at most 80 columns wide: the duties with their clocks and what is
 * left of them at `now` (epoch milliseconds), who reports, what is open, and every reason.
 * @example describeDetermination(determination, Date.now()).startsWith('DETERMINATION') // true
 */
export function describeDetermination(determination: Determination, now: number): string {
  const { source, timeZone, states, duties } = determination;
  return [
    `DETERMINATION of ${source}`,
    ...CAUTIONS.flatMap((caution) => wrapText('  ! ', caution)),
    '',
    ...wrapText('Where: ', states.length === 0 ? 'no state known.' : `${states.map(whereWords).join('; ')}.`),
    ...wrapText('Times: ', `local, zone ${timeZone}.`),
    ...duties.flatMap((duty) => ['', '-'.repeat(WIDTH), ...describeDuty(duty, now)]),
    '',
  ].join('\n');
}

function whereWords({ state, chosenBy, distanceToLineM }: CandidateState): string {
  const name = nameJurisdiction(`us-${state}`);
  const line = distanceToLineM === null ? '' : `, ${distanceToLineM} m from its line`;
  return {
    stated: `${name}, as stated${line}`,
    'position-inside': `${name}, by the position${line}`,
    'position-near-line': `${name}, because the position is near${line}`,
  }[chosenBy];
}

function describeDuty(duty: Duty, now: number): string[] {
  const title = `${nameKind(duty.kind)}, ${nameJurisdiction(duty.jurisdiction)}`;
  return [
    ...wrapText(`${SQUARES[duty.outcome]} `, `${OUTCOME_WORDS[duty.outcome].toUpperCase()}: ${title}`),
    ...describeClock(duty, now),
    ...wrapText('  ', whatToDo(duty)),
    ...(duty.outcome === 'not-required'
      ? []
      : duty.reporters.flatMap(({ vessel, text }) =>
          wrapText(vessel === null ? '  Who: ' : `  Who, for ${vessel}: `, text),
        )),
    ...describeFiling(duty),
    ...describeQuestions(duty.questions),
    '  Why',
    ...duty.reasons.flatMap(describeReason),
    ...wrapText('  Law: ', [BASIS_SENTENCES[duty.packBasis], duty.citations.join('; ')].join(' ').trim()),
  ];
}

/** Where a report goes, what an officer's report is worth, and whether it stays confidential; unknown is said. */
function describeFiling({
  outcome,
  filedWith = [],
  officerReportExcuses,
  reportConfidential,
}: Duty): string[] {
  if (outcome === 'not-required' || officerReportExcuses === undefined) return [];
  return [
    ...filedWith.flatMap(({ vessel, text, because }) =>
      wrapText(`  Where, for ${vessel}: `, `${text}. ${because}`),
    ),
    ...wrapText('  An officer’s report stands in for it: ', `${officerReportExcuses}.`),
    ...wrapText('  The law keeps it confidential: ', `${reportConfidential ?? 'unknown'}.`),
  ];
}

function describeClock(duty: Duty, now: number): string[] {
  const due = clockOf(duty);
  if (due === null) return duty.outcome === 'undetermined' ? ['  Clock: none is known, so ask now.'] : [];
  const when = `${localTime(due, now)}, ${timeLeft(due, now)}`;
  const lines = duty.immediate
    ? wrapText('  Now: ', `without delay, counted from ${localTime(due, now)}${ifRequired(duty)}.`)
    : wrapText('  By: ', `${when}${ifRequired(duty)}.`);
  if (duty.dueAt !== null && duty.dueAtIfRequired !== null) {
    const sooner = `${localTime(duty.dueAtIfRequired, now)}, ${timeLeft(duty.dueAtIfRequired, now)}`;
    lines.push(...wrapText('  Could be sooner: ', `${sooner}, by what is still open.`));
  }
  return duty.dueBasis === null ? lines : [...lines, ...wrapText('  Limit: ', `${duty.dueBasis}.`)];
}

function ifRequired({ dueAt }: Duty): string {
  return dueAt === null ? ', if it is required' : '';
}

function describeQuestions(questions: readonly Question[]): string[] {
  if (questions.length === 0) return [];
  return [
    '  Still open, the most telling first',
    ...questions.flatMap(({ fact, text }, index) =>
      wrapText(
        `    ${index + 1}. `,
        `${text} ${fact === null ? '(a point of law: ask the agency or counsel)' : `(${fact})`}`,
      ),
    ),
  ];
}

function describeReason({ value, text, citation }: Reason): string[] {
  const law = citation === undefined ? '' : ` [${citation}]`;
  return wrapText(`    ${SQUARES[value]} ${TRUTH_WORDS[value]}: `, `${text}${law}`);
}
