import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import exceljs from 'exceljs';
import exifr from 'exifr';
import sharp from 'sharp';
import { beforeAll, expect, it } from 'vitest';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';
import type { Manifest, PacketProof, Withheld } from '../../shared/hand-over/packet.js';
import { commitField } from '../../shared/proof/commit-field.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { sha256, upload } from '../evidence/evidence-desk.js';
import { bodyOf, write } from '../follow-up/desk.js';
import { checkZip } from './check-zip.js';
import { archiveOf, draftFor, makePacket, PLANTED, plantedIncident, privilegedNote } from './packet-desk.js';
import { readZip, textOfZip } from './read-zip.js';
import { writeZip } from './write-zip.js';

const PHOTO = readFileSync('fixtures/evidence/photo-with-position.jpg');

describeHouse('a packet', (house) => {
  let manager: Browser;
  let counsel: Browser;
  let incident: string;
  let photo: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const lawyer = await house().person('counsel');
    incident = await plantedIncident(manager, house().now());
    await privilegedNote(manager, incident, lawyer.id);
    counsel = await house().signedIn(lawyer);
    photo = (await upload(manager, incident, PHOTO, { name: '../../escape.jpg', about: { people: [] } })).id;
  });

  const packed = async (recipient: Recipient, more: object = {}): Promise<Buffer> =>
    archiveOf(
      recipient === 'counsel' ? counsel : manager,
      incident,
      await makePacket(manager, incident, draftFor(recipient, more)),
    );
  const jsonOf = <T>(files: Map<string, Buffer>, path: string): T =>
    JSON.parse(files.get(path)?.toString('utf8') ?? '') as T;
  it('shows everything to counsel, so that what is searched for elsewhere can be found', async () => {
    const text = await textOfZip(await packed('counsel'));
    expect(text).toContain('"task": [');
    for (const planted of [
      PLANTED.medical,
      PLANTED.birthDate,
      PLANTED.privileged,
      PLANTED.child,
      PLANTED.statement,
    ])
      expect(text).toContain(planted);
  });

  // By the profiles: medical detail to an insurer only by choice, a child's name to insurer and counsel alone.
  it.each([
    ['insurer', ['medical', 'privileged']],
    ['counsel', []],
    ['agency', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['renter', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['other-party', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['in-house', ['medical', 'birthDate', 'privileged', 'child']],
  ] as [Recipient, (keyof typeof PLANTED)[]][])('for %s keeps back %j', async (recipient, kept) => {
    const archive = await packed(recipient, { strangers: [{ id: photo, regions: [] }] });
    const text = await textOfZip(archive);
    for (const what of ['medical', 'birthDate', 'privileged', 'child', 'statement'] as const) {
      expect([what, text.includes(PLANTED[what])]).toEqual([what, !kept.includes(what)]);
    }
    expect(text.includes('"task": [')).toBe(['counsel', 'in-house'].includes(recipient));
    const said = (await checkZip(archive)).join('\n');
    expect(said).toMatch(/All \d+ files are those that the manifest lists/);
    expect(said).not.toMatch(/not as the packet says/);
  });

  it('holds a record that keeps to the schema beside it, and a manifest of every file', async () => {
    const files = await readZip(await packed('insurer', { strangers: [{ id: photo, regions: [] }] }));
    const validate = addFormats
      .default(new Ajv2020({ strict: false }))
      .compile(jsonOf<object>(files, 'record.schema.json'));
    expect([validate(jsonOf(files, 'record.json')), validate.errors]).toEqual([true, null]);
    const manifest = jsonOf<Manifest>(files, 'manifest.json');
    expect(new Set([...manifest.files.map(({ path }) => path), 'manifest.json'])).toEqual(
      new Set(files.keys()),
    );
    for (const { path, sha256: hash, size } of manifest.files) {
      expect([path, sha256(files.get(path) ?? Buffer.of())]).toEqual([path, hash]);
      expect(files.get(path)?.length).toBe(size);
      expect(path).toMatch(/^[A-Za-z0-9./-]+$/);
      expect(path).not.toContain('..');
    }
    const original = manifest.files.find(({ source }) => source === 'original');
    expect(original).toMatchObject({ sha256: sha256(PHOTO), evidence: { id: photo } });
    expect(original?.custody.map(({ what }) => what)).toEqual([
      'arrived as evidence',
      'put into this packet, byte for byte',
    ]);
  });

  it('keeps what looks like a formula as text in the workbook', async () => {
    const files = await readZip(await packed('insurer'));
    const book = new exceljs.Workbook();
    await book.xlsx.load((files.get('record.xlsx') ?? Buffer.of()) as never);
    const cells: exceljs.Cell[] = [];
    book.getWorksheet('Rental')?.eachRow((row) => row.eachCell((cell) => cells.push(cell)));
    const found = cells.find(({ value }) => value === PLANTED.pattern);
    expect(found?.type).toBe(exceljs.ValueType.String);
    expect(cells.some(({ type }) => type === exceljs.ValueType.Formula)).toBe(false);
    expect(book.worksheets.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['About', 'People', 'Time and place', 'Withheld']),
    );
    const rowsOf = (sheet: string): exceljs.Row[] => book.getWorksheet(sheet)?.getRows(2, 200) ?? [];
    const ages: exceljs.CellValue[] = [];
    book.getWorksheet('People')?.eachRow((row) => {
      if (row.getCell(3).value === 'Age') ages.push(row.getCell(4).value);
    });
    expect(ages).toEqual([39, 9]);
    // By the calendar, and with no code of ours: what is read is what the paper says.
    const [born] = rowsOf('People').filter((row) => row.getCell(3).value === 'Date of birth');
    expect(born?.getCell(4).value).toEqual(new Date(PLANTED.birthDate));
    expect(born?.getCell(1).value).toBe('Person 1: Ann Lee');
  });

  it('never lets a birth date be guessed from the proof, though it commits to it', async () => {
    const files = await readZip(await packed('in-house'));
    const { amendments } = jsonOf<PacketProof>(files, 'proof.json');
    const path = '/people/p1/birthDate';
    expect(JSON.stringify(amendments)).not.toContain(path);
    // Where it is committed to is not said, so that whoever guesses tries everything of 32 bytes.
    const hexes = new Set(JSON.stringify(amendments).match(/[0-9a-f]{64}/g));
    expect(hexes.size).toBeGreaterThan(20);
    const shown = amendments.flatMap((one) => one.shown);
    expect(shown.some((value) => value.of !== 'reason' && value.path === path)).toBe(false);
    // Whoever guesses has the salts that are shown, and nothing else of 32 bytes.
    const salts = [...new Set(shown.map(({ salt }) => salt))].slice(0, 3).concat('0'.repeat(64));
    const birthDays = Array.from({ length: 120 * 366 }, (_, day) =>
      new Date(Date.UTC(1906, 0, 1 + day)).toISOString().slice(0, 10),
    );
    expect(birthDays).toContain(PLANTED.birthDate);
    const fact = (value: string) => ({ value, known: 'told', by: 'Ann Lee' });
    const opens = (known: ReadonlySet<string>, value: string, salt: string): boolean =>
      known.has(commitField(path, { salt, value: fact(value) }));
    const hits = birthDays.filter((value) => salts.some((salt) => opens(hexes, value, salt)));
    expect(hits).toEqual([]);
    // That the same search finds it with the salt, in a packet that shows it.
    const open = jsonOf<PacketProof>(await readZip(await packed('insurer')), 'proof.json');
    const [opening] = open.amendments.flatMap((one) =>
      one.shown.filter((value) => value.of === 'to' && value.path === path),
    );
    const shownThere = new Set(JSON.stringify(open.amendments).match(/[0-9a-f]{64}/g));
    expect(opens(shownThere, PLANTED.birthDate, opening?.salt ?? '')).toBe(true);
  }, 60_000);

  it('is the same bytes whenever it is taken out, and each time is written down', async () => {
    const packet = await makePacket(manager, incident, draftFor('insurer'));
    const first = await archiveOf(manager, incident, packet);
    await write(manager, incident, 'account', {
      whatHappened: { value: 'It was another boat.', known: 'told' },
    });
    const second = await archiveOf(manager, incident, packet);
    expect(sha256(second)).toBe(sha256(first));
    const { items } = bodyOf<{ items: { id: string; looks: object[] }[] }>(
      await manager.get(`/api/incidents/${incident}/packets`).expect(200),
    );
    expect(items.find(({ id }) => id === packet.id)?.looks).toHaveLength(2);
  });

  it('is made once for one key', async () => {
    const key = randomUUID();
    const draft = draftFor('insurer');
    const first = await makePacket(manager, incident, draft, key);
    expect((await makePacket(manager, incident, draft, key)).id).toBe(first.id);
  });

  it('says what was changed, in plain words', async () => {
    const archive = await packed('insurer', { strangers: [{ id: photo, regions: [] }] });
    const files = await readZip(archive);
    const named = [...files.keys()].find((path) => path.startsWith('evidence/')) ?? '';
    const changing = (path: string, change: (text: string) => string) =>
      new Map([...files, [path, Buffer.from(change(files.get(path)?.toString('latin1') ?? ''), 'latin1')]]);
    const phone = (text: string): string => text.replace('903-555-0117', '903-555-0118');
    const withoutProfile = new Map([...files].filter(([path]) => path !== 'profile.json'));
    const rows: [Map<string, Buffer>, RegExp][] = [
      [changing(named, (text) => `${text.slice(0, -1)}x`), new RegExp(`${named.slice(0, 20)}.* was changed`)],
      [changing('record.json', phone), /record\.json was changed at \/people\/p1\/phone of people/],
      [changing('proof.json', phone), /proof\.json was changed at \/people\/p1\/phone/],
      [withoutProfile, /profile\.json is missing/],
      [new Map([...files, ['more.txt', Buffer.from('x')]]), /more\.txt was added/],
      [
        changing('proof.json', (text) => text.replace('"sequence": ', '"sequence": 1')),
        /proof\.json was changed/,
      ],
      [changing('manifest.json', (text) => text.slice(1)), /manifest\.json was changed/],
    ];
    for (const [changed, expected] of rows)
      expect((await checkZip(await writeZip(changed))).join('\n')).toMatch(expected);
    // The same files written anew by this test, with an entry for their folder, are no change.
    const withFolder = new Map([...files, ['evidence/', Buffer.of()]]);
    expect((await checkZip(await writeZip(withFolder))).join('\n')).toMatch(/All \d+ files/);
    expect((await checkZip(await writeZip(files))).join('\n')).toMatch(/All \d+ files/);
  });

  it('claims nothing of before the day on which somebody outside had the head, and proves growth since', async () => {
    const first = await makePacket(manager, incident, draftFor('insurer'));
    expect((await checkZip(await archiveOf(manager, incident, first))).join('\n')).not.toMatch(
      /Unchanged since/,
    );
    await manager
      .post(`/api/incidents/${incident}/packets/${first.id}/deliveries`)
      .send({ to: 'Red River Marine Insurance', way: 'by hand' })
      .expect(200);
    const later = await packed('insurer');
    const said = (await checkZip(later, [first.head])).join('\n');
    expect(said).toMatch(/Unchanged since .* received by Red River Marine Insurance, as the sender says/);
    expect(said).toMatch(/agrees with the head that you had before/);
    const other = { ...first.head, root: 'ab'.repeat(32) };
    expect((await checkZip(later, [other])).join('\n')).toMatch(/not the one that you received/);
  });

  it('covers strangers in a copy without metadata, and leaves a picture out at which nobody looked', async () => {
    const unseen = await readZip(await packed('insurer'));
    expect([...unseen.keys()].filter((path) => path.startsWith('evidence/'))).toEqual([]);
    expect(jsonOf<Withheld>(unseen, 'withheld.json').withheld.map(({ reason }) => reason)).toContain(
      'Nobody has looked yet whether strangers can be seen in it.',
    );
    const { width, height } = await sharp(PHOTO)
      .autoOrient()
      .toBuffer({ resolveWithObject: true })
      .then(({ info }) => info);
    const region = { id: 'r1', left: 0, top: 0, width: Math.floor(width / 2), height };
    const files = await readZip(await packed('insurer', { strangers: [{ id: photo, regions: [region] }] }));
    const manifest = jsonOf<Manifest>(files, 'manifest.json');
    const copy = manifest.files.find(({ source }) => source === 'copy');
    expect(copy).toMatchObject({ evidence: { id: photo, sha256: sha256(PHOTO) } });
    const bytes = files.get(copy?.path ?? '') ?? Buffer.of();
    expect(await exifr.gps(PHOTO)).toBeDefined();
    expect((await sharp(bytes).metadata()).exif).toBeUndefined();
    for (const file of files.values()) expect(file.equals(PHOTO)).toBe(false);
    const outside = draftFor('insurer', {
      strangers: [{ id: photo, regions: [{ ...region, left: 90_000 }] }],
    });
    await create(manager, `/api/incidents/${incident}/packets`, outside).expect(422);
  });
});
