/** What angles are written with. `part` of a mark: 0 degrees, 1 minutes, 2 seconds. */
export type AngleToken =
  | { kind: 'number'; value: number; decimals: number; whole: boolean }
  | { kind: 'mark'; part: 0 | 1 | 2 }
  | { kind: 'letter'; axis: Axis; sign: 1 | -1 }
  | { kind: 'label'; axis: Axis }
  | { kind: 'sign'; sign: 1 | -1 }
  | { kind: 'separator' };

export type Axis = 'latitude' | 'longitude';

/** The look-alikes that keyboards, charts and phones produce, each for the one sign used here. */
const LOOK_ALIKES: readonly (readonly [RegExp, string])[] = [
  [/[º˚]/g, '°'],
  [/[′’‘ʹ´`]/g, "'"],
  [/[″”“ʺ]|''/g, '"'],
  [/[−–—‐‑]/g, '-'],
  [/[()[\]]/g, ' '],
];

const PATTERN =
  /(?<number>\d+(?:\.\d*)?|\.\d+)|(?<degree>°|DEG(?:REES?)?\b\.?)|(?<minute>'|MIN(?:UTES?)?\b\.?)|(?<second>"|SEC(?:ONDS?)?\b\.?)|(?<label>LAT(?:ITUDE)?|LON(?:G(?:ITUDE)?)?|LNG)\b[:=.]*|(?<letter>NORTH|SOUTH|EAST|WEST|[NSEW])(?![A-Z])\.?|(?<sign>[+-])|(?<separator>[,;/|]|AND\b)|\s+/y;

/**
 * Cuts upper-case text into tokens, or returns the piece that is none of them. A hyphen between a whole
 * number and the next (33-49.08 N) joins parts of one angle and is dropped.
 * @example tokenizeAngles('33-49.08 N') // number 33, number 49.08, letter
 */
export function tokenizeAngles(text: string): AngleToken[] | string {
  const clean = LOOK_ALIKES.reduce((line, [pattern, sign]) => line.replace(pattern, sign), text);
  const tokens: AngleToken[] = [];
  PATTERN.lastIndex = 0;
  while (PATTERN.lastIndex < clean.length) {
    const start = PATTERN.lastIndex;
    const match = PATTERN.exec(clean);
    if (match === null) return clean.slice(start).trim().split(/\s/, 1)[0] ?? '';
    const { number, degree, minute, second, label, letter, sign, separator } = match.groups ?? {};
    if (number !== undefined) tokens.push(numberToken(number));
    else if (degree !== undefined) tokens.push({ kind: 'mark', part: 0 });
    else if (minute !== undefined) tokens.push({ kind: 'mark', part: 1 });
    else if (second !== undefined) tokens.push({ kind: 'mark', part: 2 });
    else if (label !== undefined) tokens.push({ kind: 'label', axis: axisOf(label.startsWith('LA')) });
    else if (letter !== undefined) tokens.push(letterToken(letter));
    else if (separator !== undefined) tokens.push({ kind: 'separator' });
    else if (sign === '+') tokens.push({ kind: 'sign', sign: 1 });
    else if (sign === '-') {
      const hyphen = readHyphen(clean, start, tokens);
      if (hyphen === 'unclear') return '-';
      if (hyphen !== 'joins') tokens.push(hyphen);
    }
  }
  return tokens;
}

/** Between blanks a hyphen after a letter is a dash; after a number it could be a dash or a minus. */
function readHyphen(
  text: string,
  at: number,
  tokens: readonly AngleToken[],
): AngleToken | 'joins' | 'unclear' {
  const last = tokens.at(-1);
  const afterNumber = last?.kind === 'number' || last?.kind === 'mark';
  const touchesNext = /[\d.]/.test(text.charAt(at + 1));
  if (!touchesNext && last?.kind === 'letter') return { kind: 'separator' };
  if (!touchesNext && afterNumber) return 'unclear';
  const number = tokens.findLast((token) => token.kind === 'number');
  const touchesBoth = afterNumber && touchesNext && /\S/.test(text.charAt(at - 1));
  return touchesBoth && number?.whole === true ? 'joins' : { kind: 'sign', sign: -1 };
}

function numberToken(text: string): AngleToken {
  const point = text.indexOf('.');
  const decimals = point === -1 ? 0 : text.length - point - 1;
  return { kind: 'number', value: Number(text), decimals, whole: point === -1 };
}

function letterToken(word: string): AngleToken {
  const letter = word.charAt(0);
  return { kind: 'letter', axis: axisOf('NS'.includes(letter)), sign: 'NE'.includes(letter) ? 1 : -1 };
}

function axisOf(isLatitude: boolean): Axis {
  return isLatitude ? 'latitude' : 'longitude';
}
