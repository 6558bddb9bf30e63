import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commitField } from '../../shared/proof/commit-field.js';
import { hashAmendment, namedFields, type AmendmentHeader } from '../../shared/proof/hash-amendment.js';
import { buildTree, EMPTY_ROOT, headAt, type LogHead } from '../../shared/proof/merkle-log.js';
import { verifyAmendment, type LogEntry, type ShownValue } from '../../shared/proof/verify-amendment.js';
import { verifyLog, type LogFault } from '../../shared/proof/verify-log.js';
import { saltFor, sampleEntry, sampleLog } from './sample-log.js';

const LOG = sampleLog(12);
const treeOf = (entries: readonly LogEntry[]) => buildTree(entries.map(({ leafHash }) => leafHash));
const headOf = (size: number) => headAt(treeOf(LOG), size);
const HEAD = headOf(12);

/** The log with the amendment of one sequence number changed. */
const withEntry = (sequence: number, change: (entry: LogEntry) => LogEntry) =>
  LOG.map((entry) => (entry.amendment.header.sequence === sequence ? change(entry) : entry));

const editHeader = (entry: LogEntry, edit: Partial<AmendmentHeader>): LogEntry => ({
  ...entry,
  amendment: { ...entry.amendment, header: { ...entry.amendment.header, ...edit } },
});

/** Changed by somebody who also makes the leaf hash fit. */
const forge = (entry: LogEntry): LogEntry => {
  const edited = editHeader(entry, { who: 'u-9' });
  return { ...edited, leafHash: hashAmendment(edited.amendment) };
};

const editShown = (entry: LogEntry, edit: (value: ShownValue) => ShownValue | undefined): LogEntry => ({
  ...entry,
  shown: entry.shown.map(edit).filter((value) => value !== undefined),
});

describe('an untouched log', () => {
  it.each([0, 1, 5, 12])('has no fault against the head remembered at %d amendments', (size) => {
    expect(verifyLog(LOG, [headOf(size)])).toEqual([]);
  });

  it('has no fault against all its heads, nor when empty', () => {
    expect(verifyLog(LOG, [headOf(3), headOf(8), HEAD])).toEqual([]);
    expect(verifyLog([], [{ size: 0, root: EMPTY_ROOT }])).toEqual([]);
  });

  it('proves itself with any of its values masked or withdrawn', () => {
    fc.assert(
      fc.property(fc.func(fc.boolean()), (isShown) => {
        const masked = LOG.map((entry) =>
          editShown(entry, (value) => (isShown(entry.leafHash, value.salt) ? value : undefined)),
        );
        expect(verifyLog(masked, [HEAD])).toEqual([]);
      }),
    );
  });
});

