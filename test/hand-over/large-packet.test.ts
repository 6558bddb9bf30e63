import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { open, rm } from 'node:fs/promises';
import type { IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DeskProcess } from './desk-process.js';
import { draftFor } from './packet-desk.js';

const MIB = 1024 * 1024;
const VIDEO = 320 * MIB;
const VIDEOS = 2;
/** What may come on top of the memory that the service has at rest: far less than one video. */
const SPARE = 160 * MIB;
const ZEROS = Buffer.alloc(MIB);

describe('a packet of videos that are far larger than the memory it may take', () => {
  let desk: DeskProcess;
  let incident: string;
  let archive: string;
  let path: string;
  beforeAll(async () => {
    desk = await DeskProcess.start();
    incident = (await desk.create('/api/incidents', { call: { said: 'help, PWC 7' } })).id;
    path = join(desk.folder, 'packet.zip');
  });
  afterAll(() => desk.stop());

  /** Calls for help, one after the other, until something else has ended: how many were answered before that. */
  const callWhile = async (other: Promise<unknown>): Promise<number> => {
    let [ended, answered] = [false, 0];
    const watched = other.finally(() => (ended = true));
    while (!ended) {
      await desk.callForHelp(`call ${answered}`);
      if (!ended) answered += 1;
    }
    await watched;
    return answered;
  };

  it('takes its videos in while calls for help are answered', async () => {
    desk.forgetPeak();
    const before = desk.peakBytes();
    const strangers: object[] = [];
    for (let n = 0; n < VIDEOS; n += 1) {
      const id = await desk.startVideo(incident, VIDEO);
      expect(await callWhile(desk.finishVideo(incident, id))).toBeGreaterThan(0);
      strangers.push({ id, regions: [] });
    }
    const draft = draftFor('insurer', { strangers });
    const { id } = await desk.create(`/api/incidents/${incident}/packets`, draft);
    archive = `/api/incidents/${incident}/packets/${id}/archive`;
    expect(desk.peakBytes() - before).toBeLessThan(SPARE);
  }, 120_000);

  it('leaves while calls for help are answered, and says before how long it is', async () => {
    desk.forgetPeak();
    const before = desk.peakBytes();
    const download = await desk.open(archive);
    const length = Number(download.headers['content-length']);
    // Nothing is read yet: whoever takes it out slowly holds nobody up either.
    await desk.callForHelp('while nobody reads');
    let bytes = 0;
    expect(await callWhile(keep(download, path).then((kept) => (bytes = kept)))).toBeGreaterThan(0);
    expect(bytes).toBe(length);
    expect(bytes).toBeGreaterThan(VIDEOS * VIDEO);
    expect(desk.peakBytes() - before).toBeLessThan(SPARE);
  }, 120_000);

  it('is verified by the command without being held', () => {
    const report = 'process.once("exit", () => console.error(process.resourceUsage().maxRSS * 1024))';
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [`--import=data:text/javascript,${report}`, 'dist/src/cli/verify.js', path],
      { encoding: 'utf8' },
    );
    expect(stdout).toMatch(/All \d+ files are those that the manifest lists/);
    expect(status).toBe(0);
    expect(Number(stderr)).toBeGreaterThan(MIB);
    // Pieces that were read wait for the collector, on a busy machine for longer; the packet as a whole is far larger.
    expect(Number(stderr)).toBeLessThan((VIDEOS * VIDEO * 3) / 4);
  }, 120_000);

  it('is the same bytes from another process in another zone of time', async () => {
    const small = await desk.create(`/api/incidents/${incident}/packets`, draftFor('insurer'));
    const address = `/api/incidents/${incident}/packets/${small.id}/archive`;
    const first = await digestOf(await desk.open(address));
    await desk.restart({ TZ: 'Pacific/Kiritimati' });
    expect(await digestOf(await desk.open(address))).toBe(first);
  }, 120_000);
});

/** Keeps a download, in which what is nothing but zeros becomes a hole; gives its length in bytes. */
async function keep(download: IncomingMessage, path: string): Promise<number> {
  await rm(path, { force: true });
  const file = await open(path, 'w');
  let at = 0;
  try {
    for await (const piece of download as AsyncIterable<Buffer>) {
      if (!piece.equals(ZEROS.subarray(0, piece.length))) await file.write(piece, 0, piece.length, at);
      at += piece.length;
    }
    return at;
  } finally {
    await file.close();
  }
}

async function digestOf(download: IncomingMessage): Promise<string> {
  expect(download.statusCode).toBe(200);
  const hash = createHash('sha256');
  for await (const piece of download as AsyncIterable<Buffer>) hash.update(piece);
  return hash.digest('hex');
}
