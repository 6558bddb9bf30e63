/** A number that has no place in the record, whatever field it is typed into. */
export type RefusedNumber = 'card-number' | 'social-security-number';

/** Between the groups of a number: one space, dash or dot. */
const GAP = '[ \\u00a0\\u2007\\u202f.\\u2010-\\u2015-]';
const RUN = new RegExp(`(?<![\\p{L}\\p{N}_])\\d+(?:${GAP}\\d+)*(?![\\p{L}\\p{N}_])`, 'gu');
/** A telephone number as it is written in North America, or with its country: never a part of a card number. */
const PHONE = new RegExp(
  `(?<![\\d])(?:\\+\\d[\\d ().-]{6,16}\\d|(?:1${GAP})?\\(?\\d{3}\\)?${GAP}{1,2}\\d{3}${GAP}\\d{4})(?!\\d)`,
  'gu',
);
/** A decimal fraction, such as a coordinate: no digits of it are grouped. */
const FRACTION = /(?<!\d|\d\.)\d{1,3}\.\d{5,}(?![\d.])/gu;
const UUID = /[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}/giu;

/** Areas 000, 666 and 900 to 999, group 00 and serial 0000 were never given out (Social Security Administration). */
const SSN = '(?!000|666|9)\\d{3}{gap}(?!00)\\d{2}{gap}(?!0000)\\d{4}';
const GROUPED_SSN = new RegExp(
  `(?<![\\d]|\\d${GAP})${SSN.replaceAll('{gap}', '[ \\u00a0\\u2010-\\u2015-]')}(?!${GAP}?\\d)`,
  'u',
);
const NAMED_SSN = new RegExp(
  `(?:\\bssn\\b|social\\s+security)[^\\d\\n]{0,30}${SSN.replaceAll('{gap}', '')}(?!\\d)`,
  'iu',
);

/** ISO/IEC 7812-1: a payment card has 12 to 19 digits in use, the last a Luhn check digit; 13 is the fewest here. */
const [FEWEST, MOST] = [13, 19];
/** First digits of payment cards: 3 to 6, and 2221 to 2720 (memory). A run as a whole is judged more strictly. */
const CARD_START = /^(?:3|4|5|6|222[1-9]|22[3-9]|2[3-6]|27[01]|2720)/;

/**
 * The first card or Social Security number in a text; null when there is none. Cards are told by length and check
 * digit, alone or grouped by spaces, dashes or dots; telephone, hull and registration numbers pass.
 * @example findRefusedNumber('card 4111 1111 1111 1111 ok') // 'card-number'
 * @example findRefusedNumber('call 580-555-0123, hull ABC12345D404') // null
 */
export function findRefusedNumber(text: string): RefusedNumber | null {
  const plain = [UUID, FRACTION, PHONE].reduce((rest, known) => rest.replaceAll(known, ' / '), text);
  if (GROUPED_SSN.test(plain) || NAMED_SSN.test(plain)) return 'social-security-number';
  for (const [run] of plain.matchAll(RUN)) if (holdsCard(run.match(/\d+/g) ?? [])) return 'card-number';
  return null;
}

function holdsCard(groups: readonly string[]): boolean {
  for (const [first] of groups.entries()) {
    let digits = '';
    for (const [last, group] of [...groups.entries()].slice(first)) {
      digits += group;
      if (digits.length > MOST) break;
      const isWholeRun = first === 0 && last === groups.length - 1;
      const starts = isWholeRun ? !/^[01]/.test(digits) : CARD_START.test(digits);
      if (digits.length >= FEWEST && starts && passesLuhn(digits)) return true;
    }
  }
  return false;
}

/** ISO/IEC 7812-1 annex B: from the right, every second digit doubled, the digits of all added up. */
function passesLuhn(digits: string): boolean {
  const sum = [...digits].reverse().reduce((total, digit, place) => {
    const doubled = Number(digit) * (place % 2 === 0 ? 1 : 2);
    return total + (doubled > 9 ? doubled - 9 : doubled);
  }, 0);
  return sum % 10 === 0;
}
