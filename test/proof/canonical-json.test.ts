import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalBytes, canonicalJson } from '../../shared/proof/canonical-json.js';
import { UnprovableError } from '../../shared/proof/unprovable-error.js';

/** The double with these 64 bits, as RFC 8785 appendix B writes its samples. */
function doubleOf(bits: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
}

const wellFormed = fc.string({ unit: 'binary' });
/** JSON values; minus zero is left out as it is written 0 (RFC 8785 appendix B). */
const jsonValue = fc
  .jsonValue({ stringUnit: 'binary' })
  .map((value): unknown => JSON.parse(JSON.stringify(value)));

function shuffleKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shuffleKeys);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, item]: [string, unknown]) => [key, shuffleKeys(item)]),
  );
}

describe('the published examples of RFC 8785', () => {
  it('writes the sample of sections 3.2.2 and 3.2.3 (memory; its parts read in the author’s test data)', () => {
    const sample: unknown = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`);
    expect(canonicalJson(sample)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],` +
        String.raw`"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('writes the string of that sample in the UTF-8 bytes of section 3.2.4 (read in the draft of the RFC)', () => {
    const bytes = canonicalBytes('€$\u000F\nA\'B"\\\\"/');
    expect(Buffer.from(bytes).toString('hex')).toBe('22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f22');
  });

  it('orders the keys of section 3.2.3 by UTF-16 code units (read in tests that quote it)', () => {
    const sample: unknown = JSON.parse(String.raw`{
      "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
    }`);
    const values = [...canonicalJson(sample).matchAll(/:"([^"]+)"/g)].map(([, value]) => value);
    expect(values).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  /** Appendix B, read in the draft of the RFC. */
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['444b1ae4d6e2ef51', '1.0000000000000001e+21'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
  ])('writes the double %s of appendix B as %s', (bits, text) => {
    expect(canonicalJson(doubleOf(bits))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000'])('refuses the double %s of appendix B', (bits) => {
    expect(() => canonicalJson(doubleOf(bits))).toThrow(UnprovableError);
  });
});

describe('canonical JSON', () => {
  it('parses back to the value', () => {
    fc.assert(
      fc.property(jsonValue, (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(value);
      }),
    );
  });

  it('does not depend on the order of keys', () => {
    fc.assert(
      fc.property(jsonValue, (value) => {
        expect(canonicalJson(shuffleKeys(value))).toBe(canonicalJson(value));
      }),
    );
  });

  it('gives different texts to different values', () => {
    fc.assert(
      fc.property(jsonValue, jsonValue, (a, b) => {
        const same = canonicalJson(a) === canonicalJson(b);
        if (same) expect(a).toEqual(b);
        else expect(a).not.toEqual(b);
      }),
    );
  });

  it('has the bytes of its text in UTF-8', () => {
    fc.assert(
      fc.property(wellFormed, (text) => {
        expect(Buffer.from(canonicalBytes(text)).toString('utf8')).toBe(canonicalJson(text));
      }),
    );
  });

  it.each<[value: unknown, text: string]>([
    [[], '[]'],
    [{}, '{}'],
    [Object.assign(Object.create(null) as object, { a: 1 }), '{"a":1}'],
    [JSON.parse('{"__proto__":{"a":1}}'), '{"__proto__":{"a":1}}'],
    [{ 10: 'ten', 9: 'nine' }, '{"10":"ten","9":"nine"}'],
    ['\u2028</script>😀', '"\u2028</script>😀"'],
  ])('writes %j', (value, text) => {
    expect(canonicalJson(value)).toBe(text);
  });

  class Person {
    readonly name = 'Ann';
  }
  const ring: Record<string, unknown> = {};
  ring['again'] = ring;

  it.each<[name: string, value: unknown, pointer: string]>([
    ['undefined', undefined, ''],
    ['a key that is undefined', { people: [{ name: undefined }] }, '/people/0/name'],
    ['a hole in an array', [1, , 3], '/1'],
    ['NaN', { speed: Number.NaN }, '/speed'],
    ['infinity', [Number.POSITIVE_INFINITY], '/0'],
    ['a big integer', { cents: 5n }, '/cents'],
    ['a function', { toJSON: () => 'x' }, '/toJSON'],
    ['a symbol', [Symbol('x')], '/0'],
    ['a date', { when: new Date(0) }, '/when'],
    ['a map', new Map([['a', 1]]), ''],
    ['bytes', { photo: new Uint8Array(2) }, '/photo'],
    ['an instance of a class', [new Person()], '/0'],
    ['half a character', { note: 'cut \ud83d' }, '/note'],
    ['half a character in a key', { 'cut \ude00': 1 }, ''],
    ['a value that contains itself', ring, '/again'.repeat(100)],
  ])('refuses %s and says where', (_name, value, pointer) => {
    let thrown: unknown;
    try {
      canonicalJson(value);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(UnprovableError);
    expect(thrown).toMatchObject({ pointer });
  });

  it('keeps values out of its complaints', () => {
    expect(() => canonicalJson({ note: 'secret words \ud83d' })).toThrow(/^(?!.*secret).*\/note/);
  });
});
