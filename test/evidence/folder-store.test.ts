import { createHash, randomBytes } from 'node:crypto';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wholeStream } from '../../src/server/evidence/whole-stream.js';
import { FolderStore } from '../../src/server/platform/storage/folder-store.js';
import { IncomingFiles, TooManyBytesError } from '../../src/server/platform/storage/incoming-files.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'desk-store-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const sha256 = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
const files = (): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => entry.name);

describe('the folder', () => {
  it('gives back the bytes that it took, whatever they are and however they came', async () => {
    const store = new FolderStore(folder);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.uint8Array({ minLength: 1, maxLength: 500 }), { minLength: 1 }),
        async (pieces) => {
          const whole = Buffer.concat(pieces);
          const digest = await store.put('f1', Readable.from(pieces.map((piece) => Buffer.from(piece))));
          expect(digest).toEqual({ sha256: sha256(whole), size: whole.length });
          expect((await buffer(store.read({ id: 'f1', ...digest }))).equals(whole)).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('keeps the same bytes for each who brought them, for its owner alone, and takes out one of them', async () => {
    const store = new FolderStore(folder);
    const bytes = randomBytes(2_000_000);
    const one = await store.put('one', Readable.from([bytes]));
    await store.put('other', Readable.from([bytes]));
    const name = `${one.sha256}.one`;
    expect(statSync(join(folder, 'files', name.slice(0, 2), name)).mode & 0o777).toBe(0o600);
    await store.delete({ id: 'one', ...one });
    await store.delete({ id: 'one', ...one });
    expect(await store.sizeOf({ id: 'one', ...one })).toBeUndefined();
    expect(await store.sizeOf({ id: 'other', ...one })).toBe(2_000_000);
  });

  it('keeps nothing of a stream that breaks', async () => {
    const before = files();
    const source = new PassThrough();
    const put = new FolderStore(folder).put('broken', source);
    source.write(randomBytes(1000));
    source.destroy(new Error('gone'));
    await expect(put).rejects.toThrow('gone');
    expect(files()).toEqual(before);
  });
});

describe('a file that is arriving', () => {
  it('keeps what came of a piece that broke off', async () => {
    const incoming = new IncomingFiles(folder);
    const source = new PassThrough();
    const taken = incoming.append('half', source, 10_000);
    source.write(Buffer.from('first'));
    await expect.poll(() => incoming.offsetOf('half')).toBe(5);
    source.destroy();
    await expect(taken).rejects.toThrow();
    await incoming.append('half', Readable.from([Buffer.from(' and second')]), 10_000);
    expect((await buffer(incoming.read('half'))).toString()).toBe('first and second');
  });

  it('takes no more than was announced', async () => {
    const incoming = new IncomingFiles(folder);
    const pieces = Readable.from([Buffer.from('12345'), Buffer.from('678901')]);
    await expect(incoming.append('long', pieces, 10)).rejects.toThrow(TooManyBytesError);
    expect(await incoming.offsetOf('long')).toBe(5);
    await incoming.startOver('long');
    expect(await incoming.offsetOf('long')).toBe(0);
  });
});

it.each([
  ['the same', '12345', true],
  ['changed', '12346', false],
  ['shorter', '1234', false],
  ['longer', '123456', false],
])('a download of what is %s is whole: %s', async (_case, kept, isWhole) => {
  const source = Readable.from([Buffer.from(kept)]);
  const read = buffer(wholeStream(source, { sha256: sha256(Buffer.from('12345')), size: 5 }));
  if (isWhole) expect((await read).toString()).toBe(kept);
  else await expect(read).rejects.toThrow('not what arrived');
});
