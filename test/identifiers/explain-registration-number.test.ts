import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explainRegistrationNumber } from '../../shared/identifiers/explain-registration-number.js';
import { prefixOfState, stateOfPrefix } from '../../shared/identifiers/registration-prefixes.js';
import { STATE_NAMES } from '../../shared/place/state-codes.js';

describe('numbers of the right shape', () => {
  it.each([
    // 33 CFR 174.23(a) and 173.27(a) and (d) give the first five.
    ['NH 1234 BD', 'NH', '1234', 'BD', 'NH', false],
    ['WN 567 EFG', 'WN', '567', 'EFG', 'WA', false],
    ['DC 5678 EF', 'DC', '5678', 'EF', 'DC', false],
    ['DC-5678-EF', 'DC', '5678', 'EF', 'DC', false],
    ['DC 5678 EF 1', 'DC', '5678', 'EF', 'DC', true],
    ['CF 1234 AB', 'CF', '1234', 'AB', 'CA', false],
    ['OH 1234 AB', 'OH', '1234', 'AB', 'OH', false],
    ['ID 12 A', 'ID', '12', 'A', 'ID', false],
    ['tx1234ab', 'TX', '1234', 'AB', 'TX', false],
    ['DC5678EF1', 'DC', '5678', 'EF', 'DC', true],
  ])('%s', (text, prefix, numerals, suffix, state, tender) => {
    const reading = explainRegistrationNumber(text);
    expect(reading).toMatchObject({ asWritten: text, prefix, numerals, suffix, state, tender, remarks: [] });
    expect(reading.number).toBe([prefix, numerals, suffix, ...(tender ? ['1'] : [])].join(' '));
  });

  it('are told in words', () => {
    expect(explainRegistrationNumber('WN-567-EFG').explanation).toEqual([
      'WN is the prefix of Washington (33 CFR part 173, appendix A).',
      "567 EFG is the vessel's number there.",
    ]);
    expect(explainRegistrationNumber('DC 5678 EF 1').explanation.at(-1)).toContain('tender');
  });
});

describe('oddities are remarks', () => {
  it.each([
    ['MI 1234 AB', 'MS', 'MI on a hull is Mississippi; Michigan is MC.'],
    ['MS 1234 AB', 'MA', 'MS on a hull is Massachusetts; Mississippi is MI.'],
    ['CA 1234 AB', null, 'CA is the postal code of California, whose vessels carry CF.'],
    ['WA 1234 AB', null, 'WA is the postal code of Washington, whose vessels carry WN.'],
    ['ZZ 1234 AB', null, 'No state has the prefix ZZ.'],
    ['WN 5678 EFG', 'WA', 'up to four numerals with two letters'],
    ['TX 12345 AB', 'TX', 'up to four numerals with two letters'],
    ['TX 123 ABCD', 'TX', 'up to four numerals with two letters'],
    ['FL 1234 IO', 'FL', 'may not hold I, O'],
    ['FL 1234', null, 'not two letters'],
    ['1234 AB', null, 'not two letters'],
    ['none', null, 'not two letters'],
    ['', null, 'No registration number'],
  ])('%s', (text, state, remark) => {
    const reading = explainRegistrationNumber(text);
    expect(reading.state).toBe(state);
    expect(reading.remarks.join(' ')).toContain(remark);
  });
});

describe('prefixes', () => {
  it('differ from the postal code for exactly the twelve of 33 CFR part 173, appendix A', () => {
    const differing = Object.keys(STATE_NAMES)
      .filter((state) => prefixOfState(state) !== state)
      .map((state) => `${state} ${prefixOfState(state)}`);
    const expected = 'CA CF,CO CL,DE DL,HI HA,KS KA,MA MS,MI MC,MP CM,MS MI,NE NB,WA WN,WI WS'.split(',');
    expect(differing.sort()).toEqual(expected);
  });

  it('lead back to their state, each to one', () => {
    for (const state of Object.keys(STATE_NAMES))
      expect(stateOfPrefix(prefixOfState(state) ?? '')).toBe(state);
    for (const nobody of ['CA', 'WI', 'MP', 'XX', 'toString', '']) expect(stateOfPrefix(nobody)).toBeNull();
    expect(prefixOfState('XX')).toBeNull();
  });
});

describe('any number', () => {
  const state = fc.constantFrom(...Object.keys(STATE_NAMES));
  const of = (characters: string, minLength: number, maxLength: number): fc.Arbitrary<string> =>
    fc.string({ unit: fc.constantFrom(...characters), minLength, maxLength });
  const numerals = '0123456789';
  const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ';
  const groups = fc.oneof(
    fc.tuple(of(numerals, 1, 4), of(letters, 1, 2)),
    fc.tuple(of(numerals, 1, 3), of(letters, 3, 3)),
  );

  it('made by the rule reads back, with a remark only where the prefix is a namesake', () => {
    const separator = fc.constantFrom(' ', '-', '');
    fc.assert(
      fc.property(state, groups, separator, fc.boolean(), (at, [digits, suffix], between, tender) => {
        const prefix = prefixOfState(at) ?? '';
        const text = [prefix, digits, suffix, ...(tender ? ['1'] : [])].join(between);
        const reading = explainRegistrationNumber(text);
        expect(reading).toMatchObject({ prefix, numerals: digits, suffix, state: at, tender });
        expect(reading.remarks).toHaveLength(prefix === 'MI' || prefix === 'MS' ? 1 : 0);
      }),
    );
  });

  it('or text whatever is read or remarked on, and nothing throws', () => {
    const text = fc.oneof(fc.string({ unit: 'grapheme' }), of('ABIMS 123-', 0, 10), of('CDEF56781', 6, 9));
    fc.assert(
      fc.property(text, (written) => {
        const reading = explainRegistrationNumber(written);
        expect(reading.asWritten).toBe(written);
        if (reading.state === null) expect(reading.remarks.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});
