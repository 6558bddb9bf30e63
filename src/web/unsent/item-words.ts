import { fieldLabel, sectionTitle, valueWord } from '../../../shared/record/field-words/tell-field.js';
import { isObject } from '../../../shared/wire/is-object.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { language } from '../words/speak.js';
import { unsent as say } from '../words/unsent.js';

/** One thing that an entry says: where it stands in what is sent, and the words. */
export interface Said {
  readonly at: string;
  readonly words: string;
}

/** A place in a section, or in what has no section; with its name for people. */
interface Place {
  readonly section: string | undefined;
  readonly path: string;
  readonly name: string;
}

/** Ids and how a time was taken tell a reader nothing. */
const UNTOLD: ReadonlySet<string> = new Set(['id', 'how', 'phoneOffsetS']);

/** What an entry is called; a call and the record come in parts. */
export function nameOf(item: QueuedItem): string {
  const name = say.names[item.about] ?? item.about;
  const section = sectionOf(item);
  return (item.about === 'call' || item.about === 'record') && section !== undefined
    ? say.part(name, sectionTitle(section, language()))
    : name;
}

/** Everything that an entry says, line by line; a file says its name. */
export function saidBy(item: QueuedItem): Said[] {
  const top = { section: sectionOf(item), path: '', name: '' };
  if (item.kind === 'file') return [{ at: item.name, words: sizeOf(item.size) }, ...tell(item.words, top)];
  return tell(documentIn(item.body), top);
}

/** What an entry in conflict says, beside what stands with the service: the lines in which they differ. */
export function differences(item: QueuedItem): { at: string; mine: string; theirs: string }[] {
  const top = { section: sectionOf(item), path: '', name: '' };
  const linesOf = (body: unknown) => new Map(tell(documentIn(body), top).map(({ at, words }) => [at, words]));
  const mine = linesOf(item.kind === 'request' ? item.body : undefined);
  const theirs = linesOf(item.problem?.current);
  return [...new Set([...mine.keys(), ...theirs.keys()])]
    .filter((at) => mine.get(at) !== theirs.get(at))
    .map((at) => ({ at, mine: mine.get(at) ?? say.nothing, theirs: theirs.get(at) ?? say.nothing }));
}

/** The same as text, to be copied or kept as a note. */
export function asText(item: QueuedItem): string {
  return saidBy(item)
    .map(({ at, words }) => (at === '' ? words : `${at}: ${words}`))
    .join('\n');
}

export function sizeOf(bytes: number): string {
  return bytes < 1_000_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;
}

/** The document in what is sent, without the envelope of a change. */
function documentIn(body: unknown): unknown {
  return isObject(body) && 'document' in body ? body['document'] : body;
}

function sectionOf(item: QueuedItem): string | undefined {
  return item.kind === 'request' ? /\/sections\/([a-z-]+)/.exec(item.path)?.[1] : undefined;
}

/** A document as lines, such as `Person 1, Name: Ann`. */
function tell(value: unknown, place: Place): Said[] {
  if (value === undefined || value === null || value === '') return [];
  if (Array.isArray(value)) {
    return value.every((item) => typeof item !== 'object')
      ? [{ at: place.name, words: value.map((item) => wordOf(item, place)).join(', ') }]
      : value.flatMap((item, index) => tell(item, itemOf(place, index + 1)));
  }
  if (!isObject(value)) return [{ at: place.name, words: wordOf(value, place) }];
  return Object.entries(value).flatMap(([name, part]) =>
    UNTOLD.has(name) ? [] : tell(part, name === 'value' ? place : memberOf(place, name)),
  );
}

function itemOf({ section, path, name }: Place, number: number): Place {
  const own = section && fieldLabel(section, `${path}/*`, language());
  return { section, path: `${path}/*`, name: `${own ?? name} ${number}`.trim() };
}

function memberOf(place: Place, member: string): Place {
  const path = `${place.path}/${member}`;
  const own = (place.section && fieldLabel(place.section, path, language())) ?? inWords(member);
  return { section: place.section, path, name: place.name === '' ? own : `${place.name}, ${own}` };
}

function wordOf(value: unknown, { section, path }: Place): string {
  if (section !== undefined && (typeof value === 'string' || typeof value === 'boolean'))
    return valueWord(section, path, value, language());
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** `calledBackAt` as words: `called back at`. */
const inWords = (name: string): string =>
  name.replaceAll(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`).replaceAll('-', ' ');
