import { beforeAll, expect, it } from 'vitest';
import { RECIPIENTS } from '../../shared/hand-over/hand-over-profile.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { sample } from '../evidence/samples.js';
import { bodyOf, openIncident } from '../follow-up/desk.js';
import { checkZip } from '../hand-over/check-zip.js';
import { archiveOf, draftFor, makePacket } from '../hand-over/packet-desk.js';
import { letter, logRequest } from './request-desk.js';

interface Preview {
  fields: { section: string; path: string; does: string }[];
  files: { id: string; kind: string; does: string }[];
}

describeHouse('what leaves of a request', (house) => {
  let manager: Browser;
  let incident: string;
  let paper: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    incident = (await openIncident(manager, house().now())).id;
    paper = (await upload(manager, incident, sample('photo-with-position.jpg'), { about: {} })).id;
    const elsewhere = letter(house().now(), { papers: [paper] });
    await create(manager, '/api/requests', elsewhere).expect(422);
    await logRequest(manager, letter(house().now(), { incidents: [{ id: incident }], papers: [paper] }));
  });

  it.each(RECIPIENTS)('to %s, by the profile alone', async (recipient) => {
    const draft = draftFor(recipient, { strangers: [{ id: paper, regions: [] }] });
    const answer = await manager.post(`/api/incidents/${incident}/packet-previews`).send(draft).expect(200);
    const { fields, files } = bodyOf<Preview>(answer);
    const of = fields.filter(({ section }) => section === 'requests');
    expect(of.map(({ path }) => path.split('/').at(-1))).toContain('asked');
    const told = new Set([...of, ...files].map(({ does }) => does));
    expect([...told]).toEqual([recipient === 'counsel' ? 'goes' : 'stays']);
    expect(files).toMatchObject([{ id: paper, kind: 'request' }]);
  });

  it('is proven to counsel, also where a request holds what was never known', async () => {
    const strangers = [{ id: paper, regions: [] }];
    const packet = await makePacket(manager, incident, draftFor('counsel', { strangers }));
    const said = (await checkZip(await archiveOf(manager, incident, packet))).join('\n');
    expect(said).toContain('fields of the record are as they were written');
    expect(said).not.toMatch(/does not prove|not as the packet says/);
  });
});
