import { isJsonObject, type JsonObject, type JsonValue } from '../../../../shared/record/json-value.js';
import { tellTime } from '../../../../shared/report/tell-value.js';
import { nameJurisdiction, nameKind } from '../../../../shared/determination/duty-words.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import type { Block, PaperRow } from './blocks.js';
import { nameOf, type Names } from './name-things.js';
import { isInstant } from '../../../../shared/time/is-instant.js';

/** What the lists of the service are called, by section and list; a list that is not named here by its own name. */
const LISTS: Readonly<Record<string, string>> = {
  'custody/items': 'Thing kept',
  'evidence/files': 'File',
  'outside-evidence/items': 'Evidence that others hold',
  'holds/holds': 'Hold',
  'holds/withdrawals': 'Withdrawal directed by counsel',
  'requests/requests': 'Request',
  'decisions/decisions': 'Decision',
  'decisions/reopenings': 'Reopening',
  'filings/filings': 'Filing',
  'filings/operatorNotices': 'Operator told of the duty to report',
  'filings/legalCalls': 'Call about the law',
  'reports/notes': 'Notes on a report',
  'reports/printed': 'Paper printed',
  'assignments/counsel': 'Counsel assigned',
};

/** Members whose names say less than they should. */
const MEMBERS: Readonly<Record<string, string>> = {
  at: 'When',
  by: 'Recorded by',
  to: 'To',
  way: 'How',
  form: 'What was made',
  filedBy: 'Reported as',
  filer: 'Made by',
  satisfies: 'Answers',
  copy: 'Copy (file)',
  of: 'Began with',
  told: 'Told?',
  saysFiled: 'Says that it was made',
  why: 'Why',
  what: 'What',
  with: 'With whom',
  handOvers: 'Changed hands',
  vessel: 'Craft',
};

/** Marks of our own that tell a stranger nothing. */
const UNTOLD = new Set(['id', 'version', 'account', 'key', 'ground', 'handler', 'hold']);

/** A section that the service writes, each item of its lists under its own heading. */
export function composeLists(section: string, document: JsonObject, names: Names, timeZone: string): Block[] {
  return Object.entries(document).flatMap(([list, items]): Block[] => {
    const word = LISTS[`${section}/${list}`] ?? wordsOf(list);
    if (!Array.isArray(items)) return [{ kind: 'rows', rows: rowsOf({ [list]: items }, names, timeZone) }];
    return items
      .filter((item: JsonValue) => isJsonObject(item))
      .flatMap((item: JsonObject, place): Block[] => {
        const title = `${word} ${place + 1}`;
        return [
          { kind: 'heading', title },
          { kind: 'rows', rows: rowsOf(item, names, timeZone), of: title },
        ];
      });
  });
}

function rowsOf(item: JsonObject, names: Names, timeZone: string): PaperRow[] {
  return Object.entries(item).flatMap(([member, value]) => {
    if (UNTOLD.has(member) || value === null || isUnnamed(member, value, names)) return [];
    const label = MEMBERS[member] ?? wordsOf(member);
    return [{ label, text: tell(member, value, names, timeZone), field: { path: '', value } }];
  });
}

/** What began a hold is a line of the record, told by its name: its id says nothing. */
const causeOf = ({ people, contacts }: Names, id: string): string | undefined =>
  people.get(id) ?? contacts.get(id);

const isUnnamed = (member: string, value: JsonValue, names: Names): boolean =>
  member === 'of' &&
  [value].flat().every((one) => typeof one === 'string' && causeOf(names, one) === undefined);

const SLUG = /^[a-z]+(-[a-z]+)*$/;
/** `us-tx/accident-report`. */
const DUTY = /^(us(?:-[a-z]{2})?)\/([a-z-]+)$/;

function tell(member: string, value: JsonValue, names: Names, timeZone: string): string {
  if (Array.isArray(value)) {
    return value.map((one: JsonValue) => tell(member, one, names, timeZone)).join('; ') || 'None';
  }
  if (typeof value === 'boolean') return value ? 'Yes' : 'No';
  if (typeof value === 'string') {
    if (isInstant(value)) return tellTime(value, timeZone);
    const [, place, kind] = DUTY.exec(value) ?? [];
    if (place !== undefined && kind !== undefined) return `${nameKind(kind)}, ${nameJurisdiction(place)}`;
    if (member === 'jurisdiction') return nameJurisdiction(value);
    if (member === 'of') return causeOf(names, value) ?? value;
    return nameOf(names, member, value) ?? (SLUG.test(value) ? wordsOf(value) : tellDay(value));
  }
  if (!isJsonObject(value)) return JSON.stringify(value);
  if (typeof value['person'] === 'string' && typeof value['role'] === 'string') {
    return `${value['person']}, ${value['role']}`;
  }
  // A report answers a duty of a craft: one thing, and said as one.
  if (typeof value['duty'] === 'string' && typeof value['vessel'] === 'string') {
    return `${tell('duty', value['duty'], names, timeZone)} (${tell('vessel', value['vessel'], names, timeZone)})`;
  }
  return rowsOf(value, names, timeZone)
    .map(({ label, text }) => `${label}: ${text}`)
    .join(', ');
}

/** `wordsOf('filedBy')` is `'Filed by'`. */
function wordsOf(name: string): string {
  const words = name.replaceAll('-', ' ').replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
