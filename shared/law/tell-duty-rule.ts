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

/** One point of a rule in sentences. */
export interface ToldPoint {
  readonly text: string;
  /** What is odd about it, and where it comes from when that is one place. */
  readonly below: readonly string[];
  /** What differing sources say, the best-based first. */
  readonly sources: readonly string[];
}

/** One duty in sentences: what calls for it (any one does), by when, who owes it and to whom. */
export interface ToldDuty {
  readonly triggers: readonly ToldPoint[];
  readonly limits: readonly ToldPoint[];
  readonly who: ToldPoint;
  readonly to: string;
}

/**
 * A duty's rule for people, whatever it is shown on.
 * @example tellDutyRule(texas.report).triggers[0].text // 'A person dies.'
 */
export function tellDutyRule(duty: DutyRule): ToldDuty {
  const who = duty.who.map((rule) => REPORTER_WORDS[rule]).join('; ');
  return {
    triggers: duty.triggers.map(tellTrigger),
    limits: duty.limits.map(tellLimit),
    who: {
      text: sentence(cited(who || 'the text read does not say', duty.whoCitation)),
      below: sentences(duty.whoNote),
      sources: [],
    },
    to: sentence(duty.to),
  };
}

function tellTrigger(trigger: Trigger): ToldPoint {
  const [only, another] = trigger.readings ?? [];
  return {
    text: sentence(cited(nameTrigger(trigger), trigger.citation)),
    below: [
      ...sentences(trigger.note),
      ...(trigger.basis ? sentences(standing(trigger.basis)) : []),
      ...(only && !another ? [sentence(`Source: ${sourceWords(only)}`)] : []),
    ],
    sources: another === undefined ? [] : (trigger.readings ?? []).map(amountWords),
  };
}

function amountWords(reading: AmountReading): string {
  return `${nameAmount(reading.amountUsd, reading.comparison)}: ${sourceWords(reading)}`;
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

function tellLimit(limit: Limit): ToldPoint {
  const cases = limit.tests.map((test) => nameCase(test, limit)).join('; ');
  const [only, another] = limit.readings ?? [];
  return {
    text: sentence(cited(`${nameTime(limit.time)}${start(limit)}: ${cases}`, limit.citation)),
    below: [
      ...(limit.time === null
        ? ['Until someone finds a time, the federal time for the same kind of event is shown.']
        : []),
      ...sentences(limit.note),
      ...(only && !another ? [sentence(`Source: ${sourceWords(only)}`)] : []),
    ],
    sources:
      another === undefined
        ? []
        : (limit.readings ?? []).map((reading) => `${inSentence(reading.time)}: ${sourceWords(reading)}`),
  };
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

function sourceWords({ source, asOf, basis }: Omit<AmountReading, 'amountUsd' | 'comparison'>): string {
  const worth = basis === 'superseded' ? ': shown, but it does not count' : '';
  return sentence(`${source}${asOf ? ` (as of: ${asOf})` : ''}, read ${BASIS_WORDS[basis]}${worth}`);
}

/** `cited('A person dies', '33 CFR 173.55(a)(1)')` is `'A person dies (33 CFR 173.55(a)(1))'`. */
function cited(text: string, citation: string | undefined): string {
  return citation ? `${text} (${citation})` : text;
}

function inSentence(time: LimitTime | null): string {
  const words = nameTime(time);
  return words.charAt(0).toLowerCase() + words.slice(1);
}

function sentences(text: string): string[] {
  return text ? [sentence(text)] : [];
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
