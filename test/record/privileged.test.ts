import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import type { Actor, PersonActor } from '../../src/server/accounts/accounts.api.js';
import { describeEngines } from '../support/databases.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');
const NOTE = 'Xylophone: thinks that the briefing was too short.';

describeEngines('notes for counsel', RECORD, (desk) => {
  const client = new Client(desk);
  const create = (actor: Actor, path: string, body: unknown) =>
    client.send(actor, 'POST', path, body, { 'idempotency-key': randomUUID() });
  let id: string;
  let requestPath: string;
  let counsel: PersonActor;
  let otherCounsel: PersonActor;

  beforeAll(async () => {
    counsel = await client.account('counsel', 'Cleo');
    otherCounsel = await client.account('counsel', 'Otto');
    id = await client.opened(staff);
    const asked = { counsel: 'Cleo Law', counselAccount: counsel.accountId, requestedOn: '2026-06-15' };
    const request = await create(manager, `/${id}/counsel-requests`, asked);
    requestPath = `/${id}/counsel-requests/${String(request.body['id'])}/entries`;
  });

  it('are written under a request of counsel by name and day, and read by that counsel alone', async () => {
    const written = await create(manager, requestPath, { words: NOTE });
    expect(written).toMatchObject({ status: 201 });
    expect(JSON.stringify(written.body)).not.toContain('Xylophone');
    expect((await client.get(counsel, `/${id}/privileged`)).body).toMatchObject([
      { counsel: 'Cleo Law', requestedOn: '2026-06-15', entries: [{ writtenBy: 'Max', words: NOTE }] },
    ]);
    for (const [actor, status] of [
      [otherCounsel, 404],
      [manager, 403],
      [staff, 403],
      [DOCK_PHONE, 403],
    ] as const) {
      expect((await client.get(actor, `/${id}/privileged`)).status).toBe(status);
    }
  });

  it('are made by no staff, under no other request, and with no card number in them', async () => {
    expect((await create(staff, requestPath, { words: NOTE })).status).toBe(403);
    expect((await create(DOCK_PHONE, requestPath, { words: NOTE })).status).toBe(403);
    const nowhere = `/${id}/counsel-requests/${randomUUID()}/entries`;
    expect((await create(manager, nowhere, { words: NOTE })).status).toBe(404);
    expect((await create(manager, requestPath, { words: '4111 1111 1111 1111' })).status).toBe(422);
    const undated = { counsel: 'Cleo Law' };
    expect((await create(manager, `/${id}/counsel-requests`, undated)).status).toBe(422);
  });

  it('are in no list, search, record, amendment or determination', async () => {
    const places = [
      '?q=xylophone',
      '',
      `/${id}`,
      `/${id}/record`,
      `/${id}/amendments`,
      `/${id}/determination`,
    ];
    for (const place of places) {
      const { status, body } = await client.get(manager, place);
      expect([place, status, JSON.stringify(body).includes('Xylophone')]).toEqual([place, 200, false]);
    }
    expect((await client.get(manager, '?q=xylophone')).body['items']).toEqual([]);
  });

  it('let counsel read the incidents that were assigned to it, find no other, and change nothing', async () => {
    const other = await client.opened(staff);
    expect((await client.get(counsel, '')).body['items']).toMatchObject([{ id }]);
    expect((await client.get(counsel, `/${id}/record`)).status).toBe(200);
    expect((await client.get(counsel, `/${other}/record`)).status).toBe(404);
    expect((await client.open(counsel, {})).status).toBe(403);
    const document = { people: [] };
    expect((await client.write(counsel, `/${id}/sections/people`, { document }, 0)).status).toBe(403);
  });

  it.each<[what: string, change: string, undo: string, code: string]>([
    [
      'a note that was changed',
      `UPDATE privileged_entry SET words = REPLACE(words, 'short', 'long')`,
      `UPDATE privileged_entry SET words = REPLACE(words, 'long', 'short')`,
      'privileged-changed',
    ],
    [
      'a note under another name',
      `UPDATE privileged_entry SET written_by = 'Ann'`,
      `UPDATE privileged_entry SET written_by = 'Max'`,
      'privileged-changed',
    ],
    [
      'a request of another day',
      `UPDATE counsel_request SET requested_on = '2026-06-16'`,
      `UPDATE counsel_request SET requested_on = '2026-06-15'`,
      'privileged-changed',
    ],
    [
      'a note that is in no log',
      `INSERT INTO privileged_entry SELECT 'x', request_id, written_by, written_at, words, salt FROM privileged_entry`,
      `DELETE FROM privileged_entry WHERE id = 'x'`,
      'privileged-unexplained',
    ],
    [
      'a note that is gone',
      'CREATE TABLE kept AS SELECT * FROM privileged_entry; DELETE FROM privileged_entry',
      'INSERT INTO privileged_entry SELECT * FROM kept; DROP TABLE kept',
      'privileged-missing',
    ],
  ])(
    'are committed to by the log, so that a check names %s without its words',
    async (_what, change, undo, code) => {
      expect(await client.check()).toEqual([]);
      for (const statement of change.split('; ')) await desk.plainSql(statement);
      const faults = await client.check();
      for (const statement of undo.split('; ')) await desk.plainSql(statement);
      expect(faults.map((fault) => fault.code)).toEqual([code]);
      expect(faults[0]?.text).toMatch(/of \d{4}-\d{4} is /);
      expect(JSON.stringify(faults)).not.toContain('Xylophone');
      expect(await client.check()).toEqual([]);
    },
  );
});
