import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { namedFields } from '../../shared/proof/hash-amendment.js';
import type { Manifest, PacketProof } from '../../shared/hand-over/packet.js';
import { House } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { archiveOf, draftFor, makePacket, plantedIncident } from './packet-desk.js';
import { readZip } from './read-zip.js';

const PHOTO = 'fixtures/evidence/photo-with-position.jpg';

let house: House;
let folder: string;
let files: Map<string, Buffer>;

beforeAll(async () => {
  house = await House.open('sqlite');
  const manager = await house.signedIn('manager');
  const incident = await plantedIncident(manager, house.now());
  const { id } = await upload(manager, incident, await readFile(PHOTO), {
    name: 'a.jpg',
    about: { people: [] },
  });
  const draft = draftFor('insurer', { strangers: [{ id, regions: [] }] });
  files = await readZip(await archiveOf(manager, incident, await makePacket(manager, incident, draft)));
  folder = await mkdtemp(join(tmpdir(), 'unpacked-'));
  for (const [path, content] of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
});
afterAll(async () => {
  await rm(folder, { recursive: true });
  await house.close();
});

const jsonOf = <T>(path: string): T => JSON.parse(files.get(path)?.toString('utf8') ?? '') as T;

/** Members by the alphabet and no blanks: enough of RFC 8785 for what is in a proof, and written here apart from the desk's. */
function plain(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(plain).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const members = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${members.map(([name, one]) => `${JSON.stringify(name)}:${plain(one)}`).join(',')}}`;
}

const sha256 = (...parts: (string | Buffer)[]): Buffer =>
  parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest();

describe('what the README of a packet says to do', () => {
  it('checks every file with the tool of the system, which names the one that was changed', async () => {
    // GNU coreutils, as on any Linux; shasum of macOS reads the same list.
    const check = async (): Promise<string[]> => {
      const { stdout } = await promisify(execFile)('sha256sum', ['-c', 'sha256sums.txt'], {
        cwd: folder,
      }).catch((error: unknown) => error as { stdout: string });
      return stdout.trim().split('\n').sort();
    };
    expect(files.get('README.txt')?.toString('utf8')).toContain('sha256sum -c sha256sums.txt');
    const listed = jsonOf<Manifest>('manifest.json').files.map(({ path }) => path);
    const sums = listed.filter((path) => path !== 'sha256sums.txt');
    expect(sums.length).toBe(files.size - 2);
    expect(await check()).toEqual(sums.map((path) => `${path}: OK`).sort());
    const changed = Buffer.from(files.get('record.json') ?? '');
    changed.writeUInt8(changed.readUInt8(40) ^ 1, 40);
    await writeFile(join(folder, 'record.json'), changed);
    expect((await check()).filter((line) => !line.endsWith(': OK'))).toEqual(['record.json: FAILED']);
  });

  it('leads by hand from each line that is shown to the head, by FIPS 180-4 and RFC 6962 alone', () => {
    const proof = jsonOf<PacketProof>('proof.json');
    let shown = 0;
    for (const { amendment, path, ...one } of proof.amendments) {
      for (const { salt, value, ...field } of one.shown) {
        const name = field.of === 'reason' ? 'reason' : field.path;
        const held =
          field.of === 'reason'
            ? amendment.header.reason
            : namedFields(amendment).find((change) => change.path === field.path)?.[field.of];
        expect(sha256(plain(['incident-desk/field/1', salt, name, value])).toString('hex')).toBe(held);
        shown += 1;
      }
      const fields = amendment.fields
        .map((line) =>
          'digest' in line
            ? line.digest
            : sha256(plain(['incident-desk/change/1', line.path, line.from, line.to])).toString('hex'),
        )
        .sort();
      const leaf = plain({ ...amendment, fields, format: 'incident-desk/amendment/2' });
      let node = sha256(Buffer.of(0), leaf);
      expect(node.toString('hex')).toBe(one.leafHash);
      // RFC 9162, 2.1.3.2, which says how the path of RFC 6962, 2.1.1 is walked.
      let [place, last] = [amendment.header.sequence - 1, proof.head.size - 1];
      for (const step of path) {
        const beside = Buffer.from(step, 'hex');
        if (place % 2 === 1 || place === last) {
          node = sha256(Buffer.of(1), beside, node);
          while (place % 2 === 0 && place !== 0) [place, last] = [place >> 1, last >> 1];
        } else node = sha256(Buffer.of(1), node, beside);
        [place, last] = [place >> 1, last >> 1];
      }
      expect(node.toString('hex')).toBe(proof.head.root);
    }
    expect(shown).toBeGreaterThan(10);
    expect(files.get('README.txt')?.toString('utf8')).toContain(proof.head.root);
  });
});
