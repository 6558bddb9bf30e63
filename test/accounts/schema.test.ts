import { expect, it } from 'vitest';
import { ACCOUNT_ROWS } from '../../src/server/accounts/database/account-rows.js';
import { describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';

describeEngines('the tables of accounts', { rows: ACCOUNT_ROWS }, (desk) => {
  it('are what the rows declare', async () => {
    expect(await schemaDrift(desk.target, ACCOUNT_ROWS)).toEqual([]);
  });
});
