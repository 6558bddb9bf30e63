import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explainHullNumber, type HullNumberReading } from '../../shared/identifiers/explain-hull-number.js';

const built = (text: string): string => {
  const { built: month } = explainHullNumber(text);
  return month === null ? 'unknown' : `${month.year}-${String(month.month).padStart(2, '0')}`;
};

const OUTSIDE = /^The month is outside model year/;

describe('published examples', () => {
  it.each([
    // 33 CFR 181.25. Decoded by others: on a boat history site (the first), a class association's forum
    // (second), an owners' forum (third), in a boat maker's answers to owners (fourth) and, from the month
    // on, on a sailing forum (fifth and sixth). The last two are constructed.
    ['ABC12345A788', 'current', '1987-01', 1988, true],
    ['ABC12345L495', 'current', '1994-12', 1995, false],
    ['ABC12345A900', 'current', '1999-01', 2000, true],
    ['TNRD1234H394', 'current', '1993-08', 1994, false],
    ['ABC12345K485', 'current', '1984-11', 1985, false],
    ['ABC12345C585', 'current', '1985-03', 1985, false],
    ['ABC12345D404', 'current', '2004-04', 2004, false],
    ['ABC12345I394', 'current', '1993-09', 1994, false],
    // The earlier formats, decoded on the same history site, owners' forum and sailing forum.
    ['ABC123451275', 'straight-year', '1975-12', null, false],
    ['ABC123451272', 'straight-year', '1972-12', null, false],
    ['ABC12345M75A', 'model-year', '1974-08', 1975, false],
    ['ABC12345M73E', 'model-year', '1972-12', 1973, false],
    ['ABC12345M82H', 'model-year', '1982-03', 1982, false],
  ])('%s: %s, %s, model year %s', (number, format, month, modelYear, outside) => {
    const reading = explainHullNumber(number);
    expect(reading).toMatchObject({ number, format, modelYear, manufacturer: number.slice(0, 3) });
    expect(reading.serial).toBe(number.slice(3, 8));
    expect(built(number)).toBe(month);
    expect(reading.remarks.some((remark) => OUTSIDE.test(remark))).toBe(outside);
    expect(reading.remarks).toHaveLength(outside ? 1 : 0);
  });

  it('tells the parts in words', () => {
    expect(explainHullNumber('ABC12345D404').explanation).toEqual([
      'ABC is the code of the manufacturer or importer.',
      '12345 is the serial number.',
      'D4 is the month of certification or manufacture: April 2004.',
      '04 is the model year: 2004.',
      'The format is the current one (33 CFR 181.25).',
    ]);
    expect(explainHullNumber('ABC12345M73E').explanation.slice(2)).toEqual([
      'M73 is the model year: 1973.',
      'E is the month in that model year, which begins in August: December 1972.',
      'The format is the model year format of November 1972 to July 1984.',
    ]);
    expect(explainHullNumber('ABC123451275').explanation.slice(2)).toEqual([
      '1275 is the month of certification: December 1975.',
      'The format is the straight year format of November 1972 to July 1984.',
    ]);
  });
});

