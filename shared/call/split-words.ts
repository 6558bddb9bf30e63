const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

const NUMBERS = new Map<string, number>([
  ...SMALL.map((word, value): [string, number] => [word, value]),
  ...TENS.map((word, place): [string, number] => [word, (place + 2) * 10]),
  // How a nine is said on the radio.
  ['niner', 9],
]);

/** Said around a name without being a part of it. */
const FILLERS = new Set(['number', 'no', 'nr', 'unit', 'the']);

/**
 * What was said or typed, cut into lower-case words and numbers, so that one name has one form: number words become
 * digits, spelled letters a word, letters and digits part, and fillers go.
 * @example splitWords('Help! P.W.C. number seven') // ['help', 'pwc', '7']
 * @example splitWords('PWC07') // ['pwc', '7']
 */
export function splitWords(text: string): string[] {
  const plain = text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const pieces = plain.match(/\p{L}+|\p{N}+/gu) ?? [];
  const words = joinLetters(pieces.filter((piece) => !FILLERS.has(piece)));
  return joinNumbers(words);
}

/** `p`, `w`, `c` in a row is a word that was spelled. */
function joinLetters(pieces: readonly string[]): string[] {
  const joined: string[] = [];
  let spelled = '';
  for (const piece of [...pieces, '']) {
    if (/^\p{L}$/u.test(piece)) {
      spelled += piece;
      continue;
    }
    if (spelled !== '') joined.push(spelled);
    spelled = '';
    if (piece !== '') joined.push(piece);
  }
  return joined;
}

/** `twenty`, `one` is 21; `07` is 7. */
function joinNumbers(words: readonly string[]): string[] {
  const joined: string[] = [];
  let tens: number | null = null;
  for (const word of words) {
    const value = /^\d+$/.test(word) ? Number(word) : NUMBERS.get(word);
    if (tens !== null && value !== undefined && value > 0 && value < 10 && NUMBERS.has(word)) {
      joined[joined.length - 1] = String(tens + value);
      tens = null;
      continue;
    }
    tens = value !== undefined && NUMBERS.has(word) && value >= 20 ? value : null;
    joined.push(value === undefined ? word : String(value));
  }
  return joined;
}
