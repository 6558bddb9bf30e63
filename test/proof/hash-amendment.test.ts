import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amendmentBytes,
  hashAmendment,
  hideFields,
  type Amendment,
} from '../../shared/proof/hash-amendment.js';
import { UnprovableError } from '../../shared/proof/unprovable-error.js';

const A = 'a'.repeat(64);
const B = 'b'.repeat(64);
const C = 'c'.repeat(64);

const CHANGES = [
  { path: '/people/1/name', from: A, to: B },
  { path: '/people/0/birthDate', from: B, to: A },
];
const AMENDMENT: Amendment = {
  header: {
    sequence: 17,
    incidentId: '01JX7Q',
    who: 'u-4',
    device: 'dock-phone',
    when: '2026-07-04T18:22:05Z',
    section: 'people',
    reason: C,
  },
  fields: CHANGES,
};
const { header, fields } = AMENDMENT;

describe('the leaf of an amendment', () => {
  const digest = (path: string, from: string, to: string): string =>
    createHash('sha256').update(`["incident-desk/change/1","${path}","${from}","${to}"]`).digest('hex');

  it('is canonical JSON with the digests of the fields in their own order', () => {
    const digests = [digest('/people/1/name', A, B), digest('/people/0/birthDate', B, A)].sort();
    expect(Buffer.from(amendmentBytes(AMENDMENT)).toString('utf8')).toBe(
      `{"fields":["${digests[0]}","${digests[1]}"],"format":"incident-desk/amendment/2",` +
        `"header":{"device":"dock-phone","incidentId":"01JX7Q","reason":"${C}","section":"people",` +
        `"sequence":17,"when":"2026-07-04T18:22:05Z","who":"u-4"}}`,
    );
  });

  it('stays the same when a field is hidden, which then names neither path nor commitment', () => {
    const hidden = hideFields(AMENDMENT, (path) => path === '/people/1/name');
    expect(hidden.fields).toEqual([
      { path: '/people/1/name', from: A, to: B },
      { digest: digest('/people/0/birthDate', B, A) },
    ]);
    expect(hashAmendment(hidden)).toBe(hashAmendment(AMENDMENT));
    expect(hideFields(hidden, () => true)).toEqual(hidden);
  });

  it('is hashed behind a zero byte (RFC 6962 section 2.1)', () => {
    const digest = createHash('sha256').update(Buffer.of(0)).update(amendmentBytes(AMENDMENT)).digest('hex');
    expect(hashAmendment(AMENDMENT)).toBe(digest);
  });

  it('does not depend on the order in which the fields are given', () => {
    const paths = fc.uniqueArray(fc.string(), { maxLength: 8 });
    const shuffled = paths.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    fc.assert(
      fc.property(shuffled, ([given, other]) => {
        const hash = (list: string[]) =>
          hashAmendment({ header, fields: list.map((path) => ({ path, from: A, to: B })) });
        expect(hash(other)).toBe(hash(given));
      }),
    );
  });

  it.each<[what: string, changed: Amendment]>([
    ['sequence', { header: { ...header, sequence: 18 }, fields }],
    ['incident', { header: { ...header, incidentId: '01JX7R' }, fields }],
    ['person', { header: { ...header, who: 'u-5' }, fields }],
    ['person left out', { header: { ...header, who: null }, fields }],
    ['device', { header: { ...header, device: null }, fields }],
    ['instant', { header: { ...header, when: '2026-07-04T18:22:06Z' }, fields }],
    ['section', { header: { ...header, section: 'craft' }, fields }],
    ['reason', { header: { ...header, reason: A }, fields }],
    ['reason left out', { header: { ...header, reason: null }, fields }],
    ['path', { header, fields: CHANGES.map((field) => ({ ...field, path: `${field.path}x` })) }],
    [
      'from and to swapped',
      { header, fields: CHANGES.map(({ path, from, to }) => ({ path, from: to, to: from })) },
    ],
    ['a field less', { header, fields: fields.slice(1) }],
    ['a field more', { header, fields: [...fields, { path: '/place', from: A, to: B }] }],
  ])('changes with: %s', (_what, changed) => {
    expect(hashAmendment(changed)).not.toBe(hashAmendment(AMENDMENT));
  });

  it.each<[what: string, pointer: string, amendment: Amendment]>([
    ['sequence 0', '/header/sequence', { header: { ...header, sequence: 0 }, fields }],
    ['half a sequence', '/header/sequence', { header: { ...header, sequence: 1.5 }, fields }],
    ['a reason in the clear', '/header/reason', { header: { ...header, reason: 'typing error' }, fields }],
    [
      'a value in the clear before',
      '/fields/0/from',
      { header, fields: [{ path: '/x', from: '1990-05-17', to: A }] },
    ],
    [
      'a value in the clear after',
      '/fields/0/to',
      { header, fields: [{ path: '/x', from: A, to: '1990-05-17' }] },
    ],
    [
      'a field named twice',
      '/fields/2/path',
      { header, fields: [...fields, { path: '/people/1/name', from: A, to: A }] },
    ],
    ['a digest that is none', '/fields/0/digest', { header, fields: [{ digest: '1990-05-17' }] }],
    ['half a character', '/header/section', { header: { ...header, section: '\ud83d' }, fields }],
  ])('is refused for %s', (_what, pointer, amendment) => {
    let thrown: unknown;
    try {
      amendmentBytes(amendment);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(UnprovableError);
    expect(thrown).toMatchObject({ pointer });
    expect(String(thrown)).not.toContain('1990');
  });
});
