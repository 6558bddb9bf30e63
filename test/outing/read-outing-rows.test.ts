import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderCraft, type StandingCraft } from '../../shared/outing/order-craft.js';
import { STANDINGS, standingOf } from '../../shared/outing/outing.js';
import { readLocalTime } from '../../shared/outing/read-local-time.js';
import { readOutingRows } from '../../shared/outing/read-outing-rows.js';
import { checkDrafts } from '../../shared/wire/outing-requests.dto.js';
import { readCsv } from '../../src/server/outing/read-csv.js';

const ZONE = 'America/Chicago';
const DAY = '2026-06-13';

describe('times of a list', () => {
  // Clocks in Chicago go forward at 2:00 on 8 March 2026 and back at 2:00 on 1 November 2026 (15 U.S.C. 260a).
  it.each([
    ['14:30', '2026-06-13T19:30:00.000Z'],
    ['2:30 pm', '2026-06-13T19:30:00.000Z'],
    ['2:30 P.M.', '2026-06-13T19:30:00.000Z'],
    ['3pm', '2026-06-13T20:00:00.000Z'],
    ['12:05 am', '2026-06-13T05:05:00.000Z'],
    ['12 pm', '2026-06-13T17:00:00.000Z'],
    ['2026-06-14 09:00', '2026-06-14T14:00:00.000Z'],
    ['6/14/2026 9:00 am', '2026-06-14T14:00:00.000Z'],
    ['2026-06-13T14:30:00-05:00', '2026-06-13T19:30:00.000Z'],
    ['2026-11-01 01:30', '2026-11-01T06:30:00.000Z'],
  ])('reads %s', (text, at) => expect(readLocalTime(text, DAY, ZONE)).toEqual({ ok: true, at }));

  it.each([
    '',
    '2',
    '14',
    '25:00',
    '13:00 pm',
    '0:30 am',
    '2026-02-30 10:00',
    '13/1/2026 10:00',
    'soon',
    '2026-03-08 02:30',
  ])('refuses "%s"', (text) => expect(readLocalTime(text, DAY, ZONE).ok).toBe(false));

  it('reads back every minute of the day that the clock of the zone shows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), fc.boolean(), (minute, half) => {
        const [hour, rest] = [Math.floor(minute / 60), String(minute % 60).padStart(2, '0')];
        const text = half
          ? `${hour % 12 === 0 ? 12 : hour % 12}:${rest} ${hour < 12 ? 'am' : 'pm'}`
          : `${hour}:${rest}`;
        const reading = readLocalTime(text, DAY, ZONE);
        expect(reading.ok && Date.parse(reading.at)).toBe(
          Date.parse('2026-06-13T05:00:00Z') + minute * 60_000,
        );
      }),
    );
  });
});

const read = (csv: string) => {
  const rows = readCsv(csv);
  if (!rows.ok) return { errors: rows.errors, outings: [], ignored: [] };
  const { drafts, errors, ignored } = readOutingRows(rows.value, DAY, ZONE);
  const checked = checkDrafts(drafts);
  const faults = [...errors, ...(checked.ok ? [] : checked.errors)];
  return { errors: faults, outings: checked.ok && faults.length === 0 ? checked.value : [], ignored };
};

