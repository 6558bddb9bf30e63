import { describe, expect, it } from 'vitest';
import type { Hold, ServiceState } from '../../shared/record/follow-service.js';
import { listCustodyGaps } from '../../shared/record/list-custody-gaps.js';
import { mayRelease, type RefusalCode, releaseRule } from '../../shared/record/may-release.js';
import type { ClearanceStep, HeldByAgencyStep, Standing } from '../../shared/record/service-step.js';
import {
  type Consequence,
  type Gravity,
  isGraver,
  NOTHING_KNOWN,
  weighConsequence,
} from '../../shared/record/weigh-consequence.js';

const AMOUNT = 50_000;
const damage = (lowCents: number, highCents = lowCents) => ({ damage: { lowCents, highCents } });

const NOBODY_HURT: Consequence = {
  died: 'no',
  missing: 'no',
  beyondFirstAid: 'no',
  hurt: 'no',
  claimed: false,
  damage: { lowCents: 12_000, highCents: 12_000 },
};
const CLEARANCE: ClearanceStep = {
  kind: 'cleared',
  incident: 'i1',
  by: 'insurer',
  person: 'R. Vale',
  how: 'by mail',
  reference: null,
};
const HELD: HeldByAgencyStep = {
  kind: 'held-by-agency',
  agency: 'State wardens',
  officer: 'Ortiz',
  badge: '114',
  receipt: 'R-9',
  photographs: ['p0'],
  hourMeter: 212.4,
  keptWhere: 'Their yard',
};

describe('how grave an incident is for its craft', () => {
  it.each<[Gravity, Partial<Consequence>]>([
    ['damage-only', {}],
    ['damage-only', { damage: null }],
    ['hurt', { hurt: 'yes' }],
    ['hurt', { hurt: 'unknown' }],
    ['unclear', { died: 'unknown' }],
    ['unclear', { missing: 'unknown' }],
    ['unclear', { beyondFirstAid: 'unknown' }],
    ['unclear', NOTHING_KNOWN],
    ['grave', { died: 'yes' }],
    ['grave', { missing: 'yes' }],
    ['grave', { beyondFirstAid: 'yes' }],
    ['grave', { claimed: true }],
    ['grave', { ...NOTHING_KNOWN, missing: 'yes' }],
    ['grave', { ...NOTHING_KNOWN, claimed: true }],
  ])('%s after %j', (gravity, different) => {
    expect(weighConsequence({ ...NOBODY_HURT, ...different })).toBe(gravity);
  });

  it.each<[Gravity, Gravity, boolean]>([
    ['grave', 'unclear', true],
    ['unclear', 'hurt', true],
    ['hurt', 'damage-only', true],
    ['hurt', 'hurt', false],
    ['damage-only', 'grave', false],
  ])('%s is graver than %s: %s', (now, before, graver) => {
    expect(isGraver(now, before)).toBe(graver);
  });
});

interface Case {
  consequence?: Partial<Consequence>;
  upkeep?: true;
  by: Standing;
  photographs?: string[];
  before?: string[];
  cleared?: true;
  amount?: number | null;
  state?: Partial<ServiceState>;
}

function ask({ consequence, upkeep, by, photographs, before, cleared, amount, state }: Case) {
  const hold: Hold = {
    incident: upkeep === true ? null : 'i1',
    reason: 'r',
    consequence: { ...NOBODY_HURT, ...consequence },
    photographs: before ?? [],
    clearances: cleared === true ? [CLEARANCE] : [],
  };
  const whole = {
    inService: false,
    holds: [hold],
    released: [],
    heldByAgency: null,
    doNotStart: [],
    ...state,
  };
  const ownerAmountCents = amount === undefined ? AMOUNT : amount;
  const question = { state: whole, hold, by, photographs: photographs ?? ['p1'], ownerAmountCents };
  return mayRelease(question).map(({ code }) => code);
}

describe('a craft is released', () => {
  it.each<[string, Case]>([
    ["by the shift lead after damage below the owner's amount", { by: 'shift-lead' }],
    ['by the shift lead with photographs taken before', { by: 'shift-lead', photographs: [], before: ['p'] }],
    ['one cent below the amount', { by: 'shift-lead', consequence: damage(0, AMOUNT - 1) }],
    ['by a manager at the amount', { by: 'manager', consequence: damage(AMOUNT) }],
    [
      'by a manager while nobody has put a figure on the damage',
      { by: 'manager', consequence: { damage: null } },
    ],
    ['by a manager while the owner has named no amount', { by: 'manager', amount: null }],
    ['by a manager after somebody had first aid', { by: 'manager', consequence: { hurt: 'yes' } }],
    [
      'by a manager after a death, once cleared',
      { by: 'manager', consequence: { died: 'yes' }, cleared: true },
    ],
    [
      'by a manager while much is unknown, once cleared',
      { by: 'manager', consequence: NOTHING_KNOWN, cleared: true },
    ],
    [
      'by the shift lead from upkeep, without photographs',
      { by: 'shift-lead', upkeep: true, photographs: [] },
    ],
  ])('%s', (_name, question) => {
    expect(ask(question)).toEqual([]);
  });
});

