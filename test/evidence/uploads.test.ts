import { randomBytes, randomUUID } from 'node:crypto';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { EvidenceSettings } from '../../src/server/evidence/evidence-settings.js';
import { NAME_WITHHELD } from '../../src/server/evidence/name-to-keep.js';
import { IncomingFiles, NoRoomError } from '../../src/server/platform/storage/incoming-files.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import {
  type Answer,
  bodyOf,
  evidenceOf,
  finish,
  openIncident,
  sendPiece,
  sha256,
  startUpload,
  upload,
} from './evidence-desk.js';
import { sample } from './samples.js';

const MIB = 1024 * 1024;
/** A document of text, as long as a test needs it. */
const text = (bytes: number): Buffer => Buffer.from(randomBytes(bytes).toString('hex').slice(0, bytes));

describeHouse('a file on its way in', (house) => {
  let staff: Browser;
  let manager: Browser;
  let device: Browser;
  let incident: string;
  beforeAll(async () => {
    staff = await house().signedIn('staff');
    manager = await house().signedIn('manager');
    device = (await house().device(await house().signedIn('administrator'))).browser;
    incident = await openIncident(staff);
  });

  const leftovers = (): string[] => {
    const folder = join(house().app.get(EvidenceSettings).folder, 'incoming');
    return existsSync(folder) ? readdirSync(folder) : [];
  };

  it('arrives in pieces, and is the same byte for byte', async () => {
    const bytes = text(3 * MIB);
    const id = await startUpload(staff, incident, bytes.length, { name: 'log.txt', sha256: sha256(bytes) });
    for (const [from, to] of [
      [0, MIB],
      [MIB, 2 * MIB + 17],
      [2 * MIB + 17, 3 * MIB],
    ] as const) {
      const answer = await sendPiece(staff, incident, id, from, bytes.subarray(from, to)).expect(204);
      expect(answer.headers['upload-offset']).toBe(String(to));
    }
    const made = await finish(staff, incident, id).expect(201);
    expect(made.headers).toMatchObject({ etag: '"1"', location: `${evidenceOf(incident)}/${id}` });
    expect((await finish(staff, incident, id).expect(201)).body).toEqual(made.body);
    const original = await staff.get(`${evidenceOf(incident)}/${id}/original`).buffer(true);
    expect(sha256(Buffer.from(original.text))).toBe(sha256(bytes));
    expect(leftovers()).not.toContain(id);
    await sendPiece(staff, incident, id, bytes.length, Buffer.from('more')).expect(409);
  });

  it('is asked for its offset by GET, by HEAD and by a wrong piece', async () => {
    const id = await startUpload(staff, incident, 100);
    await sendPiece(staff, incident, id, 0, text(40)).expect(204);
    const path = `${evidenceOf(incident)}/uploads/${id}`;
    expect((await staff.get(path).expect(200)).body).toMatchObject({ offset: 40, size: 100 });
    expect((await staff.head(path).expect(200)).headers['upload-offset']).toBe('40');
    for (const offset of [0, 39, 41]) {
      const answer = await sendPiece(staff, incident, id, offset, text(1)).expect(409);
      expect(answer.headers['upload-offset']).toBe('40');
      expect(answer.body).toMatchObject({ current: { offset: 40 } });
    }
    const early = await finish(staff, incident, id).expect(409);
    expect(early.body).toMatchObject({ current: { offset: 40 } });
  });

  it('comes from a device, which adds and reads nothing', async () => {
    const bytes = sample('photo-with-position.jpg');
    const { id } = await upload(device, incident, bytes, { name: 'a.jpg' });
    for (const path of ['', `/${id}`, `/${id}/original`, `/${id}/previews/320`, `/uploads/${id}`]) {
      await device.get(`${evidenceOf(incident)}${path}`).expect(401);
    }
    const body = bodyOf(await staff.get(`${evidenceOf(incident)}/${id}`).expect(200));
    expect(body).toMatchObject({ receivedFrom: 'not named, Dock phone' });
    const other = await startUpload(device, incident, 10);
    await sendPiece(device, incident, other, 0, text(4)).expect(204);
    // What it forgot it learns from an empty piece.
    const answer = await sendPiece(device, incident, other, 0, Buffer.alloc(0)).expect(409);
    expect(answer.headers['upload-offset']).toBe('4');
    await device.delete(`${evidenceOf(incident)}/uploads/${other}`).expect(401);
  });

  it('is announced once, however often that is sent', async () => {
    const key = randomUUID();
    const announce = (size: number) => create(staff, `${evidenceOf(incident)}/uploads`, { size }, key);
    const answers = await Promise.all([announce(10), announce(10), announce(10)]);
    expect(new Set(answers.map((answer) => bodyOf(answer).id)).size).toBe(1);
    await announce(11).expect(422);
  });

  it.each<[string, object, string]>([
    ['no size', {}, '/size'],
    ['a size of nothing', { size: 0 }, '/size'],
    ['more than a photograph has', { size: 30 * MIB + 1, type: 'image/jpeg' }, '/size'],
    ['more than anything has', { size: 2048 * MIB + 1 }, '/size'],
    ['a name of two lines', { size: 1, name: 'a\nb' }, '/name'],
    ['a hash that is none', { size: 1, sha256: 'abc' }, '/sha256'],
    ['a member that there is not', { size: 1, colour: 'red' }, '/colour'],
    ['the same person twice', { size: 1, about: { people: ['p1', 'p1'] } }, '/about/people'],
    [
      'a card number in its caption',
      { size: 1, about: { caption: '4111 1111 1111 1111' } },
      '/about/caption',
    ],
  ])('is not announced with %s', async (_what, body, pointer) => {
    const answer = await create(staff, `${evidenceOf(incident)}/uploads`, body).expect(422);
    expect(answer.body).toMatchObject({ errors: [{ pointer }] });
  });

  it('of any size up to the limit of its kind is announced', async () => {
    await startUpload(staff, incident, 2048 * MIB, { type: 'video/mp4' });
    await startUpload(staff, incident, 30 * MIB, { type: 'image/jpeg' });
  });

  it('is never refused for a name like a card number, and the name is not kept', async () => {
    const { id } = await upload(staff, incident, text(20), { name: '4111111111111111.txt' });
    const body = bodyOf(await staff.get(`${evidenceOf(incident)}/${id}`));
    expect(body).toMatchObject({ name: NAME_WITHHELD });
  });

  describe('a piece', () => {
    it.each([
      ['without its offset', undefined, 400],
      ['with an offset that is none', '-1', 400],
      ['with an offset that is no number', '1e3', 400],
    ])('%s is refused', async (_what, offset, status) => {
      const id = await startUpload(staff, incident, 10);
      const request = staff.patch(`${evidenceOf(incident)}/uploads/${id}`);
      if (offset !== undefined) void request.set('upload-offset', offset);
      await request.set('content-type', 'application/offset+octet-stream').send(text(1)).expect(status);
    });

    it.each(['application/json', 'image/jpeg'])('as %s is refused', async (type) => {
      const id = await startUpload(staff, incident, 10);
      const path = `${evidenceOf(incident)}/uploads/${id}`;
      await staff.patch(path).set({ 'content-type': type, 'upload-offset': '0' }).send('{}').expect(415);
    });

    it('goes to no other route', async () => {
      const type = { 'content-type': 'application/offset+octet-stream', 'idempotency-key': randomUUID() };
      await staff.post('/api/incidents').set(type).send(text(4)).expect(415);
    });

    it('with more than was announced is cut off, and refused', async () => {
      const id = await startUpload(staff, incident, 10);
      const answer = await sendPiece(staff, incident, id, 0, text(11)).expect(422);
      expect(answer.body).toMatchObject({ current: { offset: 0 } });
      await sendPiece(staff, incident, id, 0, text(10)).expect(204);
    });

    it('longer than pieces are is refused, and goes on from where it was cut', async () => {
      const bytes = text(9 * MIB);
      const id = await startUpload(staff, incident, bytes.length);
      const answer = await sendPiece(staff, incident, id, 0, bytes).expect(413);
      const { offset } = bodyOf<{ current: { offset: number } }>(answer).current;
      expect(offset).toBeLessThanOrEqual(8 * MIB);
      await sendPiece(staff, incident, id, offset, bytes.subarray(offset)).expect(204);
      expect((await finish(staff, incident, id).expect(201)).body).toMatchObject({ sha256: sha256(bytes) });
    });

    it('to an upload of another incident is not found', async () => {
      const other = await openIncident(staff);
      const id = await startUpload(staff, other, 10);
      await sendPiece(staff, incident, id, 0, text(1)).expect(404);
      await finish(staff, incident, id).expect(404);
    });
  });

  it('with other bytes than the device read starts over', async () => {
    const bytes = text(100);
    const id = await startUpload(staff, incident, 100, { sha256: sha256(bytes) });
    await sendPiece(staff, incident, id, 0, text(100)).expect(204);
    const answer = await finish(staff, incident, id).expect(409);
    expect(answer.body).toMatchObject({ current: { offset: 0 } });
    await sendPiece(staff, incident, id, 0, bytes).expect(204);
    await finish(staff, incident, id).expect(201);
  });

  it.each([
    ['a page that poses as a photograph', 'page-posing-as-photo.jpg', 'web page'],
    ['a drawing with code', 'drawing.svg', 'web page'],
  ])('%s is refused, and nothing of it is kept', async (_what, name, words) => {
    const bytes = sample(name);
    const id = await startUpload(staff, incident, bytes.length, { name, type: 'image/jpeg' });
    await sendPiece(staff, incident, id, 0, bytes).expect(204);
    const answer = await finish(staff, incident, id).expect(422);
    expect(answer.body).toMatchObject({ errors: [{ detail: expect.stringContaining(words) as string }] });
    expect(leftovers()).not.toContain(id);
    const body = bodyOf(await staff.get(evidenceOf(incident)));
    expect(JSON.stringify(body)).not.toContain(id);
  });

  it('of a kind that is not taken is refused before the rest is sent', async () => {
    const id = await startUpload(staff, incident, 100 * MIB, { type: 'video/mp4' });
    const program = Buffer.concat([Buffer.from('MZ'), randomBytes(MIB)]);
    await sendPiece(staff, incident, id, 0, program).expect(422);
    await sendPiece(staff, incident, id, program.length, program).expect(404);
  });

  it('whose beginning says too little is judged by the whole', async () => {
    // An MP3 whose tag (ID3v2.3, a length of four times seven bits) is longer than what is looked at first.
    const tag = Buffer.concat([
      Buffer.from([0x49, 0x44, 0x33, 3, 0, 0, 0, 6, 0x0d, 0x20]),
      Buffer.alloc(100_000),
    ]);
    const frame = Buffer.from([0xff, 0xfb, 0x90, 0x44]);
    const bytes = Buffer.concat([tag, frame, Buffer.alloc(413), frame, Buffer.alloc(413)]);
    const id = await startUpload(staff, incident, bytes.length, { type: 'audio/mpeg' });
    await sendPiece(staff, incident, id, 0, bytes.subarray(0, 70_000)).expect(204);
    await sendPiece(staff, incident, id, 70_000, bytes.subarray(70_000)).expect(204);
    expect((await finish(staff, incident, id).expect(201)).body).toMatchObject({
      kind: 'audio',
      type: 'audio/mpeg',
    });
  });

  it('that is longer than its kind may be, whatever it was called, is refused', async () => {
    const id = await startUpload(staff, incident, 31 * MIB, { type: 'video/mp4' });
    const photo = Buffer.concat([sample('photo-with-position.jpg'), randomBytes(MIB)]);
    const answer = await sendPiece(staff, incident, id, 0, photo).expect(422);
    expect(JSON.stringify(answer.body)).toContain('this is a photo');
  });

  const fillDisk = () =>
    vi.spyOn(house().app.get(IncomingFiles), 'assertRoom').mockRejectedValue(new NoRoomError());

  it('waits while the disk is full, and loses nothing', async () => {
    const id = await startUpload(staff, incident, 10);
    const full = fillDisk();
    await sendPiece(staff, incident, id, 0, text(10)).expect(503);
    full.mockRestore();
    await sendPiece(staff, incident, id, 0, text(10)).expect(204);
    const again = fillDisk();
    await finish(staff, incident, id).expect(503);
    again.mockRestore();
    await finish(staff, incident, id).expect(201);
  });

  it('that nobody wants any more is dropped', async () => {
    const id = await startUpload(staff, incident, 10);
    await sendPiece(staff, incident, id, 0, text(5)).expect(204);
    await staff.delete(`${evidenceOf(incident)}/uploads/${id}`).expect(204);
    await staff.get(`${evidenceOf(incident)}/uploads/${id}`).expect(404);
    expect(leftovers()).not.toContain(id);
  });

  it('is one of twenty at once, and every one is there', async () => {
    const busy = await openIncident(staff);
    const files = Array.from({ length: 20 }, (_, index) => text(50_000 + index));
    const made = await Promise.all(
      files.map((bytes, index) => upload(index % 2 ? staff : device, busy, bytes)),
    );
    const answer = await manager.get(evidenceOf(busy)).expect(200);
    const { files: kept, arriving } = bodyOf<{ files: Answer[]; arriving: unknown[] }>(answer);
    expect(kept.map(({ id }) => id).sort()).toEqual(made.map(({ id }) => id).sort());
    expect(new Set(kept.map((one) => one['sha256']))).toEqual(new Set(files.map(sha256)));
    expect(arriving).toEqual([]);
  });
});
