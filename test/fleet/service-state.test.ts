import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followService } from '../../shared/record/follow-service.js';
import { judgeServiceStep } from '../../shared/record/judge-service-step.js';
import type { ServiceStep, Standing } from '../../shared/record/service-step.js';
import { NOTHING_KNOWN, type Consequence } from '../../shared/record/weigh-consequence.js';

const NO_HARM: Consequence = {
  ...NOTHING_KNOWN,
  died: 'no',
  missing: 'no',
  beyondFirstAid: 'no',
  hurt: 'no',
};
const DEATH: Consequence = { ...NO_HARM, died: 'yes' };

const out = (incident: string | null = 'i1'): ServiceStep => ({ kind: 'taken-out', incident, reason: 'r' });
const weighed = (consequence: Consequence, incident = 'i1'): ServiceStep => ({
  kind: 'weighed',
  incident,
  consequence,
});
const cleared = (incident = 'i1'): ServiceStep => ({
  kind: 'cleared',
  incident,
  by: 'counsel',
  person: 'Counsel',
  how: 'by letter',
  reference: null,
});
const released = (incident: string | null = 'i1'): ServiceStep => ({
  kind: 'released',
  incident,
  photographs: ['p1'],
  remark: null,
  gravity: 'damage-only',
  ownerAmountCents: null,
});
const held: ServiceStep = {
  kind: 'held-by-agency',
  agency: 'Wardens',
  officer: null,
  badge: null,
  receipt: null,
  photographs: [],
  hourMeter: null,
  keptWhere: null,
};
const returned: ServiceStep = {
  kind: 'returned-by-agency',
  handedOverBy: null,
  receipt: null,
  photographs: [],
  hourMeter: null,
};
const barred: ServiceStep = { kind: 'do-not-start', reason: 'water in the engine' };
const allowed: ServiceStep = { kind: 'start-allowed', reason: 'drained and dry' };
const photographed: ServiceStep = { kind: 'photographed', incident: 'i1', photographs: ['p0'] };
const notConcerned: ServiceStep = { kind: 'not-concerned', incident: 'i1', reason: 'it was PWC 8' };

describe('the steps of a craft come to', () => {
  it.each<[string, ServiceStep[], boolean]>([
    ['in service before anything', [], true],
    ['out after an incident', [out()], false],
    ['in after its release', [out(), released()], true],
    ['out while a second incident keeps it', [out(), out('i2'), released()], false],
    ['out while upkeep keeps it', [out(), out(null), released()], false],
    ['in after both are over', [out(), out(null), released(), released(null)], true],
    ['in when it was another craft', [out(), notConcerned], true],
    ['out while an agency holds it', [held], false],
    ['in after its return', [held, returned], true],
    ['out while its engine must not be started', [barred], false],
    ['in once it may be started', [barred, barred, allowed], true],
    ['out when taken out again', [out(), released(), out()], false],
  ])('%s', (_name, steps, inService) => {
    expect(followService(steps).inService).toBe(inService);
  });

  it('a hold with what is known, photographed and cleared', () => {
    const { holds } = followService([out(), weighed(DEATH), photographed, cleared()]);
    expect(holds).toMatchObject([
      { incident: 'i1', consequence: DEATH, photographs: ['p0'], clearances: [{ by: 'counsel' }] },
    ]);
  });

  it.each<[string, ServiceStep[], number]>([
    ['stays while nothing graver comes out', [weighed(DEATH), cleared(), weighed(DEATH)], 1],
    ['stays when it turns out lighter', [weighed(DEATH), cleared(), weighed(NO_HARM)], 1],
    ['ends when it turns out graver', [weighed(NO_HARM), cleared(), weighed(DEATH)], 0],
    ['given while nothing was known ends with a death', [cleared(), weighed(DEATH)], 0],
    ['of another incident stays', [out('i2'), cleared('i2'), weighed(DEATH)], 0],
  ])('a clearance that %s', (_name, steps, clearances) => {
    expect(followService([out(), ...steps]).holds[0]?.clearances).toHaveLength(clearances);
  });
});

