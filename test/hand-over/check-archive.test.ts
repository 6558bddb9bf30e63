import { createHash } from 'node:crypto';
import { Uint8ArrayReader } from '@zip.js/zip.js/lib/zip-core-native.js';
import { describe, expect, it } from 'vitest';
import { checkArchive, NoArchiveError } from '../../shared/hand-over/check-archive.js';
import type { Manifest, PacketProof, PacketRecord, Withheld } from '../../shared/hand-over/packet.js';
import { tellPacketCheck } from '../../shared/hand-over/tell-packet-check.js';
import { EMPTY_ROOT } from '../../shared/proof/merkle-log.js';
import { type CraftedEntry, craftZip } from './craft-zip.js';
import { HOSTILE_NAMES } from './hostile-names.js';
import { readZip } from './read-zip.js';

const sha256 = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
const json = (value: object): Buffer => Buffer.from(JSON.stringify(value));

const HEAD = { size: 0, root: EMPTY_ROOT };
const PHOTO = Buffer.alloc(300, 7);

/** The smallest packet there can be: of a log in which nothing was written, with one picture. */
function smallPacket(more: readonly { path: string; content: Buffer }[] = [], name = 'Kim Ortega') {
  const proof: PacketProof = {
    format: 'incident-desk/packet-proof/1',
    head: HEAD,
    received: [],
    amendments: [],
  };
  const record: PacketRecord = {
    format: 'incident-desk/packet-record/1',
    reference: '2026-0042',
    asOf: '2026-06-20T23:30:00Z',
    recipient: 'insurer',
    timeZone: 'America/Chicago',
    cautions: [],
    sections: {},
    attachments: {},
  };
  const withheld: Withheld = { format: 'incident-desk/packet-withheld/1', masked: [], withheld: [] };
  const files = [
    { path: 'proof.json', content: json(proof) },
    { path: 'record.json', content: json(record) },
    { path: 'withheld.json', content: json(withheld) },
    { path: 'evidence/001-a.jpg', content: PHOTO },
    ...more,
  ];
  const manifest: Manifest = {
    ...{ format: 'incident-desk/packet-manifest/1', packet: 'p', reference: '2026-0042' },
    ...{ recipient: { kind: 'insurer', name }, purpose: 'The claim', madeAt: '2026-06-20T23:30:00Z' },
    ...{ madeBy: 'Ann Lee', head: HEAD },
    files: files.map(({ path, content }) => ({
      ...{ path, size: content.length, sha256: sha256(content), type: 'x/y', source: 'made', custody: [] },
    })),
  };
  const entries = [{ path: 'manifest.json', content: json(manifest) }, ...files];
  return entries.map(({ path, content }): CraftedEntry => ({ name: path, content }));
}

const check = (archive: Buffer) => checkArchive(new Uint8ArrayReader(archive), []);
const said = async (archive: Buffer): Promise<string> => tellPacketCheck(await check(archive), 0).join('\n');
const changing = (name: string, change: Partial<CraftedEntry>) =>
  smallPacket().map((one) => (one.name === name ? { ...one, ...change } : one));

const EVIDENCE = 'evidence/001-a.jpg';
const ALL = /All 4 files are those that the manifest lists/;