describe('a craft stays in', () => {
  it.each<[string, RefusalCode[], Case]>([
    ['without photographs', ['PHOTOGRAPHS_MISSING'], { by: 'shift-lead', photographs: [] }],
    ['for staff who lead no shift', ['STANDING_TOO_LOW'], { by: 'staff' }],
    ['for staff from upkeep', ['STANDING_TOO_LOW'], { by: 'staff', upkeep: true }],
    [
      'at the amount, for the shift lead',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: damage(AMOUNT) },
    ],
    [
      'where the damage may reach the amount',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: damage(1, AMOUNT) },
    ],
    [
      'while the damage has no figure',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: { damage: null } },
    ],
    ['while the owner has named no amount', ['STANDING_TOO_LOW'], { by: 'shift-lead', amount: null }],
    [
      'after first aid, for the shift lead',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: { hurt: 'yes' } },
    ],
    [
      'while it is unknown whether anybody was hurt',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: { hurt: 'unknown' } },
    ],
    [
      'after a death, without clearance',
      ['CLEARANCE_MISSING'],
      { by: 'manager', consequence: { died: 'yes' } },
    ],
    ['with a person missing', ['CLEARANCE_MISSING'], { by: 'manager', consequence: { missing: 'yes' } }],
    [
      'after a serious injury',
      ['CLEARANCE_MISSING'],
      { by: 'manager', consequence: { beyondFirstAid: 'yes' } },
    ],
    ['after a claim', ['CLEARANCE_MISSING'], { by: 'manager', consequence: { claimed: true } }],
    [
      'while a death is not ruled out',
      ['CLEARANCE_MISSING'],
      { by: 'manager', consequence: { died: 'unknown' } },
    ],
    ['while nothing is known', ['CLEARANCE_MISSING'], { by: 'manager', consequence: NOTHING_KNOWN }],
    [
      'after a death, for the shift lead even when cleared',
      ['STANDING_TOO_LOW'],
      { by: 'shift-lead', consequence: { died: 'yes' }, cleared: true },
    ],
    [
      'after a death, without photographs even when cleared',
      ['PHOTOGRAPHS_MISSING'],
      { by: 'manager', consequence: { died: 'yes' }, cleared: true, photographs: [] },
    ],
    ['while an agency holds it', ['AGENCY_HOLDS_IT'], { by: 'manager', state: { heldByAgency: HELD } }],
    [
      'while its engine must not be started',
      ['ENGINE_MUST_NOT_START'],
      { by: 'manager', state: { doNotStart: ['wet'] } },
    ],
    [
      'from upkeep while an agency holds it',
      ['AGENCY_HOLDS_IT'],
      { by: 'manager', upkeep: true, state: { heldByAgency: HELD } },
    ],
    [
      'for every reason at once',
      [
        'AGENCY_HOLDS_IT',
        'ENGINE_MUST_NOT_START',
        'PHOTOGRAPHS_MISSING',
        'CLEARANCE_MISSING',
        'STANDING_TOO_LOW',
      ],
      {
        by: 'staff',
        consequence: { died: 'yes' },
        photographs: [],
        state: { heldByAgency: HELD, doNotStart: ['wet'] },
      },
    ],
  ])('%s', (_name, codes, question) => {
    expect(ask(question)).toEqual(codes);
  });
});

it('the rule says why, with the amount', () => {
  const hold = { incident: 'i1', reason: 'r', photographs: [], clearances: [], consequence: NOBODY_HURT };
  expect(releaseRule(hold, AMOUNT).because).toBe("The damage is below the owner's amount of $500.");
});

describe('what is to be asked for while an agency holds a craft', () => {
  it.each<[Partial<HeldByAgencyStep>, RegExp[]]>([
    [{}, []],
    [{ receipt: null }, [/receipt/]],
    [{ officer: null }, [/officer/]],
    [{ photographs: [] }, [/[Pp]hotographs/]],
    [{ hourMeter: null }, [/hour meter/]],
    [{ hourMeter: 0 }, []],
    [{ keptWhere: null }, [/kept/]],
  ])('%j', (different, patterns) => {
    const gaps = listCustodyGaps({ ...HELD, ...different });
    expect(gaps).toHaveLength(patterns.length);
    patterns.forEach((pattern, place) => expect(gaps[place]).toMatch(pattern));
  });
});
