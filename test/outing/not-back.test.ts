import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OVERDUE_ENDS } from '../../shared/call/call.js';
import { beginIncident, type NotBackFacts } from '../../shared/outing/begin-incident.js';
import { proposeIncident, RUNGS } from '../../shared/outing/not-back.js';
import { findNightLimit, planLadder } from '../../shared/outing/plan-ladder.js';
import { readSection } from '../../shared/wire/record-reading.js';

/** Invented dock on Lake Texoma. */
const PLACE = { latitude: 33.818, longitude: -96.571, utcOffsetMinutes: -300 };
const at = (text: string): number => Date.parse(`2026-06-13T${text}:00-05:00`);
const ladderAt = (text: string) => planLadder({ openedAt: at(text), now: at(text), place: PLACE });
const byOf = (text: string) =>
  Object.fromEntries(ladderAt(text).map(({ rung, by }) => [rung, Date.parse(by)]));

describe('the ladder', () => {
  it('climbs from the renter over our own boat to sheriff and Coast Guard (common practice, no source)', () => {
    expect(ladderAt('15:00').map(({ rung }) => rung)).toEqual(RUNGS);
    expect(byOf('15:00')).toEqual({
      'call-renter': at('15:00'),
      search: at('15:15'),
      sheriff: at('15:30'),
      'coast-guard': at('15:30'),
    });
  });

  it('searches with our own boat until the sun sets and never plans it in the dark', () => {
    const { sunset, civilDusk } = findNightLimit({ openedAt: at('15:00'), now: at('15:00'), place: PLACE });
    expect(ladderAt('15:00')[1]?.until).toBe(sunset);
    expect(Date.parse(String(sunset))).toBeLessThan(Date.parse(String(civilDusk)));
    const dark = ladderAt('22:00');
    expect(dark[1]).toMatchObject({ until: null });
    expect(dark[1]?.says).toContain('our own boat stays in');
    expect(new Set(Object.values(byOf('22:00')))).toEqual(new Set([at('22:00')]));
  });

  it('has sheriff and Coast Guard called before the sun sets, whenever it began', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), (minute) => {
        const openedAt = at('00:00') + minute * 60_000;
        const facts = { openedAt, now: openedAt, place: PLACE };
        const sunset = Date.parse(String(findNightLimit(facts).sunset));
        for (const { by } of planLadder(facts)) {
          expect(Date.parse(by)).toBeGreaterThanOrEqual(openedAt);
          expect(Date.parse(by)).toBeLessThanOrEqual(Math.max(openedAt, sunset));
        }
      }),
    );
  });

  it('says that the limit is not known where the place is not', () => {
    const facts = { openedAt: at('15:00'), now: at('15:00'), place: null };
    expect(findNightLimit(facts)).toEqual({ sunset: null, civilDusk: null, lightNow: 'unknown' });
    expect(planLadder(facts)[1]?.says).toContain('not known');
  });
});

describe('endings', () => {
  it('propose an incident where people or craft came to something that nobody has asked about', () => {
    const proposing = OVERDUE_ENDS.filter((end) => proposeIncident(end) !== null);
    expect(proposing).toEqual(['aground', 'stolen', 'found-empty']);
    expect(proposeIncident(null)).toBeNull();
  });
});

describe('an incident of a craft that is not back', () => {
  const nothing: NotBackFacts = {
    craft: { id: '6f1e1f9a-94f5-4ad0-9f31-0d7d2c8a5b10', unitName: 'PWC 7', colours: [] },
    openedAt: '2026-06-13T20:00:00.000Z',
    dueBackAt: null,
    outing: {},
    sheet: {},
    climbed: [],
    ended: null,
    person: 'Ana',
  };
  const stamp = { at: '2026-06-13T20:20:00Z', how: 'pressed' } as const;
  const all: NotBackFacts = {
    ...nothing,
    craft: { ...nothing.craft, colours: ['red', 'white'] },
    dueBackAt: '2026-06-13T19:30:00.000Z',
    outing: {
      renter: 'Dana Whitlock',
      phone: '580-555-0142',
      aboard: 2,
      riders: [
        { id: 'r1', name: 'dana whitlock' },
        { id: 'r2', name: 'Lee Marsh' },
      ],
      plan: 'To the islands',
    },
    sheet: { lastSeenAt: '2026-06-13T18:00:00Z', lastSeenWhere: 'Off the north point' },
    climbed: [{ id: 's1', rung: 'search', stamp, words: 'Two of ours', person: 'Ana' }],
    ended: { how: 'found-empty', at: '2026-06-13T21:00:00Z', words: 'Adrift' },
  };

  it('passes the checks of the record, with everything known and with nothing', () => {
    for (const facts of [nothing, all]) {
      const begun = beginIncident(facts);
      for (const name of ['call', 'craft', 'people'] as const) {
        expect([name, readSection(name, begun[name])]).toEqual([name, expect.objectContaining({ ok: true })]);
      }
    }
  });

  it('carries over what is known and names nobody twice', () => {
    const { call, craft, people } = beginIncident(all);
    expect(call).toMatchObject({
      kind: 'overdue',
      craftNamed: ['PWC 7'],
      overdue: {
        dueBackAt: { value: '2026-06-13T19:30:00.000Z' },
        lastSeenWhere: { value: 'Off the north point' },
        searchBegan: stamp,
        ended: { value: 'found-empty' },
      },
    });
    expect(craft.craft?.[0]).toMatchObject({
      fleetCraft: all.craft.id,
      colours: 'red, white',
      aboard: { value: 2 },
    });
    expect(people.people?.map(({ name }) => name)).toEqual(['Dana Whitlock', 'Lee Marsh']);
  });

  it('takes nobody for missing and nobody for well', () => {
    for (const how of [...OVERDUE_ENDS, null]) {
      const ended = how === null ? null : { how, at: stamp.at, words: null };
      const { people } = beginIncident({ ...all, ended });
      expect(people.everyoneAccountedFor?.value).toBe('unknown');
      for (const { outcome } of people.people ?? [])
        expect(['not-back', 'unknown']).toContain(outcome?.value);
    }
  });
});
