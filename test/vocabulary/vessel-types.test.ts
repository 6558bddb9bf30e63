import { describe, expect, it } from 'vitest';
import {
  engineDrives,
  findVesselType,
  fuels,
  hullMaterials,
  propulsions,
  slugsOf,
  vesselTypes,
} from '../../shared/vocabulary/vessel-types.js';

// 33 CFR 174.19(a)(11) to (15): the authorized terms, in the order of the rule.
describe('the authorized terms of the numbering rule', () => {
  it.each([
    [
      11,
      vesselTypes,
      'Airboat|Auxiliary sail|Cabin motorboat|Houseboat|Inflatable boat|Open motorboat|Paddlecraft|Personal watercraft|Pontoon boat|Rowboat|Sail only|Other',
    ],
    [12, hullMaterials, 'Aluminum|Fiberglass|Plastic|Rubber/vinyl/canvas|Steel|Wood|Other'],
    [13, propulsions, 'Air thrust|Manual|Propeller|Sail|Water jet|Other'],
    [14, engineDrives, 'Inboard|Outboard|Pod drive|Sterndrive|Other'],
    [15, fuels, 'Electric|Diesel|Gas|Other'],
  ])('of paragraph (a)(%d) are all there, and no other', (paragraph, terms, labels) => {
    expect(terms.map(({ label }) => label).join('|')).toBe(labels);
    for (const { source } of terms) expect(source).toMatch(`33 CFR 174.19(a)(${paragraph})`);
    for (const slug of slugsOf(terms)) expect(slug).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(new Set(slugsOf(terms)).size).toBe(terms.length);
  });

  it('explain each type, and say how sure that is', () => {
    for (const { definition, definitionBasis } of vesselTypes) {
      expect(definition.trim()).not.toBe('');
      expect(['read', 'read-secondary', 'memory']).toContain(definitionBasis);
    }
  });

  it('are found by slug', () => {
    expect(findVesselType('personal-watercraft')?.label).toBe('Personal watercraft');
    expect(findVesselType('submarine')).toBeUndefined();
  });
});
