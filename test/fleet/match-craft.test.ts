import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchCraft } from '../../shared/call/match-craft.js';
import { splitWords } from '../../shared/call/split-words.js';

describe('words of a call', () => {
  it.each<[string, string[]]>([
    ['Help! PWC 7', ['help', 'pwc', '7']],
    ['pwc7', ['pwc', '7']],
    ['PWC-07', ['pwc', '7']],
    ['P.W.C. number seven', ['pwc', '7']],
    ['p w c niner', ['pwc', '9']],
    ['unit twenty-one', ['21']],
    ['twenty', ['20']],
    ['twenty 1', ['20', '1']],
    ['thirty ten', ['30', '10']],
    ['TX 1234 AB', ['tx', '1234', 'ab']],
    ['Señora Ñandú', ['senora', 'nandu']],
    ['   ', []],
  ])('%s', (text, words) => {
    expect(splitWords(text)).toEqual(words);
  });
});

const craft = (unitName: string, type: string, ...colours: string[]) => ({
  unitName,
  type,
  colours,
  registrationNumber: null as string | null,
});
const FLEET = [
  craft('PWC 7', 'personal-watercraft', 'red', 'white'),
  craft('PWC 12', 'personal-watercraft', 'yellow'),
  craft('PWC 70', 'personal-watercraft', 'red'),
  craft('Pontoon 7', 'pontoon-boat', 'white'),
  { ...craft('Mary Ann', 'open-motorboat', 'dark blue'), registrationNumber: 'TX 4821 CD' },
  craft('Kayak 2', 'paddlecraft', 'red'),
  craft('3', 'paddlecraft', 'green'),
];
const said = (words: string) => matchCraft(words, FLEET).map(({ craft: { unitName } }) => unitName);

describe('the craft that is meant', () => {
  it.each<[string, string[]]>([
    ['help, PWC 7', ['PWC 7']],
    ['pwc07 flipped', ['PWC 7']],
    ['number seven, the pontoon', ['Pontoon 7']],
    ['the red one, seven', ['PWC 7', 'Pontoon 7', 'Kayak 2', 'PWC 70']],
    ['pontoon', ['Pontoon 7']],
    ['a party barge is burning', ['Pontoon 7']],
    ['two skis', ['PWC 7', 'PWC 12', 'PWC 70', 'Kayak 2']],
    ['someone on a ski', ['PWC 7', 'PWC 12', 'PWC 70']],
    ['a ski boat', ['Mary Ann']],
    ['mary ann is sinking', ['Mary Ann']],
    ['the dark blue boat', ['Mary Ann']],
    ['tx 4821 cd', ['Mary Ann']],
    ['tx4821cd', ['Mary Ann']],
    ['ski seven', ['PWC 7']],
    ['2 people fell off a red ski', ['PWC 7', 'PWC 70', 'Kayak 2']],
    ['yellow', ['PWC 12']],
    ['help', []],
    ['', []],
  ])('%s', (words, names) => {
    expect(said(words)).toEqual(names);
  });

  it.each([
    ['PWC 7', 'PWC 7', true, ['PWC 7']],
    ['red ski', 'PWC 7', false, ['red', 'personal watercraft']],
    ['TX 4821 CD', 'Mary Ann', true, ['TX 4821 CD']],
    // A bare number may count people as well.
    ['3 people in the water', '3', false, ['3']],
  ])('%s says why', (words, unitName, named, because) => {
    expect(matchCraft(words, FLEET)[0]).toMatchObject({ craft: { unitName }, named, because });
  });

  it('is always among them when its name is said, whatever is said around it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FLEET.slice(0, 6)), fc.string(), fc.string(), (one, before, after) => {
        expect(said(`${before} ! ${one.unitName} ! ${after}`)).toContain(one.unitName);
      }),
    );
  });
});
