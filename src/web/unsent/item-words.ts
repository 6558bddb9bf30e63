import { isObject } from '../../../shared/wire/is-object.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { unsent as say } from '../words/unsent.js';

/** One thing that an entry says: where it stands in what is sent, and the words. */
export interface Said {
  readonly at: string;
  readonly words: string;
}

/** Ids and how a time was taken tell a reader nothing. */
const UNTOLD: ReadonlySet<string> = new Set(['id', 'how', 'phoneOffsetS']);

/** What an entry is called; a call comes in parts. */
export function nameOf(item: QueuedItem): string {
  const name = say.names[item.about] ?? item.about;
  const section = item.kind === 'request' ? /\/sections\/([a-z-]+)/.exec(item.path)?.[1] : undefined;
  const part = item.about === 'call' && section !== undefined ? say.sections[section] : undefined;
  return part === undefined ? name : say.part(name, part);
}

/** Everything that an entry says, line by line; a file says its name. */
export function saidBy(item: QueuedItem): Said[] {
  if (item.kind === 'file') return [{ at: item.name, words: sizeOf(item.size) }, ...tell(item.words, '')];
  return tell(documentIn(item.body), '');
}

/** The document in what is sent, without the envelope of a change. */
export function documentIn(body: unknown): unknown {
  return isObject(body) && 'document' in body ? body['document'] : body;
}

/**
 * A document as lines: `people 1, name: Ann`.
 * @param within where it stands itself
 */
export function tell(value: unknown, within: string): Said[] {
  if (value === undefined || value === null || value === '') return [];
  if (Array.isArray(value)) {
    return value.every((item) => typeof item !== 'object')
      ? [{ at: within, words: value.join(', ') }]
      : value.flatMap((item, place) => tell(item, `${within} ${place + 1}`.trim()));
  }
  if (!isObject(value)) return [{ at: within, words: String(value) }];
  return Object.entries(value).flatMap(([name, part]) =>
    UNTOLD.has(name) ? [] : tell(part, name === 'value' ? within : joined(within, inWords(name))),
  );
}

/** The lines in which two documents differ, each with both. */
export function differences(mine: unknown, theirs: unknown): { at: string; mine: string; theirs: string }[] {
  const ours = new Map(tell(mine, '').map(({ at, words }) => [at, words]));
  const others = new Map(tell(theirs, '').map(({ at, words }) => [at, words]));
  return [...new Set([...ours.keys(), ...others.keys()])]
    .filter((at) => ours.get(at) !== others.get(at))
    .map((at) => ({ at, mine: ours.get(at) ?? say.nothing, theirs: others.get(at) ?? say.nothing }));
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

const joined = (within: string, name: string): string => (within === '' ? name : `${within}, ${name}`);

/** `calledBackAt` as words: `called back at`. */
const inWords = (name: string): string =>
  name.replaceAll(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`).replaceAll('-', ' ');
