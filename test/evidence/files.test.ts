import exifr from 'exifr';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import type { EvidenceList } from '../../src/server/evidence/files.service.js';
import { type Browser, change, describeHouse } from '../accounts/house.js';
import {
  assignedCounsel,
  bodyOf,
  evidenceOf,
  openIncident,
  startUpload,
  upload,
  writeSection,
} from './evidence-desk.js';
import { sample } from './samples.js';

const PHOTO = sample('photo-with-position.jpg');

describeHouse('a file of evidence', (house) => {
  let staff: Browser;
  let manager: Browser;
  let incident: string;
  beforeAll(async () => {
    staff = await house().signedIn('staff');
    manager = await house().signedIn('manager');
    incident = await openIncident(staff);
  });

  it('is what it is by its content, with what its camera wrote and what that leaves open', async () => {
    const about = { caption: 'Bow of PWC 7', takenBy: 'Ana', craft: ['c1'] };
    const { id } = await upload(staff, incident, PHOTO, { name: 'a.png', type: 'image/png', about });
    await writeSection(staff, incident, 'time-and-place', {
      occurred: { value: { at: '2026-06-13T15:10:00-05:00', precision: 'to-the-minute' }, known: 'saw' },
      position: { value: { latitude: 34.5, longitude: -98.1 }, known: 'read-off' },
    });
    const answer = await staff.get(`${evidenceOf(incident)}/${id}`).expect(200);
    expect(answer.headers['etag']).toBe('"1"');
    expect(answer.body).toMatchObject({
      kind: 'photo',
      type: 'image/jpeg',
      declaredType: 'image/png',
      about,
      captured: { local: '2026-06-13T14:02:00' },
      questions: [{ code: 'taken-before' }, { code: 'taken-elsewhere' }, { code: 'other-type' }],
      previews: [1600, 320],
    });
    // The record itself says what it said.
    const section = await staff.get(`/api/incidents/${incident}/sections/time-and-place`);
    expect(section.body).toMatchObject({ version: 1 });
  });

  it('is downloaded as it came, and never shown as a page', async () => {
    const { id } = await upload(staff, incident, PHOTO, { name: 'Boot "kaputt" 🚤.jpg' });
    const answer = await staff
      .get(`${evidenceOf(incident)}/${id}/original`)
      .buffer(true)
      .expect(200);
    expect((answer.body as Buffer).equals(PHOTO)).toBe(true);
    expect(answer.headers).toMatchObject({
      'content-type': 'image/jpeg',
      'content-length': String(PHOTO.length),
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'; sandbox",
      'content-disposition':
        'attachment; filename="Boot _kaputt_ _.jpg"; ' +
        "filename*=UTF-8''Boot%20%22kaputt%22%20%F0%9F%9A%A4.jpg",
    });
  });

  describe('has previews', () => {
    it('that are upright, small, and say nothing of place, time or camera', async () => {
      const { id } = await upload(staff, incident, PHOTO);
      const answer = await staff
        .get(`${evidenceOf(incident)}/${id}/previews/320`)
        .buffer(true)
        .expect(200);
      const preview = answer.body as Buffer;
      const { format, width, height, exif, xmp, iptc, icc } = await sharp(preview).metadata();
      // The sample is 480 by 320 and was held upright, so 320 by 480; the longer edge becomes 320.
      expect({ format, width, height }).toEqual({ format: 'webp', width: 213, height: 320 });
      expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
      expect(await exifr.gps(PHOTO)).toBeDefined();
      for (const planted of ['Planted', 'Invented', '2026:06:13', 'Exif']) {
        expect(PHOTO.includes(planted)).toBe(true);
        expect(preview.includes(planted)).toBe(false);
      }
      const large = await staff
        .get(`${evidenceOf(incident)}/${id}/previews/1600`)
        .buffer(true)
        .expect(200);
      expect(await sharp(large.body as Buffer).metadata()).toMatchObject({ width: 320, height: 480 });
    });

    it.each([
      ['another size', PHOTO, '640'],
      ['a paper', Buffer.from('Wind 12 kt'), '320'],
      ['a picture that is broken', PHOTO.subarray(0, 700), '320'],
    ])('but none of %s', async (_what, bytes, edge) => {
      const { id } = await upload(staff, incident, bytes);
      const answer = await staff.get(`${evidenceOf(incident)}/${id}/previews/${edge}`);
      expect(answer.status).toBe(404);
    });
  });

  describe('is described', () => {
    it('on the version that was seen, with a reason', async () => {
      const { id } = await upload(staff, incident, Buffer.from('A note'));
      const path = `${evidenceOf(incident)}/${id}`;
      const words = { about: { caption: 'The check-out sheet', people: [] }, reason: 'Said what it is' };
      const changed = await change(staff, path, 1, words).expect(200);
      expect(changed.body).toMatchObject({ version: 2, about: words.about });
      const stale = await change(staff, path, 1, { ...words, about: {} }).expect(412);
      expect(stale.body).toMatchObject({ current: { version: 2 }, yours: { about: {} } });
      await staff.patch(path).send(words).expect(428);
      await change(staff, path, 2, { about: {} }).expect(422);
      await change(staff, path, 2, { ...words, about: { caption: 5 } }).expect(422);
    });
  });

  describe('may be for few', () => {
    let death: string;
    let counsel: Browser;
    const ids: Record<string, string> = {};
    beforeAll(async () => {
      death = await openIncident(staff);
      await writeSection(staff, death, 'people', {
        people: [
          { id: 'p1', name: 'Jo', outcome: { value: 'died', known: 'told' } },
          { id: 'p2', name: 'Al', outcome: { value: 'unhurt', known: 'saw' } },
        ],
      });
      const send = (about: object) => upload(staff, death, PHOTO, { about });
      ids['unsaid'] = (await send({})).id;
      ids['dead'] = (await send({ people: ['p1'] })).id;
      ids['other'] = (await send({ people: ['p2'] })).id;
      ids['statement'] = (
        await upload(staff, death, Buffer.from('I saw it'), { about: { statement: 's1' } })
      ).id;
      counsel = await assignedCounsel(house(), manager, death);
    });

    const seen = async (browser: Browser): Promise<{ ids: string[]; restricted: number }> => {
      const { files, restricted } = bodyOf<EvidenceList>(await browser.get(evidenceOf(death)).expect(200));
      return { ids: files.map(({ id }) => id), restricted };
    };

    it('and is then not there for others, in no list and at no address', async () => {
      expect(await seen(staff)).toEqual({ ids: [ids['other']], restricted: 3 });
      for (const what of ['unsaid', 'dead', 'statement']) {
        for (const part of ['', '/original', '/previews/320']) {
          await staff.get(`${evidenceOf(death)}/${ids[what]}${part}`).expect(404);
        }
        const words = { about: { people: [] }, reason: 'x' };
        await change(staff, `${evidenceOf(death)}/${ids[what]}`, 1, words).expect(404);
      }
    });

    it('who are managers, administrators and the counsel of the incident', async () => {
      for (const browser of [manager, await house().signedIn('administrator'), counsel]) {
        expect((await seen(browser)).ids).toHaveLength(4);
        await browser.get(`${evidenceOf(death)}/${ids['dead']}/original`).expect(200);
      }
    });

    it('until a manager opens it; staff restricts and never opens', async () => {
      const path = `${evidenceOf(death)}/${ids['other']}`;
      const words = (restricted: boolean) => ({ about: { people: ['p2'], restricted }, reason: 'Asked for' });
      await change(staff, path, 1, words(false)).expect(403);
      await change(staff, path, 1, words(true)).expect(200);
      expect((await seen(staff)).ids).toEqual([]);
      await change(manager, path, 2, words(false)).expect(200);
      expect((await seen(staff)).ids).toEqual([ids['other']]);
      const open = { size: 1, about: { restricted: false } };
      await staff
        .post(`${evidenceOf(death)}/uploads`)
        .set('idempotency-key', path)
        .send(open)
        .expect(403);
    });
  });

  it('of an incident that is not theirs is nowhere for counsel', async () => {
    const { id } = await upload(staff, incident, PHOTO);
    const counsel = await assignedCounsel(house(), manager, await openIncident(staff));
    const arriving = await startUpload(staff, incident, 5);
    for (const path of ['', `/${id}`, `/${id}/original`, `/${id}/previews/320`, `/uploads/${arriving}`]) {
      await counsel.get(`${evidenceOf(incident)}${path}`).expect(404);
    }
    for (const list of ['custody', 'outside-evidence']) {
      await counsel.get(`/api/incidents/${incident}/${list}`).expect(404);
    }
  });

  it('is handed out with the type of its content, whatever a device called it', async () => {
    const { id } = await upload(staff, incident, Buffer.from('plain words'), { type: 'text/html' });
    const answer = await staff.get(`${evidenceOf(incident)}/${id}/original`).expect(200);
    expect(answer.headers['content-type']).toMatch(/^text\/plain/);
    const view = bodyOf(await staff.get(`${evidenceOf(incident)}/${id}`));
    expect(view).toMatchObject({ questions: [{ code: 'other-type' }] });
  });
});
