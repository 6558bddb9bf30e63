import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRefusedNumber } from '../../shared/record/find-refused-number.js';

// Numbers that card networks and processors publish for testing (memory).
const TEST_CARDS = [
  '4111111111111111',
  '4222222222222',
  '5555555555554444',
  '2223003122003222',
  '378282246310005',
  '30569309025904',
  '6011111111111117',
  '3530111333300000',
  '6304000000000000',
];

const grouped = (digits: string, gap: string): string => digits.replace(/(\d{4})(?=\d)/g, `$1${gap}`);

describe('a card number', () => {
  it.each(TEST_CARDS)('%s is found bare, grouped and inside a sentence', (digits) => {
    for (const gap of ['', ' ', '-', '.', '\u00a0', '–']) {
      const number = grouped(digits, gap);
      expect(findRefusedNumber(number)).toBe('card-number');
      expect(findRefusedNumber(`paid with ${number}, renter agreed`)).toBe('card-number');
      expect(findRefusedNumber(`${number} 12/27 123`)).toBe('card-number');
    }
  });

  it.each(['3782 822463 10005', 'exp 12-27 4111-1111-1111-1111', 'card:4111111111111111.'])('%s', (text) => {
    expect(findRefusedNumber(text)).toBe('card-number');
  });

  it('of any length from 13 to 19 is found by its check digit, and not without it', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[3-6]\d{11,17}$/), (body) => {
        const found = Array.from({ length: 10 }, (_, digit) => findRefusedNumber(`${body}${digit}`));
        expect(found.filter((kind) => kind === 'card-number')).toHaveLength(1);
      }),
    );
  });
});

describe('a Social Security number', () => {
  // 078-05-1120 is the number that a wallet maker printed; 219-09-9999 the one of an advertisement (memory).
  it.each([
    '078-05-1120',
    'his is 219-09-9999.',
    '219 09 9999',
    'SSN 219099999',
    'social security no. 219099999',
  ])('%s', (text) => {
    expect(findRefusedNumber(text)).toBe('social-security-number');
  });
});

describe('nothing is found in', () => {
  it.each([
    ['a telephone number', '580-555-0123'],
    ['one with brackets', '(580) 555-0123'],
    ['one with its country', '+1 580 555 0123'],
    ['one from abroad', '+44 20 7946 0958'],
    ['bare digits of one', '5805550123'],
    ['two of them', '580-555-0123 580-555-0199'],
    ['one with an extension', '580-555-0123 4567'],
    ['a hull number', 'ABC12345D404'],
    ['a hull number with dashes', 'US-ABC12345D404'],
    ['a registration number', 'TX 1234 AB'],
    ['an identity of a radio', '338123456'],
    ['a date and a time', '2026-06-13 11:20:00'],
    ['an instant', '2026-06-13T11:20:00.123-05:00'],
    ['milliseconds', '1781367600000'],
    ['a position in decimals', '33.812345678901, -96.570000000004'],
    ['a position in minutes', "33 51.123' N 096 35.456' W"],
    ['a postal code', 'Denison TX 75020-1234'],
    ['an amount', '$1,234,567.89'],
    ['an identifier', '41111111-1111-4111-8111-111111111111'],
    ['sixteen digits with a wrong check digit', '4111 1111 1111 1112'],
    ['a number never given out', '000-12-3456 666-12-3456 900-12-3456'],
    ['nothing', ''],
  ])('%s: %s', (_what, text) => {
    expect(findRefusedNumber(text)).toBeNull();
  });
});
