import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';
import { NOTES } from './notes.js';

describeEngines('the schema', NOTES, (desk) => {
  it('is what the rows declare', async () => {
    expect(await schemaDrift(desk.target, NOTES.rows)).toEqual([]);
  });
});