describe('oddities are remarks', () => {
  it.each([
    ['ABC12I45D404', 'I', 'The serial number may not hold I'],
    ['ABCIOQ45D404', 'several letters', 'The serial number may not hold I, O, Q'],
    ['ABC12345M404', 'M, but no model year format', 'After M in position 9'],
    ['ABC123451375', 'month 13', 'Positions 9 and 10 are 13'],
    ['ABC123450075', 'month 0', 'Positions 9 and 10 are 00'],
    ['ABC1234512A5', 'a letter in the year', 'Positions 11 and 12 are A5'],
    ['ABC12345D4O4', 'a letter O in the model year', 'may be a misread 1 or 0'],
    ['ABC12345X404', 'no month', 'Position 9 is X'],
    ['ABC-12345-D404', 'hyphens', 'were left out'],
    ['ABC/12345/D404', 'slashes', 'were left out'],
    ['ABC 12345 D404', 'blanks', 'were left out'],
    ['US-ABC12345D404', 'the country', 'The country code US'],
    ['USABC12345D404', 'the country, run together', 'The country code US'],
    ['ABC1234', 'too short', '12 characters; this one has 7'],
    ['ABC12345D404404', 'too long', '12 characters; this one has 15'],
    ['ABC1234?D404', 'a sign', 'not “?”'],
    ['ABC12345D080', 'current before its time', 'was not in use before 1984'],
    ['ABC123450685', 'straight year after its time', 'from November 1972 to July 1984 only'],
    ['ABC123450172', 'straight year before its time', 'from November 1972 to July 1984 only'],
    ['ABC12345M90A', 'model year format after its time', 'from November 1972 to July 1984 only'],
    ['', 'nothing', 'No hull identification number'],
  ])('%s: %s', (text, _oddity, remark) => {
    expect(explainHullNumber(text).remarks.join(' ')).toContain(remark);
  });

  it('keeps and decodes the number all the same', () => {
    const plain = explainHullNumber('ABC12345D404');
    for (const text of ['abc12345d404', ' ABC-12345-D404 ', 'US-ABC12345D404', 'us abc 12345 d4 04']) {
      const reading = explainHullNumber(text);
      expect(reading).toMatchObject({ asWritten: text, number: plain.number, format: 'current' });
      expect(reading.explanation).toEqual(plain.explanation);
    }
    expect(explainHullNumber('ABC12I45D404')).toMatchObject({ format: 'current', serial: '12I45' });
    expect(explainHullNumber('ABC123451375')).toMatchObject({ format: null, manufacturer: 'ABC' });
  });

  it('takes the nearest year with the last digit, the earlier of two as near', () => {
    expect(built('ABC12345J990')).toBe('1989-10');
    expect(built('ABC12345B001')).toBe('2000-02');
    expect(built('ABC12345B100')).toBe('2001-02');
    expect(built('ABC12345B500')).toBe('1995-02');
  });
});

describe('any number', () => {
  const LETTERS = 'ABCDEFGHIJKL';
  const of = (characters: string, length: number): fc.Arbitrary<string> =>
    fc.string({ unit: fc.constantFrom(...characters), minLength: length, maxLength: length });
  const maker = of('ABCDEFGHIJKLMNOPQRSTUVWXYZ', 3);
  const serial = of('ABCDEFGHJKLMNPRSTUVWXYZ0123456789', 5);
  const digits = (value: number): string => String(value % 100).padStart(2, '0');
  const parts = (reading: HullNumberReading): unknown => [
    reading.manufacturer,
    reading.serial,
    reading.built?.year,
    reading.built?.month,
    reading.modelYear,
  ];

  it('of the current format, within its model year, reads back without a remark', () => {
    // The fourteen months of a model year: June of the year before (-6) to July.
    const date = fc.tuple(fc.integer({ min: 1985, max: 2070 }), fc.integer({ min: -6, max: 7 }));
    fc.assert(
      fc.property(maker, serial, date, (code, number, [modelYear, offset]) => {
        const month = offset > 0 ? offset : offset + 12;
        const year = offset > 0 ? modelYear : modelYear - 1;
        const text = `${code}${number}${LETTERS[month - 1]}${year % 10}${digits(modelYear)}`;
        const reading = explainHullNumber(text);
        expect(reading.format).toBe('current');
        expect(parts(reading)).toEqual([code, number, year, month, modelYear]);
        expect(reading.remarks).toEqual([]);
      }),
    );
  });

  it('of the earlier formats reads back without a remark', () => {
    const year = fc.integer({ min: 1974, max: 1983 });
    fc.assert(
      fc.property(maker, serial, year, fc.integer({ min: 1, max: 12 }), (code, number, at, month) => {
        const straight = explainHullNumber(`${code}${number}${digits(month)}${digits(at)}`);
        expect(parts(straight)).toEqual([code, number, at, month, null]);
        const letter = LETTERS[(month + 4) % 12];
        const model = explainHullNumber(`${code}${number}M${digits(at)}${letter}`);
        expect(parts(model)).toEqual([code, number, month >= 8 ? at - 1 : at, month, at]);
        expect([straight.format, model.format]).toEqual(['straight-year', 'model-year']);
        expect([...straight.remarks, ...model.remarks]).toEqual([]);
      }),
    );
  });

  it('or text whatever is explained or remarked on, and nothing throws', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      of('ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789', 12),
      of('ABCDEFGHIJKLM0123456789', 12),
    );
    fc.assert(
      fc.property(text, (written) => {
        const reading = explainHullNumber(written);
        expect(reading.asWritten).toBe(written);
        if (reading.format === null) expect(reading.remarks.length).toBeGreaterThan(0);
        else expect(reading.built?.month).toBeGreaterThanOrEqual(1);
        expect(reading.format === null).toBe(reading.built === null);
      }),
      { numRuns: 500 },
    );
  });
});
