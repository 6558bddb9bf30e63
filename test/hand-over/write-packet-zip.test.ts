import { createRequire } from 'node:module';
import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { crc32 } from 'node:zlib';
import { Uint8ArrayReader, ZipReader } from '@zip.js/zip.js/lib/zip-core-native.js';
import yauzl from 'yauzl';
import { expect, it } from 'vitest';
import { isPlainPath } from '../../shared/hand-over/plain-path.js';
import { writePacketZip, type ZipEntry } from '../../src/server/hand-over/write-packet-zip.js';
import { HOSTILE_NAMES } from './hostile-names.js';
import { readZip } from './read-zip.js';

const MIB = 1024 * 1024;
const MADE = '2026-06-20T23:30:00Z';

const entry = (path: string, content: Buffer): ZipEntry => ({
  path,
  size: content.length,
  open: () => Readable.from([content]),
});
const collect = async (archive: Readable): Promise<Buffer> => {
  const pieces: Buffer[] = [];
  for await (const piece of archive as AsyncIterable<Buffer>) pieces.push(piece);
  return Buffer.concat(pieces);
};

it('reads back as it was written, in its order, and is the same bytes again', async () => {
  const entries = [entry('README.txt', Buffer.from('Łódź')), entry('evidence/001-a.jpg', Buffer.alloc(9, 7))];
  const archive = await collect(writePacketZip(entries, MADE).bytes);
  expect([...(await readZip(archive))]).toEqual([
    ['README.txt', Buffer.from('Łódź')],
    ['evidence/001-a.jpg', Buffer.alloc(9, 7)],
  ]);
  expect((await collect(writePacketZip(entries, MADE).bytes)).equals(archive)).toBe(true);
});

// 256 and 257: where the list begins to be written with 64 bits; 700: where it is longer than 65535 bytes.
it.each([0, 1, 256, 257, 700])('says how long it is before it is written, with %d files', async (count) => {
  const name = (n: number): string => `evidence/${n}-${'a'.repeat(60)}.txt`;
  const entries = Array.from({ length: count }, (_, n) => entry(name(n), Buffer.from(`${n}`)));
  const { bytes, size } = writePacketZip(entries, MADE);
  const archive = await collect(bytes);
  expect(archive.length).toBe(size);
  expect((await readZip(archive)).size).toBe(count);
  const again = await new ZipReader(new Uint8ArrayReader(archive), { strictness: 'strict' }).getEntries();
  expect(again.map(({ filename }) => filename)).toEqual(entries.map(({ path }) => path));
});

it.each(HOSTILE_NAMES)('refuses a name that %s', (_does, name) => {
  expect(isPlainPath(name)).toBe(false);
  expect(() => writePacketZip([entry(name, Buffer.of(1))], MADE)).toThrow(
    /is no name for a file of a packet/,
  );
});

it('refuses two names that are one where capital letters do not count', () => {
  const entries = [entry('evidence/a.jpg', Buffer.of(1)), entry('evidence/A.jpg', Buffer.of(2))];
  expect(() => writePacketZip(entries, MADE)).toThrow(/stands in the packet already/);
});

it('breaks off with a file that breaks off, and is then no archive', async () => {
  const broken: ZipEntry = {
    ...entry('a.bin', Buffer.alloc(10)),
    open: () =>
      new Readable({
        read() {
          this.destroy(new Error('changed'));
        },
      }),
  };
  await expect(collect(writePacketZip([broken], MADE).bytes)).rejects.toThrow('changed');
});

/** The check sum of the library, in script, takes ten seconds for 4 GiB; that of the platform, one. */
function withQuickCheckSum(): () => void {
  const ofLibrary = createRequire(createRequire(import.meta.url).resolve('yazl'))('buffer-crc32') as {
    unsigned: (piece: Buffer, before?: number) => number;
  };
  const { unsigned } = ofLibrary;
  ofLibrary.unsigned = (piece, before = 0) => crc32(piece, before);
  return () => (ofLibrary.unsigned = unsigned);
}

// APPNOTE.TXT 4.3.14 to 4.3.16 and 4.5.3: what passes 4 GiB is told with 64 bits.
it('is right beyond 4 GiB: one file larger than that, and one that lies behind it', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'packet-'));
  const zeros = Buffer.alloc(MIB);
  const pieces = 4096;
  const large: ZipEntry = {
    path: 'evidence/001-a.mp4',
    size: pieces * MIB + 1,
    open: () =>
      Readable.from(
        (function* () {
          for (let n = 0; n < pieces; n += 1) yield zeros;
          yield Buffer.of(7);
        })(),
      ),
  };
  const restore = withQuickCheckSum();
  const file = await open(join(folder, 'large.zip'), 'w');
  try {
    const { bytes, size } = writePacketZip([large, entry('last.txt', Buffer.from('the last'))], MADE);
    let at = 0;
    for await (const piece of bytes as AsyncIterable<Buffer>) {
      // What is nothing but zeros stays a hole in the file.
      if (!piece.equals(zeros)) await file.write(piece, 0, piece.length, at);
      at += piece.length;
    }
    expect(at).toBe(size);
    let sum = 0;
    for (let n = 0; n < pieces; n += 1) sum = crc32(zeros, sum);
    const zip = await yauzl.openPromise(join(folder, 'large.zip'));
    const found: [string, number, number][] = [];
    const read: string[] = [];
    for await (const one of zip.eachEntry()) {
      found.push([one.fileName, one.uncompressedSize, one.crc32]);
      const local = await zip.readLocalFileHeaderPromise(one);
      expect(local.fileName.toString()).toBe(one.fileName);
      if (one.fileName === 'last.txt') read.push(await textOf(await zip.openReadStreamPromise(one)));
    }
    expect(found).toEqual([
      [large.path, large.size, crc32(Buffer.of(7), sum)],
      ['last.txt', 8, crc32(Buffer.from('the last'))],
    ]);
    expect(read).toEqual(['the last']);
  } finally {
    restore();
    await file.close();
    await rm(folder, { recursive: true });
  }
}, 60_000);

async function textOf(stream: Readable): Promise<string> {
  return (await collect(stream)).toString('utf8');
}
