import { findVesselType, vesselTypes } from '../vocabulary/vessel-types.js';
import { splitWords } from './split-words.js';

/** What a craft may be called by. */
export interface CallableCraft {
  readonly unitName: string;
  readonly colours: readonly string[];
  /** Slug of a vessel type. */
  readonly type: string;
  readonly registrationNumber: string | null;
}

export interface CraftMatch<Craft extends CallableCraft = CallableCraft> {
  readonly craft: Craft;
  /** Its unit name or its registration number was said in full. */
  readonly named: boolean;
  /** What of it was said, for people: `PWC 7`, `red`, `personal watercraft`. */
  readonly because: readonly string[];
}

/** A number weighs little beside another type of craft: "two skis" counts and calls no kayak. */
const WEIGHTS = { name: 100, number: 30, colour: 20, type: 10, strayNumber: 5 };

/**
 * The craft that somebody on the phone may mean, the likeliest first: by unit name, registration number, a number
 * alone, colours and the type in a renter's words. Several are a question to ask, and none says nothing: the call is
 * taken either way. A type alone counts only where nothing better was said.
 * @example matchCraft('help, PWC 7', fleet)[0]?.craft.unitName // 'PWC 7'
 * @example matchCraft('the red one, number seven', fleet)[0]?.because // ['7', 'red']
 */
export function matchCraft<Craft extends CallableCraft>(
  words: string,
  fleet: readonly Craft[],
): CraftMatch<Craft>[] {
  const said = splitWords(words);
  const types = typesIn(said);
  const weighed = fleet.map((craft) => ({ craft, ...weigh(craft, said, types) }));
  const most = Math.max(0, ...weighed.map(({ weight }) => weight));
  return weighed
    .filter(({ weight }) => weight > (most >= WEIGHTS.colour ? WEIGHTS.type : 0))
    .sort((one, other) => other.weight - one.weight || compareNames(one.craft, other.craft))
    .map(({ craft, named, because }) => ({ craft, named, because }));
}

function weigh(craft: CallableCraft, said: readonly string[], types: ReadonlySet<string>) {
  const because: string[] = [];
  let weight = 0;
  const add = (reason: string, more: number): void => {
    because.push(reason);
    weight += more;
  };
  const name = splitWords(craft.unitName);
  // A name that is only a number is no name: "2 people in the water" does not call craft 2.
  const byName = name.some((part) => !isNumber(part)) && holds(said, name);
  const ofOtherType = types.size > 0 && !types.has(craft.type);
  if (byName) add(craft.unitName, WEIGHTS.name);
  else {
    for (const part of name) {
      if (!isNumber(part) || !said.includes(part)) continue;
      add(part, ofOtherType ? WEIGHTS.strayNumber : WEIGHTS.number);
    }
  }
  const number = craft.registrationNumber;
  const byNumber = number !== null && holds(said, splitWords(number));
  if (byNumber) add(number, WEIGHTS.name);
  for (const colour of craft.colours) if (holds(said, splitWords(colour))) add(colour, WEIGHTS.colour);
  if (types.has(craft.type)) {
    weight += WEIGHTS.type;
    if (!byName) because.push(findVesselType(craft.type)?.label.toLowerCase() ?? craft.type);
  }
  return { weight, named: byName || byNumber, because };
}

/** Every way to say a type, the longer ones first: a ski boat is no ski. */
const PHRASES = vesselTypes
  .flatMap(({ slug, label, saidAs }) =>
    [label, ...saidAs].map((phrase) => ({ slug, words: splitWords(phrase) })),
  )
  .sort((one, other) => other.words.length - one.words.length);

/** Types that were said; the words of a phrase are taken by it and say nothing else. */
function typesIn(said: readonly string[]): Set<string> {
  const found = new Set<string>();
  let rest = [...said];
  for (const { words } of PHRASES) {
    const at = placeOf(rest, words);
    if (at < 0) continue;
    for (const same of PHRASES) if (same.words.join(' ') === words.join(' ')) found.add(same.slug);
    rest = rest.map((word, place) => (place >= at && place < at + words.length ? '' : word));
  }
  return found;
}

const isNumber = (part: string): boolean => /^\d+$/.test(part);

/** Where some words stand in a row among others; -1 where they do not. */
function placeOf(words: readonly string[], part: readonly string[]): number {
  if (part.length === 0) return -1;
  return words.findIndex((_, start) => part.every((word, offset) => matches(words[start + offset], word)));
}

/** People say two skis and kayaks. */
const matches = (said: string | undefined, word: string): boolean => said === word || said === `${word}s`;

const holds = (said: readonly string[], part: readonly string[]): boolean => placeOf(said, part) >= 0;

const compareNames = (one: CallableCraft, other: CallableCraft): number =>
  one.unitName.localeCompare(other.unitName, 'en', { numeric: true });
