import { fault, type PositionFault } from './position-reading.js';
import type { AngleToken, Axis } from './tokenize-angles.js';

type NumberToken = Extract<AngleToken, { kind: 'number' }>;

export interface WrittenAngle {
  /** Null when neither letter nor label says it. */
  axis: Axis | null;
  sign: 1 | -1;
  /** Written with a plus or a minus. */
  signed: boolean;
  /** Degrees, then minutes, then seconds: one to three. */
  numbers: NumberToken[];
}

const UNCLEAR = fault(
  'ambiguous',
  'It is not clear where the first angle ends: put a letter N, S, E or W with each, or one comma between them.',
);

/**
 * Splits tokens into the two angles that they write, or says why that cannot be done in one way only. What
 * ends the first angle is, in this order: letters, labels, the one separator, the one inner sign, degree
 * marks, and last the middle of an even count of numbers.
 * @example splitAngles(tokens of '33 49.08 N 96 34.26 W') // two angles of two numbers each
 */
export function splitAngles(tokens: readonly AngleToken[]): [WrittenAngle, WrittenAngle] | PositionFault {
  const groups = groupTokens(tokens);
  const [one, other] = groups;
  if (one === undefined || other === undefined || groups.length > 2) return UNCLEAR;
  const first = readAngle(one);
  if ('ok' in first) return first;
  const second = readAngle(other);
  if ('ok' in second) return second;
  if (first.axis === second.axis && first.axis !== null) {
    return fault('ambiguous', 'Give one latitude (N or S) and one longitude (E or W).');
  }
  const lettered = tokens.some(({ kind }) => kind === 'letter');
  if (lettered && [first, second].some(({ axis, signed }) => axis === null && !signed)) return UNCLEAR;
  return [first, second];
}

function groupTokens(tokens: readonly AngleToken[]): AngleToken[][] {
  const letters = tokens.filter(({ kind }) => kind === 'letter').length;
  const firstNumber = tokens.findIndex(({ kind }) => kind === 'number');
  if (letters > 0) {
    const rest = tokens.filter(({ kind }) => kind !== 'separator' && kind !== 'label');
    const leading = rest[0]?.kind === 'letter';
    return leading ? cutBefore(rest, ({ kind }) => kind === 'letter') : cutAfterLetters(rest);
  }
  if (tokens.some(({ kind }) => kind === 'label')) {
    const rest = tokens.filter(({ kind }) => kind !== 'separator');
    return cutBefore(rest, ({ kind }) => kind === 'label');
  }
  if (tokens.some(({ kind }) => kind === 'separator')) {
    const groups = cutBefore(tokens, ({ kind }) => kind === 'separator');
    return groups.map((group) => group.filter(({ kind }) => kind !== 'separator'));
  }
  if (tokens.some(({ kind }, at) => kind === 'sign' && at > firstNumber)) {
    return cutBefore(tokens, ({ kind }, at) => kind === 'sign' && at > firstNumber);
  }
  const isDegree = (token: AngleToken | undefined): boolean => token?.kind === 'mark' && token.part === 0;
  if (tokens.some(isDegree)) return cutBefore(tokens, (_token, at) => isDegree(tokens[at + 1]));
  const numbers = tokens.filter(({ kind }) => kind === 'number');
  if (numbers.length % 2 === 1) return [];
  const middle = numbers[numbers.length / 2];
  return cutBefore(tokens, (token) => token === middle);
}

function cutBefore(
  tokens: readonly AngleToken[],
  starts: (token: AngleToken, at: number) => boolean,
): AngleToken[][] {
  const groups: AngleToken[][] = [[]];
  tokens.forEach((token, at) => {
    if (at > 0 && starts(token, at)) groups.push([]);
    groups.at(-1)?.push(token);
  });
  return groups;
}

function cutAfterLetters(tokens: readonly AngleToken[]): AngleToken[][] {
  return cutBefore(tokens, (_token, at) => tokens[at - 1]?.kind === 'letter');
}

function readAngle(tokens: readonly AngleToken[]): WrittenAngle | PositionFault {
  const letters = tokens.filter((token) => token.kind === 'letter');
  const signs = tokens.filter((token) => token.kind === 'sign');
  const label = tokens.find((token) => token.kind === 'label');
  const numbers = tokens.filter((token) => token.kind === 'number');
  const [letter] = letters;
  const [sign] = signs;
  if (numbers.length < 1 || numbers.length > 3 || letters.length > 1 || signs.length > 1) return UNCLEAR;
  if (letter !== undefined && sign !== undefined) {
    return fault('sign-and-letter', 'Use a plus or minus sign or a letter for each angle, not both.');
  }
  const beforeNumber = tokens.findIndex(({ kind }) => kind === 'number');
  if (sign !== undefined && tokens.indexOf(sign) > beforeNumber) return UNCLEAR;
  if (!marksFit(tokens)) {
    return fault('unreadable', 'Mark degrees with °, minutes with ′ and seconds with ″, in this order.');
  }
  return {
    axis: letter?.axis ?? label?.axis ?? null,
    sign: letter?.sign ?? sign?.sign ?? 1,
    signed: sign !== undefined,
    numbers,
  };
}

/** A mark stands right after its number: ° after the first, ′ after the second, ″ after the third. */
function marksFit(tokens: readonly AngleToken[]): boolean {
  let part = -1;
  return tokens.every((token, at) => {
    if (token.kind === 'number') part += 1;
    return token.kind !== 'mark' || (tokens[at - 1]?.kind === 'number' && token.part === part);
  });
}
