import { valueWord } from '../../../../shared/record/field-words/tell-field.js';
import type { PacketRecord } from '../../../../shared/hand-over/packet.js';
import type { Craft } from '../../../../shared/record/craft-section.js';
import type { PersonRecord } from '../../../../shared/record/people-section.js';
import type { Filing } from '../../../../shared/decision/filing.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import { amountsOf, sumAmounts, tellSum } from '../../../../shared/report/sum-amounts.js';
import { tellMoney } from '../../../../shared/report/tell-money.js';
import { tellValue, tellZonedTime } from '../../../../shared/report/tell-value.js';
import type { PaperRow } from '../paper/blocks.js';
import { nameThings, sectionsOf } from '../paper/name-things.js';
import { isStamp, tellStamp } from '../paper/tell-fact.js';
import type { JsonValue } from '../../../../shared/record/json-value.js';
import type { CoveringPolicy } from './covered-craft.js';

/** What a first notice is made from: the record as an insurer gets it, the policy, and what the sender adds. */
export interface NoticeMatter {
  readonly record: PacketRecord;
  readonly covering: CoveringPolicy;
  readonly seenAt: string;
  readonly callName: string;
  readonly callNumber: string;
  readonly timeZone: string;
}

/** The lines of the page by their headings. All of it fits on one page: what is long is cut, and says so. */
export interface NoticeParts {
  readonly policy: readonly PaperRow[];
  readonly what: readonly PaperRow[];
  readonly hurt: readonly PaperRow[];
  readonly craft: readonly PaperRow[];
  readonly clocks: readonly PaperRow[];
}

export function composeNotice(matter: NoticeMatter): NoticeParts {
  return {
    policy: policyRows(matter),
    what: whatRows(matter),
    hurt: hurtRows(matter),
    craft: craftRows(matter),
    clocks: clockRows(matter),
  };
}

const LONGEST_TEXT = 420;
const LONGEST_LINE = 150;
const MOST_PEOPLE = 6;
const MOST_CRAFT = 4;

function policyRows({ record, covering: { policy, craft: covered } }: NoticeMatter): PaperRow[] {
  const craft = (sectionsOf(record).craft?.craft ?? []).filter(({ id }) => covered.includes(id));
  const owners = [...new Set(craft.flatMap(({ ownerName }) => ownerName ?? []))];
  return [
    { label: 'Policy', text: policy.number },
    { label: 'Insurer', text: policy.insurer },
    ...(owners.length === 0
      ? []
      : [{ label: 'Owner of the craft', text: cut(owners.join(', '), LONGEST_LINE) }]),
    { label: 'Period', text: `${tellDay(policy.firstDay)} to ${tellDay(policy.lastDay)}` },
    ...(policy.covers === null ? [] : [{ label: 'Covers', text: policy.covers }]),
    ...(policy.deductibleCents === null
      ? []
      : [{ label: 'Deductible', text: tellMoney(policy.deductibleCents / 100) }]),
  ];
}

function whatRows({ record, timeZone }: NoticeMatter): PaperRow[] {
  const { account, damage, call } = sectionsOf(record);
  const place = sectionsOf(record)['time-and-place'];
  const where = [place?.description, place?.waterBody, place?.nearestTown].flatMap((one) =>
    typeof one?.value === 'string' ? [one.value.replace(/[.;,\s]+$/, '')] : [],
  );
  const types = account?.casualtyTypes?.value;
  const told = account?.whatHappened?.value ?? call?.said;
  const lines = damage?.lines ?? [];
  return [
    {
      label: 'When',
      text:
        place?.occurred === undefined ? 'Not recorded yet' : tellValue(place.occurred.value, { timeZone }),
    },
    { label: 'Where', text: cut(where.join('; '), 2 * LONGEST_LINE) || 'Not recorded yet' },
    ...(place?.position === undefined
      ? []
      : [{ label: 'Position', text: tellValue(place.position.value, { timeZone }) }]),
    {
      label: 'What',
      text:
        types === undefined ? 'Not recorded yet' : tellValue(types, { timeZone, terms: 'casualty-types' }),
    },
    { label: 'As told so far', text: told === undefined ? 'Not recorded yet' : cut(told, LONGEST_TEXT) },
    {
      label: 'Damage, as far as known',
      text: lines.length === 0 ? 'Not recorded yet' : tellSum(sumAmounts(lines.flatMap(amountsOf))),
    },
  ];
}

const HURT = ['injured', 'died', 'missing', 'not-back'];

