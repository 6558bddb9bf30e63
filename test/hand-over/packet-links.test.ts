import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Browser, create, DAY, describeHouse, type Person } from '../accounts/house.js';
import { finish, sendPiece, startUpload } from '../evidence/evidence-desk.js';
import { bodyOf } from '../follow-up/desk.js';
import { FROM, serverAt } from '../mail/mail-house.js';
import { PostOffice } from '../mail/post-office.js';
import { download, type Link, mailsTo as mailsIn, nextMail } from './link-desk.js';
import { checkZip } from './check-zip.js';
import {
  archiveOf,
  draftFor,
  makePacket,
  type Packet,
  PLANTED,
  plantedIncident,
  privilegedNote,
} from './packet-desk.js';
import { readZip } from './read-zip.js';

const office = await PostOffice.open();
afterAll(() => office.close());
const CLAIMS = { to: 'Kim Ortega, Red River Marine', address: 'claims@insurer.example' };
const PHOTO = 'fixtures/evidence/photo-with-position.jpg';
const WRONG = { passcode: '00000-00000' };

describeHouse(
  'a link to a packet',
  (house) => {
    let sender: Person;
    let manager: Browser;
    let incident: string;
    let packet: Packet;
    /** One office serves both suites. */
    let own: string;
    beforeAll(async () => {
      sender = await house().person('manager');
      manager = await house().signedIn(sender);
      own = `${sender.id}@rental.example`;
      await manager.put('/api/notice-address').send({ mail: own }).expect(200);
      incident = await plantedIncident(manager, house().now());
      packet = await makePacket(manager, incident, draftFor('insurer'));
    });
    const links = () => `/api/incidents/${incident}/packets/${packet.id}/links`;
    const mailsTo = (address: string) => mailsIn(office, address);
    /** Makes one, and gives what its mail and its sender say. */
    const send = async (more: object = {}): Promise<{ link: Link; at: string; mail: string }> => {
      const before = mailsTo(CLAIMS.address).length;
      const link = bodyOf<Link>(await create(manager, links(), { ...CLAIMS, ...more }).expect(201));
      return { link, ...(await nextMail(office, CLAIMS.address, before)) };
    };
    const read = async (id: string): Promise<Link> => {
      const { items } = bodyOf<{ items: Link[] }>(await manager.get(links()).expect(200));
      return items.find((one) => one.id === id) ?? expect.fail('The link is not listed.');
    };

    it('goes by mail, with the head and without a word of the record, and keeps no secret', async () => {
      const { link, at, mail } = await send();
      expect(mail).toContain(`${packet.head.size}:${packet.head.root}`);
      for (const words of [link.passcode, ...Object.values(PLANTED), 'claim', 'Ann Lee']) {
        expect(mail.split('\r\n\r\n').slice(1).join()).not.toContain(words);
      }
      const token = at.split('/').at(-1) ?? '';
      const sent = async () => JSON.stringify(await house().plainSql('SELECT * FROM mail'));
      await expect.poll(sent).toContain('/collect/(sent)');
      const kept = JSON.stringify([
        await house().plainSql('SELECT * FROM packet_link'),
        await house().plainSql('SELECT * FROM mail'),
        await house().plainSql('SELECT * FROM incident_section'),
      ]);
      expect(kept).not.toContain(token);
      expect(kept).not.toContain(link.passcode);
      expect((await send({ head: 'no' })).mail).not.toContain(packet.head.root);
    });

    it('answers as the OpenAPI document says', async () => {
      const document = bodyOf<object>(await house().browser().get('/api/openapi.json'));
      const ajv = addFormats
        .default(new Ajv2020({ strict: false }))
        .addSchema({ ...document, $id: 'http://desk/' });
      const check = (schema: string, value: unknown): void => {
        const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
        expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
      };
      const { link, at } = await send();
      check('PacketLinkSent', link);
      check('LinkStanding', (await house().browser().get(at)).body);
      check('Collection', (await house().browser().post(at).send({ passcode: link.passcode })).body);
      check('PacketLink', (await manager.delete(`${links()}/${link.id}`)).body);
      check('PacketLinkList', (await manager.get(links())).body);
    });

    it('shows a retry no passcode, and makes nothing twice', async () => {
      const key = 'key-of-a-link-0001';
      const before = mailsTo(CLAIMS.address).length;
      const first = bodyOf<Link>(await create(manager, links(), CLAIMS, key).expect(201));
      const again = bodyOf<Link>(await create(manager, links(), CLAIMS, key).expect(201));
      expect([again.id, again.passcode]).toEqual([first.id, null]);
      await expect.poll(() => mailsTo(CLAIMS.address).length).toBe(before + 1);
    });

    it('tells who sent what, why and until when, and every look and download stands in the log', async () => {
      const { link, at } = await send();
      const stranger = house().browser();
      await stranger.get(`${at}/archive`).expect(403);
      const wrong = await stranger.post(at).send(WRONG).expect(403);
      expect(JSON.stringify(wrong.body)).toContain('4 tries are left');
      const passcode = ` ${link.passcode.toUpperCase().replace('-', ' ')}`;
      const looked = await stranger.post(at).send({ passcode }).expect(200);
      expect(looked.headers).toMatchObject({
        'cache-control': 'no-store',
        'x-robots-tag': 'noindex, nofollow',
        'referrer-policy': 'no-referrer',
      });
      expect(looked.body).toMatchObject({
        sender: sender.name,
        to: CLAIMS.to,
        purpose: 'The claim of 13 June',
      });
      expect(looked.body).toMatchObject({ head: packet.head });
      const files = await readZip((await download(stranger, `${at}/archive`).expect(200)).body as Buffer);
      expect([...files.keys()]).toContain('manifest.json');
      await expect.poll(async () => (await read(link.id)).collectedAt).not.toBeNull();
      expect((await read(link.id)).collections.map(({ what }) => what)).toEqual([
        'looked',
        'download-began',
        'downloaded',
      ]);
      const { items } = bodyOf<{ items: Packet[] }>(await manager.get(`/api/incidents/${incident}/packets`));
      expect(items.find(({ id }) => id === packet.id)?.deliveries).toMatchObject([{ to: CLAIMS.to }]);
      await expect.poll(() => mailsTo(own).at(-1)?.text).toContain('a packet was collected');
      await download(stranger, `${at}/archive`).expect(200);
      await expect.poll(async () => (await read(link.id)).collections.length).toBe(5);
      expect(mailsTo(own).filter(({ text }) => text.includes('was collected'))).toHaveLength(1);
    });

    it('notes that the mail server took the head, as less than a delivery, and more once it was collected', async () => {
      const other = await plantedIncident(manager, house().now());
      const at = `/api/incidents/${other}/packets`;
      const sendTo = async (name: string, head: 'yes' | 'no') => {
        const { id } = await makePacket(manager, other, draftFor('insurer', { name }));
        const before = mailsTo(CLAIMS.address).length;
        const link = bodyOf<Link>(await create(manager, `${at}/${id}/links`, { ...CLAIMS, to: name, head }));
        return { id, link, ...(await nextMail(office, CLAIMS.address, before)) };
      };
      const silent = await sendTo('Prairie Shore', 'no');
      const first = await sendTo('Red River', 'yes');
      const mailed = async ({ id }: { id: string }) =>
        bodyOf<{ items: (Link & { mailing: { answer: string } | null })[] }>(
          await manager.get(`${at}/${id}/links`),
        ).items[0]?.mailing;
      await expect.poll(async () => (await mailed(first))?.answer).toContain('Taken as number 17');
      expect(await mailed(silent)).toBeNull();
      const said = async () => {
        const later = await makePacket(manager, other, draftFor('insurer', { name: 'Red River' }));
        return (await checkZip(await archiveOf(manager, other, later))).join('\n');
      };
      const mailedOnly = await said();
      expect(mailedOnly).toContain('mail server took a mail with its head for Red River');
      expect(mailedOnly).toContain('Nobody outside is known to have had a head of this log before');
      expect(mailedOnly).not.toMatch(/Unchanged since|Prairie Shore/);
      const stranger = house().browser();
      await stranger.post(first.at).send({ passcode: first.link.passcode }).expect(200);
      await download(stranger, `${first.at}/archive`).expect(200);
      await expect.poll(said).toMatch(/Unchanged since .* received by Red River, as the sender says/);
      expect(await said()).not.toContain('mail server took');
    });

    it('counts a download that breaks off as begun and not as collected, and begins it anew', async () => {
      // Larger than what lies between two sockets of one machine, so that the service notices.
      const photo = Buffer.concat([readFileSync(PHOTO), Buffer.alloc(16 * 1024 * 1024)]);
      const PIECE = 4 * 1024 * 1024;
      const file = await startUpload(manager, incident, photo.length, {
        name: 'dock.jpg',
        about: { people: [] },
      });
      for (let from = 0; from < photo.length; from += PIECE) {
        await sendPiece(manager, incident, file, from, photo.subarray(from, from + PIECE)).expect(204);
      }
      await finish(manager, incident, file).expect(201);
      const draft = draftFor('insurer', { strangers: [{ id: file, regions: [] }] });
      packet = await makePacket(manager, incident, draft);
      const { link, at } = await send();
      const stranger = house().browser();
      const looked = await stranger.post(at).send({ passcode: link.passcode }).expect(200);
      const [cookie = ''] = (looked.headers['set-cookie'] as unknown as string[]).map(
        (one) => one.split(';')[0],
      );
      await house().app.listen(0, '127.0.0.1');
      const { port } = house().app.getHttpServer().address() as AddressInfo;
      const asking = get({ port, host: '127.0.0.1', path: `${at}/archive`, headers: { cookie } });
      const [answer] = (await once(asking, 'response')) as [IncomingMessage];
      await once(answer, 'data');
      answer.destroy();
      const whole = (await download(stranger, `${at}/archive`).expect(200)).body as Buffer;
      expect(whole.length).toBeGreaterThan(photo.length);
      await expect
        .poll(async () => (await read(link.id)).collections.map(({ what }) => what))
        .toEqual(['looked', 'download-began', 'download-began', 'downloaded']);
    });

    it('locks after five wrong passcodes, however many come at one instant, and tells the sender', async () => {
      const { link, at } = await send();
      const tries = Array.from({ length: 12 }, () => house().browser().post(at).send(WRONG));
      const answers = await Promise.all(tries);
      expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([403]));
      const { passcode } = link;
      const right = await house().browser().post(at).send({ passcode }).expect(403);
      expect(JSON.stringify(right.body)).toContain('locked');
      expect(await read(link.id)).toMatchObject({ state: 'locked', triesLeft: 0 });
      expect((await house().browser().get(at)).body).toMatchObject({ state: 'locked', triesLeft: 0 });
      expect((await read(link.id)).collections.map(({ what }) => what)).toEqual(['locked']);
      await expect.poll(() => mailsTo(own).at(-1)?.text).toContain('is locked');
    });

    it('opens no more once it was taken back, also for whoever gave the passcode before', async () => {
      const { link, at } = await send();
      const stranger = house().browser();
      await stranger.post(at).send({ passcode: link.passcode }).expect(200);
      const revoked = bodyOf<Link>(await manager.delete(`${links()}/${link.id}`).expect(200));
      expect(revoked.state).toBe('revoked');
      expect((await stranger.get(at)).body).toMatchObject({ state: 'revoked', opensBy: 'passcode' });
      await stranger.get(`${at}/archive`).expect(404);
      await stranger.post(at).send({ passcode: link.passcode }).expect(404);
      await manager.delete(`${links()}/${link.id}`).expect(200);
      await manager.delete(`${links()}/no-such-link`).expect(404);
    });

    it('opens nothing where it was cut off, and is not sent for what counsel alone takes out', async () => {
      const cut = await house().browser().post('/api/collections/no-such-token').send(WRONG).expect(404);
      expect(JSON.stringify(cut.body)).toContain('cut off');
      await house().browser().get('/api/collections/no-such-token').expect(404);
      await create(manager, links(), { ...CLAIMS, days: 31 }).expect(422);
      await create(manager, links(), { to: 'Kim', address: 'a"b@insurer.example' }).expect(422);
      const { id } = await house().person('counsel');
      await privilegedNote(manager, incident, id);
      const { id: privileged } = await makePacket(manager, incident, draftFor('counsel'));
      await create(manager, `/api/incidents/${incident}/packets/${privileged}/links`, CLAIMS).expect(403);
    });

    it('expires', async () => {
      const { link, at } = await send({ days: 2 });
      house().letPass(2 * DAY);
      manager = await house().signedIn(sender);
      const late = await house().browser().post(at).send({ passcode: link.passcode }).expect(404);
      expect(JSON.stringify(late.body)).toContain('has expired');
      expect((await read(link.id)).state).toBe('expired');
      expect((await house().browser().get(at)).body).toMatchObject({ state: 'expired' });
    });
  },
  { mail: { kind: 'smtp', from: FROM, server: serverAt(office.port) } },
);
