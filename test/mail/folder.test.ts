import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FolderCarrier } from '../../src/server/platform/mail/folder-carrier.js';
import { FROM } from './mail-house.js';

const LETTER = {
  messageId: '01976a3c-5e00-7000-8c3d-2f4f6a1c7b10@rental.example',
  to: 'ana@rental.example',
  subject: 'Incident 2026-0042: a decision is open again',
  text: 'Look it up.\n',
  queuedAt: '2026-06-13T16:00:00.000Z',
};
const FILE = `${LETTER.messageId}.eml`;

describe('mail as files', () => {
  let folder: string;
  beforeEach(async () => {
    folder = join(await mkdtemp(join(tmpdir(), 'desk-mail-')), 'out');
  });
  afterEach(() => rm(join(folder, '..'), { recursive: true, force: true }));

  it('is a message in a file named by its Message-ID, for nobody else to read', async () => {
    const outcome = await new FolderCarrier(folder, FROM).carry(LETTER);
    expect(outcome).toEqual({ kind: 'sent', words: `Written to ${join(folder, FILE)}` });
    expect(await readdir(folder)).toEqual([FILE]);
    expect(await readFile(join(folder, FILE), 'utf8')).toBe(
      [
        'Auto-Submitted: auto-generated',
        'From: Incident desk <desk@rental.example>',
        'To: ana@rental.example',
        'Subject: Incident 2026-0042: a decision is open again',
        `Message-ID: <${LETTER.messageId}>`,
        'Date: Sat, 13 Jun 2026 16:00:00 +0000',
        'Content-Transfer-Encoding: 7bit',
        'MIME-Version: 1.0',
        'Content-Type: text/plain; charset=utf-8',
        '',
        'Look it up.',
        '',
      ].join('\r\n'),
    );
    expect((await stat(folder)).mode & 0o077).toBe(0);
    expect((await stat(join(folder, FILE))).mode & 0o077).toBe(0);
  });

  it('is the same file after a second try, and after one that was broken off', async () => {
    const carrier = new FolderCarrier(folder, FROM);
    await carrier.carry(LETTER);
    const first = await readFile(join(folder, FILE));
    await writeFile(join(folder, `${FILE}.part`), 'half a mess');
    await carrier.carry(LETTER);
    expect(await readdir(folder)).toEqual([FILE]);
    expect(await readFile(join(folder, FILE))).toEqual(first);
  });

  it('waits while the folder cannot be written', async () => {
    await writeFile(folder, 'a file in its place');
    const outcome = await new FolderCarrier(folder, FROM).carry(LETTER);
    expect(outcome).toEqual({ kind: 'unreachable', words: expect.stringContaining('EEXIST') as string });
  });
});
