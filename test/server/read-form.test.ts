import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readForm } from '../../src/server/platform/read-form.js';

/** JSON Schema 2020-12 (https://json-schema.org/draft/2020-12): `required` and `minItems` by its section on validation. */
const SCHEMA = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'urn:example:steps',
  type: 'object',
  required: ['steps'],
  properties: { steps: { type: 'array', minItems: 1 } },
};

describe('A form', () => {
  let folder: string;
  const write = (name: string, content: unknown): void =>
    writeFileSync(join(folder, 'samples', name), JSON.stringify(content));

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'forms-'));
    mkdirSync(join(folder, 'samples'));
    write('steps.schema.json', SCHEMA);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('is read when it keeps to its schema, and as it then is', () => {
    for (const steps of [['one'], ['one', 'two']]) {
      write('steps.json', { steps });
      expect(readForm('samples/steps', 'samples/steps', folder)).toEqual({ steps });
    }
  });

  it.each([
    [{}, "forms/samples/steps.json cannot be used:  must have required property 'steps'"],
    [{ steps: [] }, 'forms/samples/steps.json cannot be used: /steps must NOT have fewer than 1 items'],
  ])('is refused with its name and every fault: %j', (form, words) => {
    write('steps.json', form);
    expect(() => readForm('samples/steps', 'samples/steps', folder)).toThrow(words);
  });

  it('is held against a schema of the same name that was changed meanwhile', () => {
    write('steps.json', { steps: ['one'] });
    write('steps.schema.json', { ...SCHEMA, properties: { steps: { type: 'array', minItems: 2 } } });
    expect(() => readForm('samples/steps', 'samples/steps', folder)).toThrow(
      '/steps must NOT have fewer than 2',
    );
    write('steps.schema.json', SCHEMA);
  });
});
