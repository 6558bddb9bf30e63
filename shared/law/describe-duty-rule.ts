import {
  BASIS_WORDS,
  nameAmount,
  nameTime,
  nameTrigger,
  REPORTER_WORDS,
  TEST_NAMES,
} from './name-law-terms.js';
import type { AmountReading, DutyRule, Limit, LimitTime, ReadingBasis, Trigger } from './rule-pack.js';
import { isBetterBasis } from './weigh-basis.js';
import { wrapText } from './wrap-text.js';

/**
 * One duty for people, as lines of at most 80 columns: what calls for it, by when, who owes it and to whom.
 * @example describeDutyRule(texas.report)[1] // '   1. A person dies.'
 */
export function describeDutyRule(duty: DutyRule): string[] {
  return [
    '  Due when any one of these happens:',
    ...duty.triggers.flatMap((trigger, i) => describeTrigger(trigger, i + 1)),
    '  By when:',
    ...duty.limits.flatMap(describeLimit),
    ...describeWho(duty),
    ...wrapText('  To whom: ', sentence(duty.to)),
  ];
}

function describeTrigger(trigger: Trigger, number: number): string[] {
  return [
    ...wrapText(`  ${String(number).padStart(2)}. `, sentence(cited(nameTrigger(trigger), trigger.citation))),
    ...below(trigger.note),
    ...(trigger.basis ? below(standing(trigger.basis)) : []),
    ...describeAmounts(trigger.readings ?? []),
  ];
}

/**
 * What a trigger is worth that rests on weaker text than its pack: an agency's page stands, the rest asks for a
 * person's judgment. `superseded` also marks a text of uncertain reach, which the note explains.
 */
function standing(basis: ReadingBasis): string {
  const read = basis === 'superseded' ? '' : `Read ${BASIS_WORDS[basis]}. `;
  const weak = isBetterBasis('read-agency', basis);
  return `${read}${weak ? 'By itself it leaves the answer open: ask the agency.' : ''}`.trim();
}

function describeAmounts(readings: readonly AmountReading[]): string[] {
  const [only, another] = readings;
  if (only && !another) return below(`Source: ${sourceWords(only)}`);
  return readings.flatMap((reading) =>
    wrapText('      - ', `${nameAmount(reading.amountUsd, reading.comparison)}: ${sourceWords(reading)}`),
  );
}

function describeLimit(limit: Limit): string[] {
  const cases = limit.tests.map((test) => nameCase(test, limit)).join('; ');
  return [
    ...wrapText('   - ', sentence(cited(`${nameTime(limit.time)}${start(limit)}: ${cases}`, limit.citation))),
    ...(limit.time === null
      ? below('Until someone finds a time, the federal time for the same kind of event is shown.', 5)
      : []),
    ...below(limit.note, 5),
    ...describeTimes(limit.readings ?? []),
  ];
}

function describeTimes(readings: NonNullable<Limit['readings']>): string[] {
  const [only, another] = readings;
  if (only && !another) return below(`Source: ${sourceWords(only)}`, 5);
  return readings.flatMap((reading) =>
    wrapText('     - ', `${inSentence(reading.time)}: ${sourceWords(reading)}`),
  );
}

function start({ time, from }: Limit): string {
  if (time === null) return '';
  const after = 'immediate' in time ? ', counted from' : ' of';
  switch (from) {
    case 'occurrence':
      return 'immediate' in time ? '' : ' of the occurrence';
    case 'death':
      return `${after} the death`;
    case 'knowledge':
      return `${after} learning of it`;
    case 'event-known':
      return `${after} that event, or of learning of it where that is later`;
    case 'agreed-return':
      return `${after} the agreed return`;
    case 'unstated':
      return ' (the text does not say from when; taken from the occurrence)';
  }
}

function nameCase(test: Limit['tests'][number], limit: Limit): string {
  if (limit.deathWithinHours !== undefined)
    return `${TEST_NAMES[test]} within ${limit.deathWithinHours} hours`;
  if (test === 'incapacity' && limit.incapacityHours) {
    const { hours, comparison } = limit.incapacityHours;
    return `${TEST_NAMES[test]} of ${comparison === 'at-least' ? 'at least' : 'more than'} ${hours} hours`;
  }
  return TEST_NAMES[test];
}

function describeWho(duty: DutyRule): string[] {
  const who = duty.who.map((rule) => REPORTER_WORDS[rule]).join('; ');
  return [
    ...wrapText('  Who: ', sentence(cited(who || 'the text read does not say', duty.whoCitation))),
    ...below(duty.whoNote, 7),
  ];
}

function sourceWords({ source, asOf, basis }: Omit<AmountReading, 'amountUsd' | 'comparison'>): string {
  const worth = basis === 'superseded' ? ': shown, but it does not count' : '';
  return sentence(`${source}${asOf ? ` (as of: ${asOf})` : ''}, read ${BASIS_WORDS[basis]}${worth}`);
}

/** `cited('A person dies', '33 CFR 173.55(a)(1)')` is `'A person dies (33 CFR 173.55(a)(1))'`. */
function cited(text: string, citation: string | undefined): string {
  return citation ? `${text} (${citation})` : text;
}

function below(text: string, indent = 6): string[] {
  return text ? wrapText(' '.repeat(indent), sentence(text)) : [];
}

function inSentence(time: LimitTime | null): string {
  const words = nameTime(time);
  return words.charAt(0).toLowerCase() + words.slice(1);
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