describe('a list of craft due back', () => {
  it('reads headings in their usual words, in any order and with any separator', () => {
    for (const separator of [',', ';', '\t']) {
      const csv = [
        ['Due back', 'Craft', "Renter's name", 'Riders', 'Phone', 'Colour of hair'],
        ['2:30 pm', 'PWC 7', 'Dana Whitlock', '2', '580-555-0142', 'x'],
      ];
      const { errors, outings, ignored } = read(csv.map((row) => row.join(separator)).join('\r\n'));
      expect(errors).toEqual([]);
      expect(ignored).toEqual(['Colour of hair']);
      expect(outings).toEqual([
        {
          row: 2,
          outing: {
            unit: 'PWC 7',
            dueBackAt: '2026-06-13T19:30:00.000Z',
            renter: 'Dana Whitlock',
            aboard: 2,
            phone: '580-555-0142',
          },
        },
      ]);
    }
  });

  it.each([
    ['Unit,Renter\nPWC 7,Dana', '/rows/1/dueBackAt', 'due back at'],
    ['Unit,Due,Due back\nPWC 7,14:30,15:30', '/rows/1/dueBackAt', 'Two columns'],
    ['Unit,Due\nPWC 7,14:30\nPWC 8,', '/rows/3/dueBackAt', 'Row 3, due back at'],
    ['Unit,Due\nPWC 7,14:30\n,15:00', '/rows/3/unit', 'Row 3, unit'],
    ['Unit,Due\nPWC 7,half past two', '/rows/2/dueBackAt', '2:30 pm'],
    ['Unit,Due,Riders\nPWC 7,14:30,two', '/rows/2/aboard', 'Row 2, riders'],
    ['Unit,Due,Phone\nPWC 7,14:30,call me', '/rows/2/phone', 'Row 2, phone'],
    ['Unit,Out,Due\nPWC 7,14:30,13:30', '/rows/2/dueBackAt', 'later than'],
    ['Unit,Due\nPWC 7,14:30,Smith', '/rows/2', 'more fields'],
    ['Unit,Due\n', '/csv', 'no rows'],
    ['Unit,Due\n"PWC 7,14:30', '/csv', 'quotation mark'],
  ])('names row, field and fix of %j', (csv, pointer, words) => {
    const { errors, outings } = read(csv);
    expect(errors.map((error) => error.pointer)).toContain(pointer);
    expect(errors.map(({ detail }) => detail).join(' ')).toContain(words);
    expect(outings).toEqual([]);
  });

  it('gives back every field as it was, whatever commas, quotation marks and line ends are in it', () => {
    const field = fc.string({ maxLength: 20 }).filter((value) => !value.startsWith('\uFEFF'));
    fc.assert(
      fc.property(fc.array(fc.tuple(field, field), { minLength: 1, maxLength: 6 }), (rows) => {
        const quoted = (value: string): string => `"${value.replaceAll('"', '""')}"`;
        const csv = ['"a","b"', ...rows.map((row) => row.map(quoted).join(','))].join('\r\n');
        expect(readCsv(csv)).toEqual({ ok: true, value: [['a', 'b'], ...rows] });
      }),
    );
  });

  it('never throws and never takes a row without unit and due time, whatever was pasted', () => {
    const line = fc.oneof(
      fc.string({ maxLength: 40 }),
      fc.constantFrom('PWC 7,14:30', 'PWC 8,', 'x,2:30 pm', ',15:00'),
    );
    let taken = 0;
    fc.assert(
      fc.property(fc.array(line, { maxLength: 4 }), fc.boolean(), (lines, headed) => {
        const { outings } = read([...(headed ? ['Unit,Due back'] : []), ...lines].join('\n'));
        taken += outings.length;
        for (const { outing } of outings) {
          expect(outing.unit).not.toBe('');
          expect(outing.dueBackAt).toBeDefined();
        }
      }),
      { numRuns: 500 },
    );
    expect(taken).toBeGreaterThan(0);
  });
});

describe('the order of the list', () => {
  const instant = fc
    .integer({ min: 0, max: 100_000 })
    .map((minutes) => new Date(Date.UTC(2026, 5, 1) + minutes * 60_000).toISOString());
  const craft: fc.Arbitrary<StandingCraft> = fc
    .record({
      unitName: fc.integer({ min: 1, max: 99 }).map((n) => `PWC ${n}`),
      out: fc.option(fc.record({ dueBackAt: fc.option(instant) })),
      lastIn: fc.option(instant),
    })
    .map(({ unitName, out, lastIn }) => ({
      unitName,
      lastIn,
      dueBackAt: out?.dueBackAt ?? null,
      standing: standingOf({ out, lastIn }, Date.UTC(2026, 6, 1)),
    }));

  it('loses no craft, keeps standings in their order, and puts the longest overdue first', () => {
    fc.assert(
      fc.property(fc.array(craft), (fleet) => {
        const ordered = orderCraft(fleet);
        expect(new Set(ordered)).toEqual(new Set(fleet));
        const ranks = ordered.map(({ standing }) => STANDINGS.indexOf(standing));
        expect(ranks).toEqual([...ranks].sort((one, other) => one - other));
        const late = ordered
          .filter(({ standing }) => standing === 'late')
          .map(({ dueBackAt }) => dueBackAt ?? '');
        expect(late).toEqual([...late].sort());
      }),
    );
  });

  it('calls a craft late at the very moment at which it was due, and in only if somebody said so', () => {
    const due = '2026-06-13T14:00:00-05:00';
    const at = Date.parse(due);
    expect(standingOf({ out: { dueBackAt: due }, lastIn: null }, at - 1)).toBe('out');
    expect(standingOf({ out: { dueBackAt: due }, lastIn: null }, at)).toBe('late');
    expect(standingOf({ out: { dueBackAt: null }, lastIn: due }, at)).toBe('due-not-known');
    expect(standingOf({ out: null, lastIn: null }, at)).toBe('not-known');
    expect(standingOf({ out: null, lastIn: due }, at)).toBe('in');
  });
});
