import { X509Certificate } from 'node:crypto';
import { createServer } from 'node:http';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { Logger } from '@nestjs/common';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { PacketProof } from '../../shared/hand-over/packet.js';
import { type Browser, describeHouse } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import { checkZip } from './check-zip.js';
import { archiveOf, draftFor, makePacket, plantedIncident } from './packet-desk.js';
import { readZip } from './read-zip.js';
import { hasOpenssl, TimeAuthority } from './time-authority.js';
import { rootOf } from '../proof/time-stamp-fixtures.js';
import { writeZip } from './write-zip.js';

interface Stamped {
  id: string;
  number: string;
  head: { size: number; root: string };
  stamp?: { at: string; authority: string; token?: string };
  unstamped?: string;
}

const IS_HERE = hasOpenssl();
const authority = IS_HERE ? await TimeAuthority.open() : null;
afterAll(() => authority?.close());

describeHouse(
  'the time stamp of a packet',
  (house) => {
    if (authority === null) {
      it.skip('is tested against openssl, which is not on this machine: test/proof holds tokens that it made', () =>
        undefined);
      return;
    }
    let manager: Browser;
    let incident: string;
    let first: Stamped;
    let archive: Buffer;
    const own = new Uint8Array(new X509Certificate(authority.root).raw);
    const make = async (): Promise<Stamped> => {
      const { id } = await makePacket(manager, incident, draftFor('insurer'));
      const { items } = bodyOf<{ items: Stamped[] }>(await manager.get(`/api/incidents/${incident}/packets`));
      return items.find((one) => one.id === id) ?? expect.fail('It is not listed.');
    };
    const take = (packet: Stamped) => archiveOf(manager, incident, packet as never);
    beforeAll(async () => {
      manager = await house().signedIn('manager');
      incident = await plantedIncident(manager, house().now());
      first = await make();
      archive = await take(first);
    });

    it('is had of the authority over the head alone, and OpenSSL verifies it too', async () => {
      expect(first.stamp).toEqual({
        at: expect.stringMatching(/^\d{4}-\d\d-\d\dT/) as string,
        authority: 'Unit 1, Invented Time Authority',
      });
      const files = await readZip(archive);
      const token = files.get('time-stamp.tst') ?? Buffer.of();
      const { size, root } = first.head;
      authority.verify(token, `${size}:${root}`);
      expect(() => authority.verify(token, `${size + 1}:${root}`)).toThrow(/message imprint mismatch/);
      expect(files.get('README.txt')?.toString()).toContain(`printf '%s' ${size}:${root} > head.txt`);
    });

    it('is told with what it rests on, and counts only if its certificate leads to one that is trusted', async () => {
      const open = (await checkZip(archive)).join('\n');
      expect(open).toContain(
        `Unchanged since ${first.stamp?.at} if the certificate of the time stamp is genuine`,
      );
      expect(open).toContain('issued by Invented Root, policy 1.3.6.1.4.1.32473.1');
      expect(open).toContain('Nobody outside is known to have had a head');
      const trusted = (await checkZip(archive, [], [own])).join('\n');
      expect(trusted).toContain('leads to one that you gave');
      expect(trusted).not.toMatch(/genuine|Nobody outside/);
      expect((await checkZip(archive, [], [rootOf('another-root')])).join('\n')).toContain(
        'the certificate of Unit 1, Invented Time Authority leads to none that you gave',
      );
    });

    it('does not fit another head, nor anything that was written over it', async () => {
      const files = await readZip(archive);
      const proof = JSON.parse(files.get('proof.json')?.toString() ?? '') as PacketProof;
      const [stamped] = proof.stamped ?? [];
      if (stamped === undefined) return expect.fail('There is no stamp in the proof.');
      const other = { ...first.head, root: 'ab'.repeat(32) };
      const rows: [object, RegExp][] = [
        [
          { ...stamped, head: other },
          /not the one whose head was stamped[^]*does not count: It is of something else/,
        ],
        [{ ...stamped, token: stamped.token.slice(0, -2) + '00' }, /does not count/],
        [{ ...stamped, token: '' }, /does not count: It cannot be read/],
      ];
      for (const [changed, expected] of rows) {
        const content = Buffer.from(JSON.stringify({ ...proof, stamped: [changed] }));
        const said = await checkZip(await writeZip(new Map([...files, ['proof.json', content]])));
        expect(said.toSorted().join('\n')).toMatch(expected);
      }
    });

    it('of an earlier packet proves a later one, which says itself that none could be had', async () => {
      const elsewhere = createServer((_request, response) => response.end('here'));
      let asked = 0;
      elsewhere.on('request', () => (asked += 1)).listen(0, '127.0.0.1');
      await once(elsewhere, 'listening');
      const { port } = elsewhere.address() as AddressInfo;
      const warned = vi.spyOn(Logger.prototype, 'warn').mockReturnValue(undefined);
      const usual = authority.answer;
      let replay: Buffer = Buffer.of();
      const rows: [answer: TimeAuthority['answer'], why: string][] = [
        [(_query, response) => response.destroy(), 'no-answer'],
        [(_query, response) => response.writeHead(500).end(), 'no-answer'],
        [
          (_query, response) => response.writeHead(302, { location: `http://127.0.0.1:${port}/` }).end(),
          'no-answer',
        ],
        [(query, response) => authority.reply(response, authority.stamp(query), 'text/html'), 'no-answer'],
        [(_query, response) => authority.reply(response, Buffer.alloc(80 * 1024)), 'unfit'],
        [(_query, response) => authority.reply(response, Buffer.from('Dear Sir')), 'unfit'],
        // PKIStatusInfo with rejection(2), as RFC 3161, 2.4.2, and RFC 4210, 5.2.3, write it.
        [(_query, response) => authority.reply(response, Buffer.from('30053003020102', 'hex')), 'refused'],
        [(_query, response) => authority.reply(response, replay), 'unfit'],
      ];
      try {
        for (const [answer, why] of rows) {
          if (rows.at(-1)?.[0] === answer) {
            authority.answer = (query, response) => {
              replay = authority.stamp(query);
              authority.reply(response, replay);
            };
            await make();
          }
          authority.answer = answer;
          expect((await make()).unstamped).toBe(why);
        }
        expect(warned).toHaveBeenCalledTimes(rows.length);
        expect(asked).toBe(0);
        authority.answer = (_query, response) => response.destroy();
        const later = await make();
        const said = await checkZip(await take(later), [], [own]);
        expect(said.join('\n')).toContain(`Unchanged since ${first.stamp?.at}: then Unit 1`);
        expect(said.join('\n')).toContain(
          'No time stamp could be had when it was made: the authority did not answer.',
        );
        expect((await readZip(await take(later))).has('time-stamp.tst')).toBe(false);
      } finally {
        authority.answer = usual;
        warned.mockRestore();
        elsewhere.close();
      }
    });
  },
  { timeStampUrl: authority?.url ?? null },
);
