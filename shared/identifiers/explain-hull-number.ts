import { readHullDate, type HullDate, type HullNumberFormat } from './read-hull-date.js';

export interface HullNumberReading {
  asWritten: string;
  /** As it is kept: capitals and digits, without blanks, hyphens, slashes or country. */
  number: string;
  /** Two letters before the twelve characters, for example US. */
  country: string | null;
  format: HullNumberFormat | null;
  manufacturer: string | null;
  serial: string | null;
  /** Month of certification or manufacture. */
  built: { year: number; month: number } | null;
  modelYear: number | null;
  /** The parts in words. */
  explanation: string[];
  /** What is odd about it. A number is never refused: boats carry wrong ones, and they are evidence. */
  remarks: string[];
}

const LENGTH = 12;

/**
 * Takes a hull identification number apart: the format of 33 CFR 181.25, or one of the two that boats
 * carried from November 1972 until it took over in 1984 (described by secondary sources only).
 * @example explainHullNumber('ABC12345D404').explanation
 * // ['ABC is the code of the manufacturer or importer.', '12345 is the serial number.',
 * //  'D4 is the month of certification or manufacture: April 2004.', '04 is the model year: 2004.',
 * //  'The format is the current one (33 CFR 181.25).']
 */
export function explainHullNumber(asWritten: string): HullNumberReading {
  const bare = asWritten.toUpperCase().replace(/[\s/‐‑–—-]/g, '');
  const hasCountry = bare.length === LENGTH + 2 && /^[A-Z]{2}/.test(bare);
  const country = hasCountry ? bare.slice(0, 2) : null;
  const number = hasCountry ? bare.slice(2) : bare;
  const reading = { asWritten, number, country };
  const remarks: string[] = [];
  if (country !== null) remarks.push(`The country code ${country} is no part of the twelve characters.`);
  if (/[/‐‑–—-]|\S\s+\S/.test(asWritten.trim())) {
    remarks.push('Blanks, hyphens and slashes are no part of the number and were left out.');
  }
  const strange = number.replace(/[A-Z0-9]/g, '');
  if (strange !== '') remarks.push(`Only letters and digits belong in the number, not “${strange}”.`);
  const nothing = { manufacturer: null, serial: null, format: null, built: null, modelYear: null };
  if (number.length !== LENGTH) {
    remarks.push(
      number === ''
        ? 'No hull identification number is given.'
        : `The number has ${LENGTH} characters; this one has ${number.length}. Boats from before November 1972 had no fixed form.`,
    );
    return { ...reading, ...nothing, explanation: [], remarks };
  }
  const manufacturer = number.slice(0, 3);
  const serial = number.slice(3, 8);
  const misread = [...new Set(serial.match(/[IOQ]/g))].join(', ');
  if (misread !== '')
    remarks.push(`The serial number may not hold ${misread}: perhaps a 1 or a 0 was misread.`);
  const explanation = [
    `${manufacturer} is the code of the manufacturer or importer.`,
    `${serial} is the serial number.`,
  ];
  const date = readHullDate(number.slice(8));
  if (typeof date === 'string') {
    remarks.push(date);
    return { ...reading, ...nothing, manufacturer, serial, explanation, remarks };
  }
  const { format, built, modelYear } = date;
  explanation.push(...explainDate(number, date));
  remarks.push(...remarkOnDate(date));
  return { ...reading, manufacturer, serial, format, built, modelYear, explanation, remarks };
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

function explainDate(number: string, { format, built, modelYear }: HullDate): string[] {
  const month = `${MONTHS[built.month - 1]} ${built.year}`;
  switch (format) {
    case 'current':
      return [
        `${number.slice(8, 10)} is the month of certification or manufacture: ${month}.`,
        `${number.slice(10)} is the model year: ${modelYear}.`,
        'The format is the current one (33 CFR 181.25).',
      ];
    case 'model-year':
      return [
        `${number.slice(8, 11)} is the model year: ${modelYear}.`,
        `${number.slice(11)} is the month in that model year, which begins in August: ${month}.`,
        'The format is the model year format of November 1972 to July 1984.',
      ];
    case 'straight-year':
      return [
        `${number.slice(8)} is the month of certification: ${month}.`,
        'The format is the straight year format of November 1972 to July 1984.',
      ];
  }
}

function remarkOnDate({ format, built, modelYear }: HullDate): string[] {
  const month = built.year * 12 + built.month;
  const remarks: string[] = [];
  // A model year begins on 1 June of the year before and ends on 31 July of its own: 33 CFR 175.3.
  if (format === 'current' && modelYear !== null) {
    if (month < (modelYear - 1) * 12 + 6 || month > modelYear * 12 + 7) {
      const window = `June ${modelYear - 1} to July ${modelYear}`;
      remarks.push(`The month is outside model year ${modelYear}, which runs from ${window}.`);
    }
    if (month < 1984 * 12 + 1) remarks.push('This format was not in use before 1984.');
  } else if (month < 1972 * 12 + 11 || month > 1984 * 12 + 7) {
    remarks.push('This format was in use from November 1972 to July 1984 only.');
  }
  return remarks;
}
