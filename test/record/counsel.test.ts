import { beforeAll, expect, it } from 'vitest';
import type { PersonActor } from '../../src/server/accounts/accounts.api.js';
import { describeEngines } from '../support/databases.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');

describeEngines('counsel of an incident', RECORD, (desk) => {
  const client = new Client(desk);
  let counsel: PersonActor;
  let clerk: PersonActor;
  let id: string;

  const assign = (account: string, actor = manager) =>
    client.send(actor, 'POST', `/${id}/counsel`, { account });
  const unassign = (account: string, actor = manager) =>
    client.send(actor, 'DELETE', `/${id}/counsel/${account}`);

  beforeAll(async () => {
    counsel = await client.account('counsel', 'Cleo');
    clerk = await client.account('staff', 'Stan');
    id = await client.opened(staff);
  });

  it('is assigned by a manager, an account of counsel and no other, and reads from then on', async () => {
    expect((await client.get(counsel, `/${id}/record`)).status).toBe(404);
    expect((await assign(counsel.accountId, staff)).status).toBe(403);
    for (const account of [clerk.accountId, 'nobody', '']) {
      expect(await assign(account)).toMatchObject({
        status: 422,
        body: { errors: [{ pointer: '/account' }] },
      });
    }
    expect(await assign(counsel.accountId)).toMatchObject({
      status: 200,
      body: { items: [{ account: counsel.accountId, name: 'Cleo', assignedBy: 'Max' }] },
    });
    expect((await assign(counsel.accountId)).body['items']).toHaveLength(1);
    expect((await client.get(counsel, `/${id}/record`)).status).toBe(200);
    expect((await client.get(counsel, `/${id}/privileged`)).status).toBe(200);
    expect((await client.get(counsel, '')).body['items']).toMatchObject([{ id }]);
    expect((await client.get(counsel, `/${id}/counsel`)).status).toBe(200);
    expect((await client.get(DOCK_PHONE, `/${id}/counsel`)).status).toBe(403);
  });

  it('reads no more once that has ended, and stays listed; it may begin anew', async () => {
    expect((await unassign(counsel.accountId, counsel)).status).toBe(403);
    expect((await unassign(counsel.accountId)).status).toBe(204);
    expect((await unassign(counsel.accountId)).status).toBe(404);
    expect((await client.get(counsel, `/${id}/record`)).status).toBe(404);
    expect((await client.get(counsel, '')).body['items']).toEqual([]);
    await assign(counsel.accountId);
    expect((await client.get(manager, `/${id}/counsel`)).body['items']).toMatchObject([
      { account: counsel.accountId, endedBy: 'Max' },
      { account: counsel.accountId, assignedBy: 'Max' },
    ]);
    expect((await client.get(counsel, `/${id}/record`)).status).toBe(200);
  });

  it('given with a request of counsel is checked alike', async () => {
    const other = await client.opened(staff);
    const request = (counselAccount: string, key: string) =>
      client.send(
        manager,
        'POST',
        `/${other}/counsel-requests`,
        { counsel: 'Cleo Law', counselAccount, requestedOn: '2026-06-15' },
        { 'idempotency-key': key },
      );
    expect(await request(clerk.accountId, 'request-of-counsel-1')).toMatchObject({
      status: 422,
      body: { errors: [{ pointer: '/counselAccount' }] },
    });
    expect((await client.get(manager, `/${other}/counsel-requests`)).body).toEqual([]);
    expect((await request(counsel.accountId, 'request-of-counsel-2')).status).toBe(201);
    expect((await request(counsel.accountId, 'request-of-counsel-2')).status).toBe(201);
    expect((await client.get(counsel, `/${other}/counsel-requests`)).body).toHaveLength(1);
  });

  it('that somebody put in with plain SQL is named by a check', async () => {
    expect(await client.check()).toEqual([]);
    const clerkId = clerk.accountId;
    await desk.plainSql(
      `INSERT INTO counsel_assignment (incident_id, account_id) VALUES ('${id}', '${clerkId}')`,
    );
    const faults = await client.check();
    expect(faults).toMatchObject([
      { code: 'assignment-changed', text: expect.stringMatching(clerkId) as string },
    ]);
    await desk.plainSql(`DELETE FROM counsel_assignment WHERE account_id = '${clerkId}'`);
    expect(await client.check()).toEqual([]);
  });
});
