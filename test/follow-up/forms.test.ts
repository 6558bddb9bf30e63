import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { HOUSE_RULE_IDS } from '../../shared/follow-up/house-rule.js';
import { TASK_FACTS, TASK_OWNERS } from '../../shared/follow-up/task-template.js';
import { projectRoot } from '../../src/server/platform/project-root.js';
import { HOUSE_RULES, PERIODS, TEMPLATES } from './situations.js';

type Json = Record<string, unknown>;
const read = (file: string): Json =>
  JSON.parse(readFileSync(join(projectRoot(), 'forms', 'follow-up', file), 'utf8')) as Json;
const validator = (name: string) => new Ajv2020({ strict: false }).compile(read(`${name}.schema.json`));

describe.each(['tasks', 'claims-clocks', 'house-rules'])('forms/follow-up/%s.json', (name) => {
  it('keeps to its schema', () => {
    const validate = validator(name);
    expect([validate(read(`${name}.json`)), validate.errors]).toEqual([true, null]);
  });
});

describe('the schema of tasks', () => {
  const [first] = TEMPLATES;
  const accepts = (different: Json): boolean => validator('tasks')({ tasks: [{ ...first, ...different }] });

  it.each<[string, Json]>([
    ['an unknown fact', { when: [{ fact: 'weather', is: ['true'] }] }],
    ['no value for a fact', { when: [{ fact: 'serious', is: [] }] }],
    ['a due rule of a duty for the incident', { due: { rule: 'duty', plusHours: 0 } }],
    ['resting on a duty that it is not about', { restsOn: 'duty' }],
    ['a task for each notice that is due the same day', { for: 'notice' }],
    ['no source', { source: '' }],
    ['a member of no meaning', { colour: 'red' }],
  ])('refuses %s', (_, different) => {
    expect(accepts({})).toBe(true);
    expect(accepts(different)).toBe(false);
  });

  it('knows the same facts and owners as the planning', () => {
    const schema = JSON.stringify(read('tasks.schema.json'));
    expect(schema).toContain(`"enum":${JSON.stringify(TASK_FACTS)}`);
    expect(schema).toContain(`"enum":${JSON.stringify(TASK_OWNERS)}`);
  });
});

describe('the forms', () => {
  it('name each task, clock and rule once', () => {
    for (const list of [TEMPLATES, PERIODS, HOUSE_RULES]) {
      expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    }
  });

  it('say of every house rule that it has no source, and hold them all', () => {
    expect(new Set(HOUSE_RULES.map(({ source }) => source))).toEqual(new Set(['common practice, no source']));
    expect(HOUSE_RULES.map(({ id }) => id)).toEqual([...HOUSE_RULE_IDS]);
  });
});
