import { fullFormats } from 'ajv-formats/dist/formats.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readInstant } from '../../shared/time/read-instant.js';
import { isDateTime } from '../../shared/wire/check-date-time.js';

const schemaFormat = fullFormats['date-time'] as { validate: (text: string) => boolean };

describe('date-times', () => {
  // RFC 3339, section 5.8 (from memory).
  it.each([
    '1985-04-12T23:20:50.52Z',
    '1996-12-19T16:39:57-08:00',
    '1990-12-31T23:59:60Z',
    '1990-12-31T15:59:60-08:00',
    '1937-01-01T12:00:27.87+00:20',
  ])('the published example %s is one', (text) => {
    expect(isDateTime(text)).toBe(true);
  });

  it('the pairs of examples that RFC 3339 calls the same instant are read as the same', () => {
    expect(readInstant('1996-12-19T16:39:57-08:00')).toBe(readInstant('1996-12-20T00:39:57Z'));
    expect(readInstant('1990-12-31T15:59:60-08:00')).toBe(readInstant('1990-12-31T23:59:60Z'));
  });

  it.each([
    ['small letters', '2026-07-04t15:40:00z', true],
    ['one space for T', '2026-07-04 15:40:00Z', true],
    ['offset without colon', '2026-07-04T15:40:00-0500', true],
    ['offset of hours alone', '2026-07-04T15:40:00-05', true],
    ['29 February of a leap year', '2028-02-29T00:00:00Z', true],
    ['29 February of a year that is none', '2026-02-29T00:00:00Z', false],
    ['29 February of 1900', '1900-02-29T00:00:00Z', false],
    ['29 February of 2000', '2000-02-29T00:00:00Z', true],
    ['31 April', '2026-04-31T00:00:00Z', false],
    ['month 13', '2026-13-01T00:00:00Z', false],
    ['month 0', '2026-00-01T00:00:00Z', false],
    ['day 0', '2026-07-00T00:00:00Z', false],
    ['hour 24', '2026-07-04T24:00:00Z', false],
    ['minute 60', '2026-07-04T15:60:00Z', false],
    ['second 60 in mid hour', '2026-07-04T15:40:60Z', false],
    ['second 61', '1990-12-31T23:59:61Z', false],
    ['offset of 24 hours', '2026-07-04T15:40:00+24:00', false],
    ['offset of 60 minutes', '2026-07-04T15:40:00+05:60', false],
    ['no offset', '2026-07-04T15:40:00', false],
    ['no seconds', '2026-07-04T15:40Z', false],
    ['a comma', '2026-07-04T15:40:00,5Z', false],
    ['a space before the offset', '2026-07-04T15:40:00 -05:00', false],
    ['a line after it', '2026-07-04T15:40:00Z\n', false],
    ['digits of another script', '２０２６-07-04T15:40:00Z', false],
    ['a year of five digits', '12026-07-04T15:40:00Z', false],
    ['a named zone after it', '2026-07-04T15:40:00-05:00[America/Chicago]', false],
    ['nothing', '', false],
  ])('%s', (_, text, verdict) => {
    expect(isDateTime(text)).toBe(verdict);
    expect(schemaFormat.validate(text)).toBe(verdict);
  });

  it.each([
    ['ten decimals', '2026-07-04T15:40:00.1234567891Z'],
    ['a tab for T', '2026-07-04\t15:40:00Z'],
    ['hour 24 behind an offset', '2026-07-04T24:59:30+01:00'],
    ['minute 60 behind an offset', '2026-07-04T23:60:30+00:01'],
  ])('refused although the schema format takes it, since no clock can be computed: %s', (_, text) => {
    expect(isDateTime(text)).toBe(false);
    expect(schemaFormat.validate(text)).toBe(true);
  });

  const two = (most: number): fc.Arbitrary<string> =>
    fc.nat({ max: most }).map((n) => String(n).padStart(2, '0'));
  const texts = fc
    .tuple(
      fc.nat({ max: 9999 }).map((year) => String(year).padStart(4, '0')),
      fc.tuple(two(13), two(32), two(23), two(59), two(61)),
      fc.constantFrom('T', 't', ' ', '', '_'),
      fc.constantFrom('', '.5', '.123456789', '.'),
      fc.oneof(
        fc.constantFrom('Z', 'z', '', 'UTC'),
        fc
          .tuple(fc.constantFrom('+', '-'), two(25), fc.constantFrom(':', ''), two(61))
          .map((parts) => parts.join('')),
      ),
    )
    .map(([year, [month, day, hour, minute, second], t, decimals, zone]) =>
      [`${year}-${month}-${day}`, t, `${hour}:${minute}:${second}`, decimals, zone].join(''),
    );

  it('generated texts: the verdict of the schema format, and every accepted one can be read', () => {
    fc.assert(
      fc.property(texts, (text) => {
        expect(isDateTime(text)).toBe(schemaFormat.validate(text));
        if (isDateTime(text)) expect(Number.isFinite(readInstant(text))).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  it('leap seconds in every offset: the verdict of the schema format', () => {
    const offsets = fc.tuple(fc.constantFrom('+', '-'), two(23), two(59));
    fc.assert(
      fc.property(two(23), two(59), offsets, (hour, minute, [sign, hours, minutes]) => {
        const text = `2016-12-31T${hour}:${minute}:60${sign}${hours}:${minutes}`;
        expect(isDateTime(text)).toBe(schemaFormat.validate(text));
      }),
      { numRuns: 3000 },
    );
  });
});
