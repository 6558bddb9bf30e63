import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { EvidenceSettings } from '../../src/server/evidence/evidence-settings.js';
import { type Browser, describeHouse } from '../accounts/house.js';
import { type Answer, bodyOf, evidenceOf, openIncident, upload, writeSection } from './evidence-desk.js';
import { sample } from './samples.js';

const PHOTO = sample('photo-with-position.jpg');
const REASON = { reason: 'A photograph of another family' };
const DIRECTION = { counsel: 'Lee Park', directedOn: '2026-06-20' };

describeHouse('a wrong file', (house) => {
  let staff: Browser;
  let manager: Browser;
  let incident: string;
  beforeAll(async () => {
    staff = await house().signedIn('staff');
    manager = await house().signedIn('manager');
    incident = await openIncident(staff);
  });

  /** Names of all that is kept of a file, wherever it is kept. */
  const keptOf = (id: string): string[] => {
    const { folder } = house().app.get(EvidenceSettings);
    if (!existsSync(folder)) return [];
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.includes(id));
  };
  const withdraw = (browser: Browser, file: Answer, body: object, of = incident) =>
    browser.post(`${evidenceOf(of)}/${file.id}/withdrawal`).send(body);

  it('is withdrawn: its content goes, its hash and the reason stay', async () => {
    const sent = { name: 'Lake.jpg', about: { caption: 'Somebody else' } };
    const file = await upload(staff, incident, PHOTO, sent);
    const twin = await upload(staff, incident, PHOTO);
    const path = `${evidenceOf(incident)}/${file.id}`;
    await staff.get(`${path}/previews/320`).expect(200);
    expect(keptOf(file.id)).toHaveLength(3);
    await withdraw(manager, file, REASON).expect(200);
    expect(keptOf(file.id)).toEqual([]);
    const view = bodyOf(await staff.get(path).expect(200));
    expect(view).toMatchObject({
      version: 2,
      sha256: createHash('sha256').update(PHOTO).digest('hex'),
      size: PHOTO.length,
      about: {},
      previews: [],
      questions: [],
      withdrawn: { ...REASON, by: expect.stringContaining('manager') as string },
    });
    expect([view['name'], view['captured']]).toEqual([undefined, undefined]);
    for (const part of ['original', 'previews/320']) await staff.get(`${path}/${part}`).expect(404);
    await withdraw(manager, file, REASON).expect(409);
    // The same photograph, sent a second time and rightly, is another file.
    await staff.get(`${evidenceOf(incident)}/${twin.id}/original`).expect(200);
  });

  it.each<[string, object, string]>([
    ['without a reason', {}, '/reason'],
    ['by counsel without a day', { ...REASON, counsel: 'Lee Park' }, '/directedOn'],
    ['on a day without counsel', { ...REASON, directedOn: '2026-06-20' }, '/counsel'],
  ])('is not withdrawn %s', async (_how, body, pointer) => {
    const file = await upload(staff, incident, Buffer.from('A note'));
    const answer = await withdraw(manager, file, body).expect(422);
    expect(answer.body).toMatchObject({ errors: [{ pointer }] });
    expect(keptOf(file.id)).toHaveLength(1);
  });

  it('is withdrawn by no member of staff', async () => {
    const file = await upload(staff, incident, Buffer.from('A note'));
    await withdraw(staff, file, REASON).expect(403);
  });

  describe('of an incident that is held', () => {
    it('goes on the direction of counsel alone, which is noted with the holds', async () => {
      const held = await openIncident(staff);
      const file = await upload(staff, held, PHOTO);
      await writeSection(staff, held, 'people', {
        people: [{ id: 'p1', outcome: { value: 'died', known: 'told' } }],
      });
      const refused = await withdraw(manager, file, REASON, held).expect(409);
      expect(refused.body).toMatchObject({ errors: [{ pointer: '/counsel' }] });
      expect(keptOf(file.id).length).toBeGreaterThan(0);
      await withdraw(manager, file, { ...REASON, ...DIRECTION }, held).expect(200);
      expect(keptOf(file.id)).toEqual([]);
      const { body } = (await manager.get(`/api/incidents/${held}/holds`).expect(200)) as { body: unknown };
      expect(JSON.stringify(body)).toContain(`"path":"/files/${file.id}"`);
      const view = bodyOf(await manager.get(`${evidenceOf(held)}/${file.id}`));
      expect(view).toMatchObject({ withdrawn: DIRECTION });
    });
  });

  it('is kept, until then, under its own hash', async () => {
    const file = await upload(staff, incident, PHOTO);
    const { folder } = house().app.get(EvidenceSettings);
    const [kept = ''] = keptOf(file.id).filter((name) => name.startsWith('files'));
    expect(kept).toBe(
      join('files', String(file['sha256']).slice(0, 2), `${String(file['sha256'])}.${file.id}`),
    );
    expect(readFileSync(join(folder, kept)).equals(PHOTO)).toBe(true);
  });
});