/** Who is hurt; while it is not known of somebody, that is said and nobody is called unhurt. */
function hurtRows({ record }: NoticeMatter): PaperRow[] {
  const { people: section } = sectionsOf(record);
  const people = section?.people ?? [];
  const hurt = people.filter(({ outcome }) => HURT.includes(outcome?.value ?? ''));
  const open = people.filter(({ outcome }) => outcome === undefined || outcome.value === 'unknown');
  const whole = section?.assessment?.value === 'complete';
  const names = nameThings(record).people;
  const rows = hurt.slice(0, MOST_PEOPLE).map((person) => ({
    label: names.get(person.id) ?? 'Somebody',
    text: cut(harmOf(person), LONGEST_LINE),
  }));
  const unhurt = people.length - hurt.length - open.length;
  return [
    ...rows,
    ...(hurt.length > MOST_PEOPLE
      ? [{ label: 'And', text: `${hurt.length - MOST_PEOPLE} more who are hurt` }]
      : []),
    {
      label: 'People',
      text: `${people.length} listed: ${hurt.length} hurt, ${unhurt} unhurt, ${open.length} not known yet.${
        whole ? '' : ' The list may not be whole.'
      }`,
    },
  ];
}

function harmOf({ outcome, age, injuries = [], care }: PersonRecord): string {
  const word = (path: string, value: string): string => valueWord('people', path, value, 'en');
  const parts = [
    outcome === undefined ? '' : word('/people/*/outcome', outcome.value),
    typeof age?.value === 'number' ? `${age.value} years old` : '',
    ...injuries.map(({ nature, bodyPart }) =>
      [nature?.value, bodyPart?.value && `(${bodyPart.value})`].filter(Boolean).join(' '),
    ),
    care === undefined ? '' : `care needed: ${word('/people/*/care', care.value).toLowerCase()}`,
  ];
  return parts.filter((part) => part !== '').join('; ');
}

function craftRows({ record, covering, seenAt }: NoticeMatter): PaperRow[] {
  const craft = (sectionsOf(record).craft?.craft ?? []).filter(({ id }) => covering.craft.includes(id));
  return [
    ...craft
      .slice(0, MOST_CRAFT)
      .map((one) => ({ label: one.name ?? one.id, text: cut(numbersOf(one), LONGEST_LINE) })),
    ...(craft.length > MOST_CRAFT ? [{ label: 'And', text: `${craft.length - MOST_CRAFT} more` }] : []),
    { label: 'Can be seen', text: seenAt },
    {
      label: 'Kept as found',
      text: craft.map((one) => `${one.name ?? one.id}: ${keptWords(one)}`).join('; ') || 'Not recorded yet',
    },
  ];
}

function numbersOf({ hullNumber, registrationNumber, makeAndModel }: Craft): string {
  return [makeAndModel?.value, hullNumber && `HIN ${hullNumber.value}`, registrationNumber?.value]
    .filter(Boolean)
    .join(', ');
}

const keptWords = ({ keptAsFound }: Craft): string =>
  valueWord('craft', '/craft/*/keptAsFound', keptAsFound?.value ?? 'unknown', 'en').toLowerCase();

function clockRows({ record, covering, callName, callNumber, timeZone }: NoticeMatter): PaperRow[] {
  const { noticeTerms, noticePhone, noticeMail } = covering.policy;
  const taken = sectionsOf(record).call?.taken;
  const told =
    taken !== undefined && isStamp(taken as unknown as JsonValue)
      ? tellStamp(taken, timeZone)
      : 'Not recorded';
  const { filings = [] } = (record.attachments['filings'] ?? {}) as { filings?: Filing[] };
  const filed = filings.map(({ to, at, confirmation }) =>
    [to, tellZonedTime(at, timeZone), confirmation && `confirmed as ${confirmation}`]
      .filter(Boolean)
      .join(', '),
  );
  return [
    { label: 'We learned of it', text: told },
    {
      label: 'The policy asks',
      text: noticeTerms === null ? 'Not entered: read the policy' : cut(noticeTerms, 300),
    },
    {
      label: 'Notice goes to',
      text: [noticeMail, noticePhone].filter(Boolean).join(', ') || 'Not entered: read the policy',
    },
    {
      label: 'Official reports',
      text: cut(filed.join('; '), 2 * LONGEST_LINE) || 'None recorded as made yet',
    },
    { label: 'Call', text: `${callName}, ${callNumber}` },
  ];
}

/** A page has an end: what is cut says so, and the whole of it follows with the file. */
function cut(text: string, longest: number): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 32).trimEnd()} … (the whole follows)`;
}
