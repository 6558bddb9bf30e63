import { Ajv2020 } from 'ajv/dist/2020.js';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { describe, expect, it } from 'vitest';
import determinationSchema from '../../forms/determination/determination.schema.json' with { type: 'json' };
import factsSchema from '../../forms/determination/incident-facts.schema.json' with { type: 'json' };
import type { Determination } from '../../shared/determination/determination.js';

function ajv(): Ajv2020 {
  return new Ajv2020({
    strict: true,
    strictTypes: false,
    allErrors: true,
    formats: { 'date-time': fullFormats['date-time'] },
  });
}

describe('the published schemas', () => {
  it.each([factsSchema, determinationSchema])('$$id is a sound schema of draft 2020-12', (schema) => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(ajv().validateSchema(schema)).toBe(true);
    expect(ajv().compile(schema)).toBeTypeOf('function');
  });

  const determination: Determination = {
    schemaVersion: 1,
    source: 'request',
    timeZone: '-05:00',
    states: [{ state: 'TX', chosenBy: 'stated', distanceToLineM: null }],
    duties: [
      {
        id: 'us/accident-report',
        jurisdiction: 'us',
        kind: 'accident-report',
        outcome: 'undetermined',
        reasons: [
          { trigger: 'death', value: 'unknown', text: 'Nobody knows yet.', citation: '33 CFR 173.55(a)(1)' },
        ],
        questions: [{ fact: '/people/0/outcome', text: 'What became of p1?' }],
        immediate: false,
        dueAt: null,
        dueAtIfRequired: '2026-07-06T15:40:00-05:00',
        dueBasis: '48 hours',
        authority: null,
        reporters: [{ vessel: 'pwc-7', who: 'operator-else-owner', text: 'The renter, else the business.' }],
        citations: ['33 CFR 173.55(a)'],
        packBasis: 'read-primary',
      },
    ],
  };

  it('the schema of a determination takes what the type allows', () => {
    const validate = ajv().compile(determinationSchema);
    expect(validate(determination), JSON.stringify(validate.errors)).toBe(true);
  });

  it.each([
    ['an outcome of its own', { outcome: 'probably' }, '/duties/0/outcome'],
    ['a deadline without offset', { dueAt: '2026-07-06T15:40:00' }, '/duties/0/dueAt'],
    [
      'a reporter whom no law names',
      { reporters: [{ vessel: null, who: 'bystander', text: '' }] },
      '/duties/0/reporters/0/who',
    ],
    [
      'a reason that is neither true, false nor unknown',
      { reasons: [{ trigger: 'death', value: 'no', text: '' }] },
      '/duties/0/reasons/0/value',
    ],
  ])('and refuses %s', (_, change, pointer) => {
    const validate = ajv().compile(determinationSchema);
    expect(validate({ ...determination, duties: [{ ...determination.duties[0], ...change }] })).toBe(false);
    expect(validate.errors?.map((error) => error.instancePath)).toContain(pointer);
  });
});
