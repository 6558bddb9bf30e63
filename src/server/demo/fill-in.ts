import { Temporal } from 'temporal-polyfill';

/** What the demonstration has made so far, by name; and from when and where its times are counted. */
export interface Known {
  readonly ids: ReadonlyMap<string, string>;
  /** The moment of loading, RFC 3339. */
  readonly now: string;
  /** IANA zone in which times of day are told. */
  readonly timeZone: string;
}

const BRACES = /^\{(.+)\}$/;
const IN_TEXT = /\{([^{}]+)\}/g;

/**
 * Fills in a document of the demonstration: `{craft PWC 4}` is the id of what was made under that name, `{9 days ago,
 * 14:05}` an instant, and `{day 9 days ago}` a day.
 * @throws Error for a name that nothing was made under, and for a time that cannot be read
 * @example fillIn({ at: '{2 days ago, 09:30}' }, known) // { at: '2026-06-11T14:30:00Z' }
 */
export function fillIn(document: unknown, known: Known): unknown {
  if (typeof document === 'string') return fillInText(document, known);
  if (Array.isArray(document)) return document.map((item) => fillIn(item, known));
  if (typeof document !== 'object' || document === null) return document;
  return Object.fromEntries(Object.entries(document).map(([name, value]) => [name, fillIn(value, known)]));
}

/** The same in a text: an address, or a sentence. */
export function fillInText(text: string, known: Known): string {
  const whole = BRACES.exec(text)?.[1];
  if (whole !== undefined && !/[{}]/.test(whole)) return valueOf(whole, known);
  return text.replaceAll(IN_TEXT, (_all, inside: string) => valueOf(inside, known));
}

function valueOf(words: string, known: Known): string {
  const day = /^day (.+)$/.exec(words)?.[1];
  if (day !== undefined) return momentOf(day, known).toPlainDate().toString();
  const id = known.ids.get(words);
  return id ?? momentOf(words, known).toInstant().toString();
}

/**
 * Reads a time of the demonstration: `9 days ago, 14:05`, `today, 08:00`, `in 20 days, 09:00`, `3 days ago`, `50
 * minutes ago`, `2 hours ago`, `in 6 hours`.
 * @throws Error when it is none of these
 */
export function momentOf(words: string, { now, timeZone }: Omit<Known, 'ids'>): Temporal.ZonedDateTime {
  const start = Temporal.Instant.from(now).toZonedDateTimeISO(timeZone);
  const [span = '', clock] = words.split(', ');
  const duration = durationOf(span);
  if (duration === undefined) throw new Error(`The demonstration names "${words}", which it has not made.`);
  const moment = start.add(duration);
  return clock === undefined ? moment : moment.withPlainTime(Temporal.PlainTime.from(clock));
}

function durationOf(span: string): Temporal.Duration | undefined {
  if (span === 'today') return Temporal.Duration.from({ days: 0 });
  const { groups } = /^(?<ahead>in )?(?<count>\d+) (?<unit>day|hour|minute)s?(?<ago> ago)?$/.exec(span) ?? {};
  if (groups === undefined || (groups['ahead'] === undefined) === (groups['ago'] === undefined))
    return undefined;
  const count = Number(groups['count']) * (groups['ago'] === undefined ? 1 : -1);
  return Temporal.Duration.from({ [`${groups['unit'] ?? ''}s`]: count });
}
