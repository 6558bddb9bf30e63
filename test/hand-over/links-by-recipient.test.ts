import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { bodyOf, write } from '../follow-up/desk.js';
import { FROM, serverAt } from '../mail/mail-house.js';
import { PostOffice } from '../mail/post-office.js';
import { download, type Link, mailsTo, nextMail } from './link-desk.js';
import { draftFor, makePacket, PLANTED, plantedIncident } from './packet-desk.js';
import { readZip } from './read-zip.js';

const PHOTO = readFileSync('fixtures/evidence/photo-with-position.jpg');
const OTHER_WORDS = 'She turned before the buoy xq';

const office = await PostOffice.open();
afterAll(() => office.close());

interface Shown {
  sections: Record<string, Record<string, unknown>>;
  attachments: Record<string, { files?: { id: string }[] }>;
}

describeHouse(
  'what a link brings',
  (house) => {
    let manager: Browser;
    let incident: string;
    let filed: string;
    let other: string;
    beforeAll(async () => {
      manager = await house().signedIn('manager');
      incident = await plantedIncident(manager, house().now());
      const statements = [
        { id: 's1', person: 'p1', name: 'Ann Lee', words: PLANTED.statement },
        { id: 's2', person: 'p2', name: PLANTED.child, words: OTHER_WORDS },
      ];
      await write(manager, incident, 'statements', { statements });
      await write(manager, incident, 'conditions', {
        weather: { value: 'Clear sky', known: 'told', by: 'Ann Lee' },
      });
      const about = { people: [] };
      filed = (await upload(manager, incident, PHOTO, { name: 'filed.jpg', about })).id;
      const twin = Buffer.concat([PHOTO, Buffer.of(0)]);
      other = (await upload(manager, incident, twin, { name: 'dock.jpg', about })).id;
      const { items } = bodyOf<{ items: { duty: string; vessel: string | null }[] }>(
        await manager.get(`/api/incidents/${incident}/duties`).expect(200),
      );
      const owed = items.find(({ duty }) => /^us-..\/accident-report$/.test(duty));
      if (owed === undefined) return expect.fail('There is no report to file.');
      await create(manager, `/api/incidents/${incident}/filings`, {
        ...{ form: 'report', at: house().now(), way: 'online', to: 'The agency', filedBy: 'owner' },
        ...{ filer: 'The manager', copy: filed, jurisdiction: owed.duty.slice(0, 5) },
        satisfies: [{ duty: owed.duty, vessel: owed.vessel }],
      }).expect(201);
    });

    /** Makes a packet, sends its link, and collects it as whoever was sent it. */
    const collected = async (recipient: 'agency' | 'renter', more: object, language?: 'es') => {
      const { id } = await makePacket(manager, incident, draftFor(recipient, more));
      const address = `${recipient}@outside.example`;
      const before = mailsTo(office, address).length;
      const links = `/api/incidents/${incident}/packets/${id}/links`;
      const body = { to: 'Whoever', address, ...(language && { language }) };
      const { passcode } = bodyOf<Link>(await create(manager, links, body).expect(201));
      const { mail, at } = await nextMail(office, address, before);
      const stranger = house().browser();
      await stranger.post(at).send({ passcode }).expect(200);
      const files = await readZip((await download(stranger, `${at}/archive`).expect(200)).body as Buffer);
      const record = JSON.parse(files.get('record.json')?.toString() ?? '') as Shown;
      return { mail, record, evidence: (record.attachments['evidence']?.files ?? []).map((one) => one.id) };
    };
    const strangers = () => [filed, other].map((id) => ({ id, regions: [] }));

    it('an agency is the report that was filed, and what it asked for', async () => {
      const plain = await collected('agency', { strangers: strangers() });
      expect(plain.evidence).toEqual([filed]);
      expect(Object.keys(plain.record.sections)).toEqual([]);
      const choices = [{ id: 'c1', what: 'conditions', does: 'goes', reason: 'They asked on 20 June.' }];
      const asked = await collected('agency', { strangers: strangers(), choices });
      expect(asked.evidence).toEqual([filed]);
      expect(Object.keys(asked.record.sections)).toEqual(['conditions']);
    });

    it('a renter is their own agreement and statement, and nothing of anybody else, in a mail in Spanish', async () => {
      const { mail, record, evidence } = await collected(
        'renter',
        { person: 'p1', strangers: strangers() },
        'es',
      );
      expect(mail).toContain('Se abre con una clave');
      expect(Object.keys(record.sections).toSorted()).toEqual(['people', 'rental', 'statements']);
      expect(record.sections['rental']).toMatchObject({ agreement: PLANTED.pattern });
      const said = JSON.stringify(record);
      expect(said).toContain(PLANTED.statement);
      for (const words of [OTHER_WORDS, PLANTED.child, PLANTED.medical, PLANTED.birthDate, 'p2'])
        expect(said).not.toContain(words);
      expect(evidence).toEqual([]);
    });
  },
  { mail: { kind: 'smtp', from: FROM, server: serverAt(office.port) } },
);