describe('an archive that is checked', () => {
  it('is whole as it was made, and packed anew by another program, with a folder, or compressed', async () => {
    expect(await said(craftZip(smallPacket()))).toMatch(ALL);
    const folder = { name: 'evidence/', content: Buffer.of(), mode: 0o040700 };
    expect(await said(craftZip([folder, ...smallPacket()]))).toMatch(ALL);
    expect(await said(craftZip(smallPacket().map((one) => ({ ...one, deflate: true }))))).toMatch(ALL);
    expect((await readZip(craftZip(smallPacket()))).size).toBe(5);
  });

  // Also where the manifest lists the name: whoever made the packet up wrote that as well.
  it.each(HOSTILE_NAMES.filter(([, name]) => name !== ''))(
    'is named for a name that %s',
    async (_does, name) => {
      const archive = craftZip(smallPacket([{ path: name, content: Buffer.from('x') }]));
      const words = await said(archive);
      expect(words).toContain('is a name that no packet has');
      expect(words).toContain('Do not rely on it');
    },
  );

  it('writes no sign of a stranger to a terminal that would move or colour it, or turn a line', async () => {
    const words = await said(craftZip(smallPacket([], 'Kim\u001b[2J\u202e\r\n\u0007Ortega')));
    expect(words).toContain('made for Kim\\u001b[2J\\u202e\\u000d\\u000a\\u0007Ortega');
    expect(await said(craftZip(smallPacket([], 'Łukasz Díaz 李')))).toContain('made for Łukasz Díaz 李');
  });

  it.each<[what: string, entries: CraftedEntry[], names: RegExp]>([
    [
      'holds a file twice',
      [...smallPacket(), { name: 'record.json', content: Buffer.from('{}') }],
      /record\.json stands in the archive twice/,
    ],
    [
      'holds a file twice for Windows and macOS',
      [...smallPacket(), { name: 'RECORD.json', content: Buffer.from('{}') }],
      /RECORD\.json stands in the archive twice/,
    ],
    ['holds a link', changing(EVIDENCE, { mode: 0o120777 }), /001-a\.jpg is a link and no file/],
    ['has another name before the bytes', changing(EVIDENCE, { localName: 'evidence/001-b.jpg' }), /001-a/],
    [
      'has a wrong check sum',
      changing(EVIDENCE, { crc: 1 }),
      /001-a\.jpg was changed: its bytes are not those/,
    ],
    [
      'says that more comes out',
      changing(EVIDENCE, { deflate: true, size: 9000 }),
      /001-a\.jpg was changed: its bytes/,
    ],
    [
      'says that less comes out',
      changing(EVIDENCE, { deflate: true, size: 10 }),
      /001-a\.jpg was changed, so/,
    ],
    [
      'is encrypted in part',
      changing(EVIDENCE, { flags: 0x801 }),
      /001-a\.jpg was changed, so that it cannot/,
    ],
    [
      'hides bytes between its files',
      changing(EVIDENCE, { gap: Buffer.from('nobody sees this') }),
      /16 bytes between its files that belong to none/,
    ],
    [
      'hides bytes behind a folder',
      [{ name: 'evidence/', content: Buffer.of(), gap: Buffer.from('nobody sees this') }, ...smallPacket()],
      /16 bytes between its files/,
    ],
    [
      'gives a folder bytes',
      [...smallPacket(), { name: 'more/', content: Buffer.from('x') }],
      /more\/ was added/,
    ],
    [
      'adds a file',
      [...smallPacket(), { name: 'more.txt', content: Buffer.from('x') }],
      /more\.txt was added: the manifest does not list it/,
    ],
    ['lacks a file', smallPacket().filter(({ name }) => name !== EVIDENCE), /001-a\.jpg is missing/],
    ['lacks the manifest', smallPacket().slice(1), /manifest\.json was taken out of it/],
    ['changes a file', changing(EVIDENCE, { content: Buffer.alloc(300, 8) }), /its SHA-256 is/],
  ])('is named where it %s', async (_what, entries, names) => {
    expect(await said(craftZip(entries))).toMatch(names);
  });

  const whole = craftZip(smallPacket());
  const inner = craftZip([{ name: 'other.txt', content: Buffer.from('another archive') }]);
  it.each<[what: string, archive: Buffer, names: RegExp]>([
    [
      'bytes before it',
      Buffer.concat([Buffer.from('MZ a program'), whole]),
      /beside its files \(prepended data/,
    ],
    ['bytes behind it', Buffer.concat([whole, Buffer.from('and more')]), /beside its files \(appended data/],
    ['a comment', withComment(whole, 'Dear Sir'), /beside its files \(a comment/],
    ['another archive before it', Buffer.concat([inner, whole]), /beside its files/],
  ])('is named for %s', async (_what, archive, names) => {
    expect(await said(archive)).toMatch(names);
  });

  it.each<[what: string, archive: Buffer]>([
    ['a letter', Buffer.from('Dear Sir, please find nothing enclosed.')],
    ['nothing', Buffer.of()],
    ['an archive that broke off in the middle', whole.subarray(0, whole.length / 2)],
    ['an archive without its last byte', whole.subarray(0, -1)],
    ['two archives, of which each program reads another', Buffer.concat([inner, whole, inner])],
  ])('is no archive where it is %s', async (_what, archive) => {
    const outcome = await check(archive).then(
      ({ faults }) => faults.length,
      (error: unknown) => error,
    );
    if (outcome instanceof Error) expect(outcome).toBeInstanceOf(NoArchiveError);
    else expect(outcome).toBeGreaterThan(0);
  });

  it('is not swallowed where it unpacks to far more than it is', async () => {
    const size = 256 * 1024 * 1024;
    const bomb = { name: 'proof.json', content: Buffer.alloc(size), deflate: true };
    const archive = craftZip([...smallPacket().filter(({ name }) => name !== bomb.name), bomb]);
    expect(archive.length).toBeLessThan(size / 500);
    const before = process.memoryUsage.rss();
    let most = 0;
    const tell = (): void => void (most = Math.max(most, process.memoryUsage.rss() - before));
    const { faults } = await checkArchive(new Uint8ArrayReader(archive), [], { tell });
    expect(faults).toEqual(['proof.json was changed, or is of a format that this program does not know.']);
    expect(most).toBeLessThan(size);
  });

  it('is named for any one byte that was changed, but for what tells nothing of the files', async () => {
    const idle = idleBytes(whole);
    const passed: number[] = [];
    for (let at = 0; at < whole.length; at += 1) {
      if (idle.has(at) || (isContent(whole, at) && at % 11 !== 0)) continue;
      const changed = Buffer.from(whole);
      changed[at] = (changed[at] ?? 0) ^ 1;
      const found = await check(changed).then(
        ({ faults }) => faults.length > 0,
        (error: unknown) => error instanceof NoArchiveError,
      );
      if (!found) passed.push(at);
    }
    expect(passed).toEqual([]);
  });
});

function withComment(archive: Buffer, words: string): Buffer {
  const commented = Buffer.concat([archive, Buffer.from(words)]);
  commented.writeUInt16LE(words.length, archive.length - 2);
  return commented;
}

/** Of what the files hold, some bytes are enough. */
function isContent(archive: Buffer, at: number): boolean {
  return smallPacket().some(({ content }) => {
    const from = archive.indexOf(content);
    return from <= at && at < from + content.length;
  });
}

/**
 * Places of what tells nothing of the files: versions, reserved bits, time and day, disks and rights (APPNOTE.TXT 4.4.2
 * to 4.4.6, 4.4.13 to 4.4.15), by their distance from the beginning of a header.
 */
function idleBytes(archive: Buffer): Set<number> {
  const idle = new Set<number>();
  const note = (signature: string, places: readonly (readonly [number, number])[]): void => {
    for (let at = archive.indexOf(signature, 0, 'latin1'); at >= 0;) {
      for (const [from, to] of places) for (let byte = from; byte < to; byte += 1) idle.add(at + byte);
      at = archive.indexOf(signature, at + 1, 'latin1');
    }
  };
  note('PK\x03\x04', [
    [4, 6],
    [7, 8],
    [10, 14],
  ]);
  note('PK\x01\x02', [
    [4, 8],
    [9, 10],
    [12, 16],
    [34, 42],
  ]);
  return idle;
}
