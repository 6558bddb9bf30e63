import { describe, expect, it } from 'vitest';
import {
  casualtyTypes,
  casualtyTypeSlugs,
  findCasualtyType,
} from '../../shared/vocabulary/casualty-types.js';
import { explainCare } from '../../shared/vocabulary/explain-care.js';
import {
  beyondFirstAidTreatments,
  findBeyondFirstAid,
  findFirstAid,
  firstAidTreatments,
  isBeyondFirstAid,
  treatmentSlugs,
} from '../../shared/vocabulary/treatments.js';

// 29 CFR 1904.7(b)(5)(ii)(A) to (N), in the order of the regulation.
const REGULATION = [
  ['A', 'non-prescription-medicine'],
  ['B', 'tetanus-shot'],
  ['C', 'surface-wound-cleaning'],
  ['D', 'wound-covering'],
  ['E', 'hot-or-cold-therapy'],
  ['F', 'non-rigid-support'],
  ['G', 'immobilisation-for-transport'],
  ['H', 'nail-drilling-or-blister-draining'],
  ['I', 'eye-patch'],
  ['J', 'eye-irrigation-or-swab'],
  ['K', 'simple-splinter-removal'],
  ['L', 'finger-guard'],
  ['M', 'massage'],
  ['N', 'fluids-for-heat-stress'],
] as const;

describe('the closed list of first aid', () => {
  it('has the fourteen treatments of the regulation in its order', () => {
    expect(firstAidTreatments.map(({ letter, slug }) => [letter, slug])).toEqual(REGULATION);
  });

  it.each(REGULATION)('(%s) %s is first aid, with its paragraph', (letter, slug) => {
    expect(isBeyondFirstAid(slug)).toBe(false);
    expect(findFirstAid(slug)?.source).toBe(`29 CFR 1904.7(b)(5)(ii)(${letter})`);
    expect(explainCare([slug])).toMatchObject({
      onList: [{ slug, citation: `29 CFR 1904.7(b)(5)(ii)(${letter})` }],
      beyond: [],
    });
  });

  // The opposites that the regulation itself names beside the items.
  it.each([
    ['prescription-medicine', 'A'],
    ['other-vaccine', 'B'],
    ['sutures-staples-or-glue', 'D'],
    ['rigid-support-or-cast', 'F'],
    ['physical-therapy', 'M'],
    ['intravenous-fluids', 'N'],
    ['oxygen', null],
    ['cardiopulmonary-resuscitation', null],
    ['surgery', null],
    ['other-treatment', null],
  ])('%s goes beyond it and is near (%s)', (slug, letter) => {
    expect(isBeyondFirstAid(slug)).toBe(true);
    expect(findBeyondFirstAid(slug)?.mistakenFor).toBe(letter);
    expect(findFirstAid(slug)).toBeUndefined();
    expect(explainCare([slug]).beyond).toMatchObject([{ slug, citation: '29 CFR 1904.7(b)(5)(ii)' }]);
  });

  it('leaves out whatever it does not name', () => {
    expect(['leeches', '', 'constructor', '__proto__'].filter((slug) => !isBeyondFirstAid(slug))).toEqual([]);
  });
});

describe('the aid to care', () => {
  it('parts the treatments, each once, and says what it is worth', () => {
    const aid = explainCare([
      'wound-covering',
      'oxygen',
      'wound-covering',
      'leeches',
      'sutures-staples-or-glue',
    ]);
    expect(aid.onList.map((line) => line.slug)).toEqual(['wound-covering']);
    expect(aid.beyond.map((line) => line.slug)).toEqual(['oxygen', 'leeches', 'sutures-staples-or-glue']);
    expect(aid.beyond.map((line) => line.text.split('.')[0])).toEqual([
      'Not among (A) to (N)',
      'Not among (A) to (N)',
      'Not what (D) covers',
    ]);
    expect(aid.note).toMatch(/never a proof/);
    expect(aid.note).toMatch(/33 CFR part 173/);
  });

  it('says it even when there is nothing to part', () => {
    expect(explainCare([])).toEqual({ onList: [], beyond: [], note: explainCare(['massage']).note });
  });
});

describe('the vocabulary', () => {
  const terms = [...casualtyTypes, ...firstAidTreatments, ...beyondFirstAidTreatments];

  it.each(terms.map((term) => [term.slug, term] as const))(
    '%s says what it means and where it is from',
    (_, term) => {
      expect(term.slug).toMatch(/^[a-z]+(-[a-z]+)*$/);
      for (const text of [term.label, term.definition, term.source]) expect(text.trim()).not.toBe('');
      for (const basis of [term.basis, term.definitionBasis]) {
        expect(['read', 'read-secondary', 'memory']).toContain(basis);
      }
    },
  );

  it('has no slug twice, and finds each term by its slug', () => {
    expect(new Set(casualtyTypeSlugs).size).toBe(casualtyTypes.length);
    expect(new Set(treatmentSlugs).size).toBe(firstAidTreatments.length + beyondFirstAidTreatments.length);
    expect(casualtyTypes.every((term) => findCasualtyType(term.slug) === term)).toBe(true);
    expect(findCasualtyType('constructor')).toBeUndefined();
  });

  // Labels of the federal accident data before 2024, second-hand, with sinking and starting engine from a state guide.
  it('has the casualty types of the list of 2013, which is the only one that was read', () => {
    expect(casualtyTypeSlugs).toEqual([
      'capsizing',
      'carbon-monoxide-exposure',
      'collision-with-recreational-vessel',
      'collision-with-commercial-vessel',
      'collision-with-government-vessel',
      'collision-with-fixed-object',
      'collision-with-floating-object',
      'collision-with-submerged-object',
      'electrocution',
      'fall-in-vessel',
      'fall-overboard',
      'fire-or-explosion-fuel',
      'fire-or-explosion-other',
      'fire-or-explosion-unknown-origin',
      'flooding-or-swamping',
      'grounding',
      'person-departed-vessel',
      'person-ejected',
      'person-struck-by-propeller',
      'person-struck-by-vessel',
      'sinking',
      'starting-engine',
      'sudden-medical-condition',
      'towed-person-mishap',
      'other',
      'unknown',
    ]);
    expect(new Set(casualtyTypes.map((term) => term.vocabularyVersion))).toEqual(new Set(['2013']));
  });
});
