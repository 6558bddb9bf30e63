import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, type Person } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import { FROM, serverAt } from '../mail/mail-house.js';
import { PostOffice } from '../mail/post-office.js';
import { download, type Link, mailsTo, nextMail } from './link-desk.js';
import {
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

describeHouse(
  'a link to a packet with notes for counsel',
  (house) => {
    let lawyer: Person;
    let manager: Browser;
    let counsel: Browser;
    let incident: string;
    let packet: Packet;
    /** One office serves both suites. */
    let own: string;
    beforeAll(async () => {
      manager = await house().signedIn('manager');
      lawyer = await house().person('counsel');
      counsel = await house().signedIn(lawyer);
      own = `${lawyer.id}@law.example`;
      incident = await plantedIncident(manager, house().now());
      await privilegedNote(manager, incident, lawyer.id);
      packet = await makePacket(manager, incident, draftFor('counsel'));
    });
    const at = () => `/api/incidents/${incident}/packets/${packet.id}`;
    const links = async (): Promise<Link[]> =>
      bodyOf<{ items: Link[] }>(await manager.get(`${at()}/links`).expect(200)).items;
    const send = async (draft: object = {}) => {
      const before = mailsTo(office, own).length;
      const body = { counsel: lawyer.id, address: own, ...draft };
      const answer = await create(manager, `${at()}/counsel-links`, body).expect(201);
      return { link: bodyOf<Link>(answer), ...(await nextMail(office, own, before)) };
    };

    it('goes to the lawyer who said where mail finds them, tells no passcode, and answers as documented', async () => {
      await create(manager, `${at()}/counsel-links`, { counsel: lawyer.id }).expect(422);
      await counsel.put('/api/notice-address').send({ mail: own }).expect(200);
      const { link, mail, at: opens } = await send({ address: undefined });
      expect(link).toMatchObject({ to: lawyer.name, address: own, counselAccount: lawyer.id });
      expect(link).not.toHaveProperty('passcode');
      expect(mail.replaceAll(/\s+/g, ' ')).toContain('sign in there with your own name and password');
      expect(mail).toContain(`${packet.head.size}:${packet.head.root}`);
      expect(mail).not.toContain(PLANTED.privileged);
      const document = bodyOf<object>(await house().browser().get('/api/openapi.json'));
      const ajv = addFormats
        .default(new Ajv2020({ strict: false }))
        .addSchema({ ...document, $id: 'http://desk/' });
      const check = (schema: string, value: unknown): void => {
        const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
        expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
      };
      check('PacketLink', link);
      check('LinkStanding', (await house().browser().get(opens).expect(200)).body);
      check('Collection', (await counsel.get(`${opens}/for-counsel`).expect(200)).body);
    });

    it('is looked at and downloaded by that lawyer, and both stand in the log', async () => {
      const { link, at: opens } = await send();
      const standing = await house().browser().get(opens).expect(200);
      expect(standing.body).toMatchObject({ state: 'open', opensBy: 'sign-in' });
      const looked = await counsel.get(`${opens}/for-counsel`).expect(200);
      expect(looked.body).toMatchObject({ to: lawyer.name, purpose: 'The claim of 13 June' });
      expect(looked.headers['cache-control']).toBe('no-store');
      const bytes = (await download(counsel, `${opens}/for-counsel/archive`).expect(200)).body as Buffer;
      const record = (await readZip(bytes)).get('record.json')?.toString();
      expect(record).toContain(PLANTED.privileged);
      const read = async () => (await links()).find(({ id }) => id === link.id);
      await expect
        .poll(async () => (await read())?.collections.map(({ what }) => what))
        .toEqual(['looked', 'download-began', 'downloaded']);
      const { items } = bodyOf<{ items: Packet[] }>(await manager.get(`/api/incidents/${incident}/packets`));
      expect(items.find(({ id }) => id === packet.id)?.deliveries.at(-1)).toMatchObject({
        to: lawyer.name,
        way: 'collected by link, signed in',
      });
    });

    it('opens for nobody else, whatever they try with the address of the mail', async () => {
      const { link, at: opens } = await send();
      const administrator = await house().signedIn('administrator');
      const otherLawyer = await house().person('counsel');
      await manager.post(`/api/incidents/${incident}/counsel`).send({ account: otherLawyer.id }).expect(200);
      const tries: [who: Browser, status: number][] = [
        [house().browser(), 401],
        [manager, 403],
        [administrator, 403],
        [await house().signedIn('staff'), 403],
        // Assigned as well, and still not the one it was sent to.
        [await house().signedIn(otherLawyer), 403],
      ];
      for (const [who, status] of tries) {
        await who.get(`${opens}/for-counsel`).expect(status);
        await who.get(`${opens}/for-counsel/archive`).expect(status);
        // The doors of a passcode: no word opens them, and no try of one locks the lawyer out.
        for (const passcode of ['', '00000-00000', link.id]) {
          const answer = await who.post(opens).send({ passcode });
          expect([403, 422]).toContain(answer.status);
        }
        await who.get(`${opens}/archive`).expect(403);
      }
      // A permit from a link of one's own opens no other.
      const insurers = await makePacket(manager, incident, draftFor('insurer'));
      const before = mailsTo(office, own).length;
      const mine = bodyOf<Link>(
        await create(manager, `/api/incidents/${incident}/packets/${insurers.id}/links`, {
          to: 'Me',
          address: own,
        }).expect(201),
      );
      const { at: minesAt } = await nextMail(office, own, before);
      await manager.post(minesAt).send({ passcode: mine.passcode }).expect(200);
      await manager.get(`${opens}/archive`).expect(403);
      await manager.get(`${at()}/archive`).expect(403);
      expect((await links()).find(({ id }) => id === link.id)).toMatchObject({
        state: 'open',
        triesLeft: 5,
        collections: [],
      });
      await counsel.get(`${opens}/for-counsel`).expect(200);
    });

    it('shows the notes to nobody who sends it: neither preview, list nor log tells them', async () => {
      const seen = [
        await manager
          .post(`/api/incidents/${incident}/packet-previews`)
          .send(draftFor('counsel'))
          .expect(200),
        await manager.get(`/api/incidents/${incident}/packets`).expect(200),
        await manager.get(`${at()}/links`).expect(200),
        await manager.get(`/api/incidents/${incident}/amendments`).expect(200),
      ];
      for (const { body } of seen) expect(JSON.stringify(body)).not.toContain(PLANTED.privileged);
    });

    it('is sent with no passcode, to no lawyer who is not assigned, and for no packet without notes', async () => {
      const refused: [path: string, body: object, status: number][] = [
        [`${at()}/links`, { to: 'Me', address: own }, 403],
        [`${at()}/counsel-links`, { counsel: (await house().person('counsel')).id, address: own }, 422],
        [`${at()}/counsel-links`, { counsel: (await house().person('manager')).id, address: own }, 422],
        [`${at()}/counsel-links`, { counsel: lawyer.id, address: 'a"b@law.example' }, 422],
        [`${at()}/counsel-links`, { counsel: lawyer.id, address: own, to: 'Me' }, 422],
      ];
      for (const [path, body, status] of refused) await create(manager, path, body).expect(status);
      const { id } = await makePacket(manager, incident, draftFor('insurer'));
      const without = `/api/incidents/${incident}/packets/${id}/counsel-links`;
      await create(manager, without, { counsel: lawyer.id, address: own }).expect(409);
    });

    it('opens no more for a lawyer from whom the incident was taken, and once it was taken back', async () => {
      const { link, at: opens } = await send();
      await manager.delete(`/api/incidents/${incident}/counsel/${lawyer.id}`).expect(204);
      await counsel.get(`${opens}/for-counsel`).expect(404);
      await counsel.get(`${opens}/for-counsel/archive`).expect(404);
      await manager.post(`/api/incidents/${incident}/counsel`).send({ account: lawyer.id }).expect(200);
      await counsel.get(`${opens}/for-counsel`).expect(200);
      await manager.delete(`${at()}/links/${link.id}`).expect(200);
      await counsel.get(`${opens}/for-counsel/archive`).expect(404);
      expect((await house().browser().get(opens).expect(200)).body).toMatchObject({ state: 'revoked' });
    });
  },
  { mail: { kind: 'smtp', from: FROM, server: serverAt(office.port) } },
);
