import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Manifest, PacketRecord } from '../../shared/hand-over/packet.js';
import { foldPath, isPlainPath } from '../../shared/hand-over/plain-path.js';
import { type Browser, create, House } from '../accounts/house.js';
import { bodyOf, evidenceOf, openIncident, upload } from '../evidence/evidence-desk.js';
import { checkZip } from './check-zip.js';
import { HOSTILE_NAMES } from './hostile-names.js';
import { archiveOf, draftFor, makePacket } from './packet-desk.js';
import { readZip } from './read-zip.js';

describe('evidence whose name is meant to do harm', () => {
  let house: House;
  let manager: Browser;
  let incident: string;
  /** Names that evidence may have: they are kept as whoever sent it called it. */
  const kept: string[] = [];
  beforeAll(async () => {
    house = await House.open('sqlite');
    manager = await house.signedIn('manager');
    incident = await openIncident(manager);
    for (const [place, [, name]] of HOSTILE_NAMES.entries()) {
      const announced = { size: 40, name, about: { people: [] } };
      const { status } = await create(manager, `${evidenceOf(incident)}/uploads`, announced);
      expect([name, status]).toEqual([name, expect.toSatisfy((one: number) => one === 201 || one === 422)]);
      if (status !== 201) continue;
      await upload(manager, incident, Buffer.from(`note ${place}`), { name, about: { people: [] } });
      kept.push(name);
    }
    // Two files of one name, and two that are one where capital letters do not count.
    for (const name of ['note.txt', 'note.txt', 'NOTE.TXT']) {
      await upload(manager, incident, Buffer.from(`note ${kept.length}`), { name, about: { people: [] } });
      kept.push(name);
    }
  });
  afterAll(() => house.close());

  it('leaves under names of the desk’s own, each file once, and is whole for whoever checks it', async () => {
    expect(kept).toEqual(expect.arrayContaining(['../out.txt', 'C:/out.txt', 'NUL', 'record.pdf.', '-rf']));
    const archive = await archiveOf(
      manager,
      incident,
      await makePacket(manager, incident, draftFor('insurer')),
    );
    const files = await readZip(archive);
    const paths = [...files.keys()];
    expect(paths.filter((path) => !isPlainPath(path))).toEqual([]);
    expect(new Set(paths.map(foldPath)).size).toBe(paths.length);
    const manifest = JSON.parse(files.get('manifest.json')?.toString() ?? '') as Manifest;
    expect(manifest.files.filter(({ source }) => source === 'original')).toHaveLength(kept.length);
    expect((await checkZip(archive)).join('\n')).toMatch(/All \d+ files are those that the manifest lists/);
    // What somebody called it is a word of the record and leaves as one.
    const record = JSON.parse(files.get('record.json')?.toString() ?? '') as PacketRecord;
    expect(JSON.stringify(record)).toContain('../out.txt');
  });

  it('is handed out by a header that names no folder and breaks no line', async () => {
    const { files } = bodyOf<{ files: { id: string; name: string }[] }>(
      await manager.get(evidenceOf(incident)).expect(200),
    );
    expect(files).toHaveLength(kept.length);
    for (const { id, name } of files) {
      const { headers } = await manager.get(`${evidenceOf(incident)}/${id}/original`).expect(200);
      const [, plain = ''] = /filename="([^"]*)"/.exec(String(headers['content-disposition'])) ?? [];
      expect([name, plain]).toEqual([name, expect.stringMatching(/^[^/\\"%\p{Cc}]*$/u)]);
    }
  });
});
