import { describe, expect, it } from 'vitest';
import type { IncidentFacts, ScopeAnswer } from '../../shared/record/incident-facts.js';
import { determineFacts, dutyOf, packs, quietGrounding } from './situation.js';

/**
 * Aids show what a source says of occurrences that are perhaps not reportable. None applies by itself: 33 CFR 173.55
 * names no such exception, and the Coast Guard's policy letter was not read.
 */
const drowned = (casualtyTypes: string[], others: Partial<IncidentFacts> = {}): IncidentFacts => ({
  ...quietGrounding(),
  casualtyTypes,
  people: [{ id: 'p1', vessel: 'A', outcome: 'died', care: 'none', diedAt: '2026-06-13T12:00:00-05:00' }],
  ...others,
});
const ANSWER: ScopeAnswer = {
  aid: 'left-on-purpose',
  jurisdictions: ['us'],
  answer: 'not-reportable',
  reason: 'She jumped from the anchored pontoon to swim; the administrator counts none such.',
  by: 'Max Reyes',
  at: '2026-06-14T09:00:00-05:00',
};
const accidents = ['us/accident-report', 'us/death-or-disappearance-notice', 'us-tx/accident-report'];
const outcomes = (facts: IncidentFacts) => accidents.map((id) => dutyOf(determineFacts(facts), id).outcome);

describe('is it a reportable occurrence at all', () => {
  it.each<[string, IncidentFacts, string[]]>([
    ['somebody left the craft', drowned(['person-departed-vessel']), ['left-on-purpose']],
    ['a sudden medical condition', drowned(['sudden-medical-condition']), ['sudden-medical-condition']],
    ['a fire', drowned(['fire-or-explosion-other']), ['shore-fire-or-storm']],
    [
      'a craft without a motor',
      drowned(['capsizing'], { vessels: [{ id: 'A', use: 'rental', ours: true, motorized: 'no' }] }),
      ['is-it-a-vessel'],
    ],
    [
      'a craft that is lost',
      drowned(['other'], { vessels: [{ id: 'A', use: 'rental', ours: true, completeLoss: 'yes' }] }),
      ['theft'],
    ],
    [
      'craft of others without numbers',
      drowned(['other'], { vessels: [{ id: 'A', use: 'recreational', numbered: 'no' }] }),
      ['foreign-vessels-only'],
    ],
    ['a collision of two craft', drowned(['collision-with-recreational-vessel']), []],
  ])('%s: what may be asked is shown, and nothing is taken away', (_, facts, shown) => {
    expect(determineFacts(facts).aids?.map(({ id }) => id)).toEqual(shown);
    expect(dutyOf(determineFacts(facts), 'us/accident-report').outcome).toBe('required');
  });

  it('asks about skeg and propeller in Kansas alone', () => {
    const struck = (state: string) => ({
      ...quietGrounding(),
      casualtyTypes: ['collision-with-submerged-object'],
      place: { states: [state], timeZone: 'America/Chicago' },
    });
    const asked = (state: string) =>
      determineFacts(struck(state)).aids?.map(({ jurisdiction, id }) => `${jurisdiction} ${id}`);
    expect(asked('KS')).toEqual(['us-ks skeg-or-propeller-alone']);
    expect(asked('TX')).toEqual([]);
  });

  it('every aid names its source and what is not known', () => {
    const aids = packs.flatMap((pack) => pack.aids ?? []);
    expect(aids.length).toBe(7);
    for (const aid of aids) {
      expect(aid.source, aid.id).toMatch(/\w/);
      expect(aid.notKnown, aid.id).toMatch(/\w/);
    }
    expect(new Set(aids.map(({ id }) => id)).size).toBe(aids.length);
  });

  it("takes the duties of the jurisdictions that a person's answer names, and says who, when and why", () => {
    const facts = drowned(['person-departed-vessel'], { scopeAnswers: [ANSWER] });
    expect(outcomes(facts)).toEqual(['not-required', 'not-required', 'required']);
    const reason = dutyOf(determineFacts(facts), 'us/accident-report').reasons.find(
      ({ trigger }) => trigger === 'applies/answer-left-on-purpose',
    );
    expect(reason).toMatchObject({ value: 'false' });
    for (const words of [ANSWER.by, ANSWER.at, ANSWER.reason]) expect(reason?.text).toContain(words);
    expect(determineFacts(facts).aids).toMatchObject([{ id: 'left-on-purpose', answers: [ANSWER] }]);
  });

  it('lets the last answer count, and one to a question that no text asks count for nothing', () => {
    const back: ScopeAnswer = { ...ANSWER, answer: 'reportable', reason: 'The pontoon was drifting.' };
    const all = ['required', 'required', 'required'];
    expect(outcomes(drowned(['person-departed-vessel'], { scopeAnswers: [ANSWER, back] }))).toEqual(all);
    const odd = { ...ANSWER, aid: 'because-i-say-so' };
    expect(outcomes(drowned(['person-departed-vessel'], { scopeAnswers: [odd] }))).toEqual(all);
  });

  it('leaves duties on other matters where they are', () => {
    const facts = drowned(['person-departed-vessel'], { scopeAnswers: [ANSWER], oilSheen: 'yes' });
    expect(dutyOf(determineFacts(facts), 'us/oil-discharge-notice').outcome).toBe('required');
  });
});
