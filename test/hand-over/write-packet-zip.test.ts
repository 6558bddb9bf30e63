import { createReadStream } from 'node:fs';
import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { writePacketZip, type ZipEntry } from '../../src/server/hand-over/write-packet-zip.js';
import { readZip } from './read-zip.js';

const MIB = 1024 * 1024;
const MADE = '2026-06-20T23:30:00Z';

const entry = (path: string, content: Buffer, compress = true): ZipEntry => ({
  path,
  size: content.length,
  compress,
  open: () => Readable.from([content]),
});
const collect = async (archive: Readable): Promise<Buffer> => {
  const pieces: Buffer[] = [];
  for await (const piece of archive as AsyncIterable<Buffer>) pieces.push(piece);
  return Buffer.concat(pieces);
};

it('reads back as it was written, in its order, and is the same bytes again', async () => {
  const entries = [
    entry('README.txt', Buffer.from('Łódź')),
    entry('evidence/001-a.jpg', Buffer.alloc(9, 7), false),
  ];
  const archive = await collect(writePacketZip(entries, MADE));
  expect([...(await readZip(archive))]).toEqual([
    ['README.txt', Buffer.from('Łódź')],
    ['evidence/001-a.jpg', Buffer.alloc(9, 7)],
  ]);
  expect((await collect(writePacketZip(entries, MADE))).equals(archive)).toBe(true);
});

it.each(['../out.txt', '/etc/out.txt', 'a/../../out.txt', 'C:/out.txt', 'a\\..\\out.txt'])(
  'refuses %s, which leads out of the archive or looks like it',
  (path) => {
    // A backslash is turned into a slash by the library, and is then refused as well.
    expect(() => writePacketZip([entry(path, Buffer.of(1))], MADE)).toThrow(/relative path|absolute path/);
  },
);

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
  await expect(collect(writePacketZip([broken], MADE))).rejects.toThrow('changed');
});

it('streams what is larger than the memory it takes, while other work is done', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'packet-'));
  const path = join(folder, 'large');
  const size = 640 * MIB;
  try {
    const file = await open(path, 'w');
    await file.truncate(size);
    await file.close();
    const large = { path: 'evidence/001-a.mp4', size, compress: false, open: () => createReadStream(path) };
    const before = process.memoryUsage.rss();
    let [bytes, most, turns] = [0, 0, 0];
    let writing = true;
    const others = (async () => {
      for (; writing; turns += 1) await new Promise((next) => setImmediate(next));
    })();
    for await (const piece of writePacketZip([large], MADE) as AsyncIterable<Buffer>) {
      bytes += piece.length;
      most = Math.max(most, process.memoryUsage.rss() - before);
    }
    writing = false;
    await others;
    expect(bytes).toBeGreaterThan(size);
    expect(most).toBeLessThan(size / 3);
    // The loop came round again and again meanwhile, and did not wait for the archive.
    expect(turns).toBeGreaterThan(100);
  } finally {
    await rm(folder, { recursive: true });
  }
}, 60_000);