describe('a step is judged by where the craft stands', () => {
  it.each<[string, ServiceStep[], ServiceStep, Standing, string[]]>([
    ['anyone takes a craft out', [], out(), 'staff', []],
    ['twice for one incident is once too often', [out()], out(), 'manager', ['NOT_NOW']],
    ['again after a release', [out(), released()], out(), 'staff', []],
    ['what comes of an incident is told while it is out', [out()], weighed(DEATH), 'staff', []],
    ['and after the release', [out(), released()], weighed(DEATH), 'staff', []],
    ['but not before it was taken out', [], weighed(DEATH), 'staff', ['NOT_NOW']],
    ['no photographs for an incident that keeps nothing', [], photographed, 'staff', ['NOT_NOW']],
    ['a clearance is for a manager to record', [out()], cleared(), 'shift-lead', ['STANDING_TOO_LOW']],
    ['which a manager does', [out()], cleared(), 'manager', []],
    ['no clearance of another incident', [out()], cleared('i2'), 'manager', ['NOT_NOW']],
    ['no release of what is not out', [], released(), 'manager', ['NOT_NOW']],
    ['no second release', [out(), released()], released(), 'manager', ['NOT_NOW']],
    ['a release goes by its rule', [out(), weighed(DEATH)], released(), 'manager', ['CLEARANCE_MISSING']],
    ['and is given once cleared', [out(), weighed(DEATH), cleared()], released(), 'manager', []],
    ['an agency takes what lies at the dock', [], held, 'staff', []],
    ['but not twice', [held], held, 'staff', ['NOT_NOW']],
    ['and returns only what it took', [], returned, 'staff', ['NOT_NOW']],
    ['anyone says not to start', [barred], barred, 'staff', []],
    ['not anyone says to start', [barred], allowed, 'staff', ['STANDING_TOO_LOW']],
    ['the shift lead does', [barred], allowed, 'shift-lead', []],
    ['when there is something to allow', [], allowed, 'manager', ['NOT_NOW']],
    [
      'starting after a death needs clearance too',
      [out(), weighed(DEATH), barred],
      allowed,
      'manager',
      ['CLEARANCE_MISSING'],
    ],
    [
      'and a manager',
      [out(), weighed(DEATH), cleared(), barred],
      allowed,
      'shift-lead',
      ['STANDING_TOO_LOW'],
    ],
    ['who then may', [out(), weighed(DEATH), cleared(), barred], allowed, 'manager', []],
  ])('%s', (_name, before, step, by, codes) => {
    const refusals = judgeServiceStep(followService(before), step, by, 50_000);
    expect(refusals.map(({ code }) => code)).toEqual(codes);
  });
});

describe('whatever is tried in whatever order', () => {
  const tries = fc.array(
    fc.record({
      step: fc.constantFrom(
        ...[
          out(),
          out('i2'),
          out(null),
          weighed(DEATH),
          weighed(NO_HARM),
          weighed(DEATH, 'i2'),
          photographed,
        ],
        ...[
          cleared(),
          cleared('i2'),
          released(),
          released('i2'),
          released(null),
          held,
          returned,
          barred,
          allowed,
        ],
      ),
      by: fc.constantFrom<Standing>('staff', 'shift-lead', 'manager'),
    }),
    { maxLength: 40 },
  );
  /** The steps that are taken: the others are refused, and leave nothing behind. */
  const taken = (asked: readonly { step: ServiceStep; by: Standing }[]): ServiceStep[] => {
    const steps: ServiceStep[] = [];
    for (const { step, by } of asked) {
      if (judgeServiceStep(followService(steps), step, by, 50_000).length === 0) steps.push(step);
    }
    return steps;
  };

  it('no craft goes out after a death unless counsel or the insurer cleared it since', () => {
    fc.assert(
      fc.property(tries, (asked) => {
        const steps = taken(asked);
        steps.forEach((step, place) => {
          if (step.kind !== 'released' || step.incident === null) return;
          const ofIncident = steps
            .slice(0, place)
            .filter((before) => 'incident' in before && before.incident === step.incident);
          const since = ofIncident.slice(ofIncident.findLastIndex(({ kind }) => kind === 'taken-out'));
          const last = since.findLast((before) => before.kind === 'weighed');
          const ruledOut = last?.kind === 'weighed' && last.consequence.died === 'no';
          expect(ruledOut || since.some(({ kind }) => kind === 'cleared')).toBe(true);
        });
      }),
    );
  });

  it('no craft is released out of the hands of an agency, or with an engine not to be started', () => {
    fc.assert(
      fc.property(tries, (asked) => {
        let agency = false;
        let mustNotStart = false;
        for (const { kind } of taken(asked)) {
          if (kind === 'held-by-agency') agency = true;
          if (kind === 'returned-by-agency') agency = false;
          if (kind === 'do-not-start') mustNotStart = true;
          if (kind === 'start-allowed') mustNotStart = false;
          if (kind === 'released')
            expect({ agency, mustNotStart }).toEqual({ agency: false, mustNotStart: false });
        }
      }),
    );
  });

  it('a craft is in service exactly when each thing that took it out has ended', () => {
    fc.assert(
      fc.property(tries, (asked) => {
        const steps = taken(asked);
        const open = new Set<string>();
        for (const step of steps) {
          if (step.kind === 'taken-out') open.add(`hold ${step.incident}`);
          if (step.kind === 'released') open.delete(`hold ${step.incident}`);
          if (step.kind === 'held-by-agency') open.add('agency');
          if (step.kind === 'returned-by-agency') open.delete('agency');
          if (step.kind === 'do-not-start') open.add('engine');
          if (step.kind === 'start-allowed') open.delete('engine');
        }
        expect(followService(steps).inService).toBe(open.size === 0);
      }),
    );
  });
});