describe('a fault of the log is named', () => {
  const birthDate = { of: 'to', path: '/people/0/birthDate' } as const;

  it.each<[name: string, entries: readonly LogEntry[], faults: LogFault[]]>([
    [
      'an amendment edited in place',
      withEntry(7, (entry) => editHeader(entry, { when: '2026-07-04T19:22:05Z' })),
      [{ code: 'leaf-changed', sequence: 7 }],
    ],
    [
      'a commitment edited in place, its value with it',
      withEntry(7, (entry) => {
        const opening = { salt: saltFor('new'), value: '2001-01-01' };
        const fields = namedFields(entry.amendment).map((field) =>
          field.path === birthDate.path ? { ...field, to: commitField(field.path, opening) } : field,
        );
        const edited = editShown(entry, (value) =>
          value.of === 'to' && value.path === birthDate.path ? { ...value, ...opening } : value,
        );
        return { ...edited, amendment: { ...entry.amendment, fields } };
      }),
      [{ code: 'leaf-changed', sequence: 7 }],
    ],
    [
      'a leaf hash edited',
      withEntry(7, (entry) => ({ ...entry, leafHash: EMPTY_ROOT })),
      [
        { code: 'leaf-changed', sequence: 7 },
        {
          code: 'head-mismatch',
          size: 12,
          remembered: HEAD.root,
          found: expect.stringMatching(/^[0-9a-f]{64}$/) as string,
        },
      ],
    ],
    [
      'a leaf hash that is none',
      withEntry(7, (entry) => ({ ...entry, leafHash: 'not a hash' })),
      [
        { code: 'leaf-changed', sequence: 7 },
        { code: 'head-mismatch', size: 12, remembered: HEAD.root, found: expect.any(String) as string },
      ],
    ],
    [
      'an amendment that cannot be one',
      withEntry(7, (entry) => editHeader(entry, { reason: 'in the clear' })),
      [
        {
          code: 'leaf-unreadable',
          sequence: 7,
          pointer: '/header/reason',
          problem: expect.stringContaining('commitment') as string,
        },
        { code: 'value-changed', sequence: 7, field: { of: 'reason' } },
      ],
    ],
    [
      'a shown value edited',
      withEntry(7, (entry) =>
        editShown(entry, (value) =>
          value.of === 'to' && value.path === birthDate.path ? { ...value, value: '1990-05-18' } : value,
        ),
      ),
      [{ code: 'value-changed', sequence: 7, field: birthDate }],
    ],
    [
      'a shown reason edited',
      withEntry(7, (entry) =>
        editShown(entry, (value) => (value.of === 'reason' ? { ...value, value: 'x' } : value)),
      ),
      [{ code: 'value-changed', sequence: 7, field: { of: 'reason' } }],
    ],
    [
      'what was and what is exchanged',
      withEntry(7, (entry) =>
        editShown(entry, (value) =>
          value.of === 'reason' || value.path !== birthDate.path
            ? value
            : { ...value, of: value.of === 'to' ? 'from' : 'to' },
        ),
      ),
      [
        { code: 'value-changed', sequence: 7, field: { of: 'to', path: birthDate.path } },
        { code: 'value-changed', sequence: 7, field: { of: 'from', path: birthDate.path } },
      ],
    ],
    [
      'a value of a field that the amendment does not touch',
      withEntry(7, (entry) => ({
        ...entry,
        shown: [{ of: 'to', path: '/people/0/fault', salt: saltFor('x'), value: 'drunk' }],
      })),
      [{ code: 'value-unproven', sequence: 7, field: { of: 'to', path: '/people/0/fault' } }],
    ],
    ['the last amendment removed', LOG.slice(0, -1), [{ code: 'tail-removed', remembered: 12, found: 11 }]],
    ['everything removed', [], [{ code: 'tail-removed', remembered: 12, found: 0 }]],
    ['one removed in between', LOG.toSpliced(6, 1), [{ code: 'sequence-gap', expected: 7, found: 8 }]],
    ['the first removed', LOG.slice(1), [{ code: 'sequence-gap', expected: 1, found: 2 }]],
    [
      'one amendment twice',
      LOG.toSpliced(6, 0, sampleEntry(6)),
      [
        { code: 'sequence-gap', expected: 7, found: 6 },
        { code: 'head-mismatch', size: 12, remembered: HEAD.root, found: expect.any(String) as string },
      ],
    ],
    [
      'an amendment forged, its leaf hash made to fit',
      withEntry(7, forge),
      [
        {
          code: 'head-mismatch',
          size: 12,
          remembered: HEAD.root,
          found: headAt(treeOf(withEntry(7, forge))).root,
        },
      ],
    ],
  ])('%s', (_name, entries, faults) => {
    expect(verifyLog(entries, [HEAD])).toEqual(faults);
  });

  it('between the last head that matches and the first that does not', () => {
    const faults = verifyLog(withEntry(7, forge), [headOf(3), headOf(6), headOf(7), HEAD]);
    expect(faults.map((fault) => (fault.code === 'head-mismatch' ? fault.size : fault.code))).toEqual([
      7, 12,
    ]);
  });

  it('when it lacks what only a larger head covers', () => {
    expect(verifyLog(LOG.slice(0, 8), [headOf(5), HEAD])).toEqual([
      { code: 'tail-removed', remembered: 12, found: 8 },
    ]);
  });

  it.each([-1, 0.5, Number.NaN])('when the remembered size is %d', (size) => {
    expect(verifyLog(LOG, [{ size, root: EMPTY_ROOT }])).toEqual([{ code: 'head-unreadable', size }]);
  });
});

describe('no rewriting of what a head covers goes unnoticed', () => {
  /** Forgers keep every entry consistent with itself; only the order, the number or the content gives them away. */
  const rewritten = fc.oneof(
    fc.shuffledSubarray(LOG, { minLength: 0, maxLength: LOG.length }),
    fc.array(fc.constantFrom(...LOG), { maxLength: 14 }),
    fc.nat({ max: 11 }).map((at) => withEntry(at + 1, forge)),
    fc.nat({ max: 11 }).map((at) =>
      LOG.toSpliced(at, 1).map((entry, index) => {
        const renumbered = editHeader(entry, { sequence: index + 1 });
        return { ...renumbered, leafHash: hashAmendment(renumbered.amendment) };
      }),
    ),
  );

  it('whatever was removed, moved, doubled, renumbered or forged', () => {
    const same = (entries: readonly LogEntry[]) => headAt(treeOf(entries)).root === HEAD.root;
    fc.assert(
      fc.property(rewritten, (entries) => {
        expect(verifyLog(entries, [HEAD]).length > 0).toBe(!same(entries));
      }),
      { numRuns: 300 },
    );
  });

  it('except behind the largest head, where a log only agrees with itself', () => {
    const heads: LogHead[] = [headOf(6)];
    expect(verifyLog(withEntry(7, forge), heads)).toEqual([]);
    expect(verifyLog(LOG.slice(0, 6), heads)).toEqual([]);
  });
});

describe('one amendment by itself', () => {
  it('has no fault as it was written', () => {
    expect(verifyAmendment(sampleEntry(4))).toEqual([]);
  });

  it('is not judged when it cannot be read at all', () => {
    const { amendment, leafHash, shown } = sampleEntry(4);
    const header = Object.defineProperty({ ...amendment.header }, 'section', {
      get: () => {
        throw new Error('unreadable');
      },
    });
    expect(() => verifyAmendment({ amendment: { ...amendment, header }, leafHash, shown })).toThrow(
      'unreadable',
    );
  });

  it('has a fault for a reason shown where none was given', () => {
    const entry = editHeader(sampleEntry(4), { reason: null });
    const signed = { ...entry, leafHash: hashAmendment(entry.amendment) };
    expect(verifyAmendment(signed)).toEqual([
      { code: 'value-unproven', sequence: 4, field: { of: 'reason' } },
    ]);
  });
});
