import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, HOUR } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

interface NotBack {
  id: string;
  version: number;
  timeZone: string;
  openedAt: string;
  ended: string | null;
  endedBy: string | null;
  proposesIncident: string | null;
  incidentId: string | null;
  outing: { details: { phone?: string } } | null;
  ladder: { rung: string; by: string; until: string | null; climbed: { id: string }[] }[];
  climbed: { id: string; rung: string }[];
}

const stampOf = (rung: string, at: string) => ({ rung, stamp: { at, how: 'pressed' } });

describeHouse('craft that are not back', (house) => {
  let staff: Browser;
  let manager: Browser;
  let device: Browser;

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
    device = (await house().device(await house().signedIn('administrator'))).browser;
    const station = { name: 'North dock', timeZone: 'America/Chicago', position: '33.818, -96.571' };
    const { id: stationId } = bodyOf<{ id: string }>(
      await create(manager, '/api/stations', station).expect(201),
    );
    for (const unitName of ['PWC 7', 'PWC 8', 'PWC 9']) {
      const craft = { unitName, type: 'personal-watercraft', colours: ['red'], stationId };
      await create(manager, '/api/craft', craft).expect(201);
    }
    const dueBackAt = new Date(Date.parse(house().now()) + HOUR).toISOString();
    const renter = { renter: 'Dana Whitlock', phone: '580-555-0142', aboard: 2 };
    for (const unit of ['PWC 7', 'PWC 8']) {
      await create(staff, '/api/outings', { unit, dueBackAt, ...renter }).expect(201);
    }
    house().letPass(2 * HOUR);
  });

  const open = async (browser: Browser, unit: string): Promise<NotBack> =>
    bodyOf(await create(browser, '/api/not-back', { unit }).expect(201));
  const read = async (id: string): Promise<NotBack> =>
    bodyOf(await staff.get(`/api/not-back/${id}`).expect(200));
  const listed = async (): Promise<string[]> =>
    bodyOf<{ items: { unit: string }[] }>(await staff.get('/api/not-back').expect(200)).items.map(
      ({ unit }) => unit,
    );

  it('shows search sheet and ladder on the clock of the station, and times can be undone', async () => {
    const opened = await open(staff, 'PWC 7');
    expect(opened.timeZone).toBe('America/Chicago');
    expect(opened.openedAt).toMatch(/-0[56]:00$/);
    expect(opened.outing?.details.phone).toBe('580-555-0142');
    expect(opened.ladder.map(({ rung }) => rung)).toEqual([
      'call-renter',
      'search',
      'sheriff',
      'coast-guard',
    ]);
    const second = await create(staff, '/api/not-back', { unit: 'PWC 7' }).expect(409);
    expect(bodyOf<{ current: NotBack }>(second).current.id).toBe(opened.id);
    const at = `/api/not-back/${opened.id}`;
    const once = stampOf('sheriff', house().now());
    await create(staff, `${at}/stamps`, once, 'key-of-a-stamp-0001').expect(200);
    const stamped = bodyOf<NotBack>(
      await create(staff, `${at}/stamps`, once, 'key-of-a-stamp-0001').expect(200),
    );
    expect(stamped.climbed.map(({ rung }) => rung)).toEqual(['sheriff']);
    const stamp = String(stamped.climbed[0]?.id);
    const undone = await create(staff, `${at}/stamps/${stamp}/undoing`, { why: 'Slipped.' }).expect(200);
    expect(bodyOf<NotBack>(undone).climbed).toEqual([]);
    const kept = { lastSeenWhere: 'Off the north point' };
    const { version } = bodyOf<NotBack>(undone);
    await staff.put(`${at}/sheet`).set('If-Match', `"${version}"`).send(kept).expect(200);
    await staff.put(`${at}/sheet`).set('If-Match', `"${version}"`).send(kept).expect(412);
    const { events } = bodyOf<{ events: { kind: string }[] }>(await staff.get(at).expect(200));
    expect(events.map(({ kind }) => kind)).toEqual(['opened', 'stamped', 'stamp-undone', 'sheet']);
  });

  it('lets a device begin and stamp, tells it no name and no number, and leaves the ending to a person', async () => {
    const begun = await create(device, '/api/not-back', { unit: 'PWC 8' }).expect(201);
    const { id } = bodyOf<NotBack>(begun);
    const stamped = await create(
      device,
      `/api/not-back/${id}/stamps`,
      stampOf('search', house().now()),
    ).expect(200);
    for (const { body } of [begun, stamped]) expect(JSON.stringify(body)).not.toMatch(/Dana|0142/);
    await device.get(`/api/not-back/${id}`).expect(401);
    await create(device, `/api/not-back/${id}/ending`, { ended: 'late' }).expect(401);
  });

  it('ends as late by a person with name and time, marks the craft back, and can be undone', async () => {
    const items = bodyOf<{ items: (NotBack & { unit: string })[] }>(await staff.get('/api/not-back')).items;
    const { id } = items.find(({ unit }) => unit === 'PWC 8') ?? { id: '' };
    const at = `/api/not-back/${id}`;
    await create(staff, `${at}/ending`, { ended: 'became-incident' }).expect(422);
    const ended = bodyOf<NotBack>(await create(staff, `${at}/ending`, { ended: 'late' }).expect(200));
    expect(ended).toMatchObject({ ended: 'late', proposesIncident: null });
    expect(ended.endedBy).toMatch(/^The staff/);
    await create(staff, `${at}/ending`, { ended: 'aground' }).expect(409);
    expect(await listed()).toEqual(['PWC 7']);
    await create(staff, `${at}/ending/undoing`, { why: 'Another craft.' }).expect(200);
    expect(await listed()).toEqual(['PWC 7', 'PWC 8']);
  });

  it('keeps aground, stolen and found empty in sight until somebody answers whether it is an incident', async () => {
    const id = randomUUID();
    expect(bodyOf(await create(staff, '/api/not-back', { id, unit: 'PWC 9' }).expect(201))).toMatchObject({
      id,
    });
    const at = `/api/not-back/${id}`;
    const ended = bodyOf<NotBack>(await create(staff, `${at}/ending`, { ended: 'aground' }).expect(200));
    expect(ended.proposesIncident).not.toBeNull();
    expect(await listed()).toContain('PWC 9');
    await create(staff, `${at}/not-incident`, { why: 'Beached to swim.' }).expect(403);
    await create(manager, `${at}/not-incident`, { why: 'Beached to swim.' }).expect(200);
    expect(await listed()).not.toContain('PWC 9');
    expect((await read(id)).proposesIncident).toBeNull();
  });

  it('becomes one incident with what is known, tied both ways', async () => {
    const items = bodyOf<{ items: (NotBack & { unit: string })[] }>(await staff.get('/api/not-back')).items;
    const { id } = items.find(({ unit }) => unit === 'PWC 7') ?? { id: '' };
    const at = `/api/not-back/${id}`;
    const first = bodyOf<NotBack>(await create(staff, `${at}/incident`, {}).expect(200));
    const second = bodyOf<NotBack>(await create(device, `${at}/incident`, {}).expect(200));
    expect(second.incidentId).toBe(first.incidentId);
    expect(await read(id)).toMatchObject({ ended: 'became-incident', incidentId: first.incidentId });
    const incidents = bodyOf<{ items: object[] }>(await staff.get('/api/incidents').expect(200)).items;
    expect(incidents).toHaveLength(1);
    const record = await staff.get(`/api/incidents/${first.incidentId}/record`).expect(200);
    const { sections } = bodyOf<{ sections: { section: string; document: object }[] }>(record);
    const documents = Object.fromEntries(sections.map(({ section, document }) => [section, document]));
    expect(documents).toMatchObject({
      call: { kind: 'overdue', overdue: { lastSeenWhere: { value: 'Off the north point' } } },
      craft: { craft: [{ name: 'PWC 7', colours: 'red', aboard: { value: 2 } }] },
      people: {
        everyoneAccountedFor: { value: 'unknown' },
        people: [{ name: 'Dana Whitlock', outcome: { value: 'not-back' } }],
      },
    });
    const link = await staff.get(`/api/incidents/${first.incidentId}/not-back`).expect(200);
    expect(link.body).toMatchObject({ items: [{ id }] });
    await create(staff, `${at}/ending/undoing`, { why: 'No.' }).expect(409);
  });
});
