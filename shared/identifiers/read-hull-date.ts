export type HullNumberFormat = 'current' | 'model-year' | 'straight-year';

export interface HullDate {
  format: HullNumberFormat;
  /** Month of certification or manufacture, 1 to 12. */
  built: { year: number; month: number };
  /** Null in the straight year format, which does not tell it. */
  modelYear: number | null;
}

/** Position 9 of the current format, January to December. I is September: the ban on I, O and Q is on the serial. */
const MONTH_LETTERS = 'ABCDEFGHIJKL';
/** The model year format counts from August, so its first five letters fall in the year before. */
const FIRST_MONTH = 8;

/**
 * Reads positions 9 to 12 of a hull identification number in whichever of the three formats they fit, or
 * says why they fit none.
 * @example readHullDate('I394') // { format: 'current', built: { year: 1993, month: 9 }, modelYear: 1994 }
 * @example readHullDate('M73E') // { format: 'model-year', built: { year: 1972, month: 12 }, modelYear: 1973 }
 * @example readHullDate('1275') // { format: 'straight-year', built: { year: 1975, month: 12 }, modelYear: null }
 */
export function readHullDate(text: string): HullDate | string {
  const [, letter, digit, modelDigits] = /^([A-L])(\d)(\d\d)$/.exec(text) ?? [];
  if (letter !== undefined && digit !== undefined && modelDigits !== undefined) {
    const modelYear = fullYear(modelDigits);
    const built = { year: nearestYear(Number(digit), modelYear), month: MONTH_LETTERS.indexOf(letter) + 1 };
    return { format: 'current', built, modelYear };
  }
  const [, earlierModel, earlierLetter] = /^M(\d\d)([A-L])$/.exec(text) ?? [];
  if (earlierModel !== undefined && earlierLetter !== undefined) {
    const modelYear = fullYear(earlierModel);
    const monthsOn = FIRST_MONTH - 1 + MONTH_LETTERS.indexOf(earlierLetter);
    const built = { year: modelYear - 1 + Math.floor(monthsOn / 12), month: (monthsOn % 12) + 1 };
    return { format: 'model-year', built, modelYear };
  }
  const [, month, year] = /^(0[1-9]|1[0-2])(\d\d)$/.exec(text) ?? [];
  if (month !== undefined && year !== undefined) {
    return {
      format: 'straight-year',
      built: { year: fullYear(year), month: Number(month) },
      modelYear: null,
    };
  }
  return whyUnreadable(text);
}

/** There was no number before 1972, so 72 to 99 are of the last century. */
function fullYear(digits: string): number {
  const year = Number(digits);
  return year >= 72 ? 1900 + year : 2000 + year;
}

/** The year with this last digit that is nearest to the model year, the earlier of two as near. */
function nearestYear(lastDigit: number, modelYear: number): number {
  const back = (modelYear - lastDigit) % 10;
  return back <= 5 ? modelYear - back : modelYear + 10 - back;
}

function whyUnreadable(text: string): string {
  const hint = /[IOQ]/.test(text.slice(1)) ? ' A letter I, O or Q may be a misread 1 or 0.' : '';
  const first = text.charAt(0);
  if (/\d/.test(first)) {
    return /^(?:0[1-9]|1[0-2])/.test(text)
      ? `Positions 11 and 12 are ${text.slice(2)}: two digits of a year are missing there.${hint}`
      : `Positions 9 and 10 are ${text.slice(0, 2)}: a month goes from 01 to 12.${hint}`;
  }
  if (first === 'M') {
    return `After M in position 9 come two digits of the model year and a month from A to L, not ${text.slice(1)}.${hint}`;
  }
  if (MONTH_LETTERS.includes(first)) {
    return `After the month in position 9 come three digits, of the year and the model year, not ${text.slice(1)}.${hint}`;
  }
  return `Position 9 is ${first}: a month goes from A (January) to L (December).${hint}`;
}
