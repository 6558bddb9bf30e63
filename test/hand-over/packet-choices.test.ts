import { beforeAll, expect, it } from 'vitest';
import { RECIPIENTS } from '../../shared/hand-over/hand-over-profile.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { bodyOf, write } from '../follow-up/desk.js';
import { archiveOf, draftFor, makePacket, PLANTED, plantedIncident, privilegedNote } from './packet-desk.js';
import { textOfZip } from './read-zip.js';

describeHouse('what a packet holds by choice', (house) => {
  let manager: Browser;
  let incident: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    incident = await plantedIncident(manager, house().now());
    await privilegedNote(manager, incident, (await house().person('counsel')).id);
  });

  it('is overridden by a manager with a reason, which is kept, and by nobody else', async () => {
    const choosing = (reason?: string) => ({
      choices: [{ id: 'c1', what: 'medical', does: 'goes', ...(reason === undefined ? {} : { reason }) }],
    });
    const path = `/api/incidents/${incident}/packets`;
    const refused = await create(manager, path, draftFor('renter', choosing())).expect(422);
    expect(JSON.stringify(refused.body)).toContain('/choices/0/reason');
    const administrator = await house().signedIn('administrator');
    await create(administrator, path, draftFor('renter', choosing('They asked.'))).expect(403);
    const packet = await makePacket(manager, incident, draftFor('renter', choosing('They asked.')));
    expect(packet.overrides).toMatchObject([{ what: 'medical', reason: 'They asked.' }]);
    const text = await textOfZip(await archiveOf(manager, incident, packet));
    expect(text).toContain(PLANTED.medical);
    expect(text).not.toContain('They asked.');
    // What the profile leaves to the sender is no override.
    expect((await makePacket(manager, incident, draftFor('insurer', choosing()))).overrides).toEqual([]);
    await create(
      manager,
      path,
      draftFor('insurer', { choices: [{ id: 'c1', what: 'luck', does: 'goes' }] }),
    ).expect(422);
  });

  it('gives privileged notes to nobody but counsel, not even to whoever wrote them', async () => {
    const packet = await makePacket(manager, incident, draftFor('counsel'));
    expect(packet.privileged).toBe(true);
    await manager.get(`/api/incidents/${incident}/packets/${packet.id}/archive`).expect(403);
    const without = { choices: [{ id: 'c1', what: 'privileged', does: 'stays' }] };
    const byHand = await makePacket(manager, incident, draftFor('counsel', without));
    expect(byHand.privileged).toBe(false);
    const opened = await textOfZip(await archiveOf(manager, incident, byHand));
    expect([PLANTED.privileged, PLANTED.medical].map((one) => opened.includes(one))).toEqual([false, true]);
    for (const recipient of RECIPIENTS) {
      const draft = draftFor(recipient, {
        choices: [{ id: 'c1', what: 'privileged', does: 'goes', reason: 'Because.' }],
      });
      const answer = await manager.post(`/api/incidents/${incident}/packet-previews`).send(draft).expect(200);
      expect(answer.text).not.toContain(PLANTED.privileged);
      if (recipient === 'counsel') continue;
      const made = await makePacket(manager, incident, draft);
      expect(await textOfZip(await archiveOf(manager, incident, made))).not.toContain(PLANTED.privileged);
    }
  });

  it('names texts that may tell what stays, to be read or held back, and keeps which were read', async () => {
    const entries = [
      { id: 't1', what: 'She got stitches at ten.' },
      { id: 't2', what: 'She vomited on the dock.' },
    ];
    await write(manager, incident, 'timeline', { entries });
    const preview = async (more: object) => {
      const path = `/api/incidents/${incident}/packet-previews`;
      const answer = await manager.post(path).send(draftFor('insurer', more)).expect(200);
      return bodyOf<{ cautions: object[] }>(answer).cautions;
    };
    const of = (id: string, said: string) => {
      return { section: 'timeline', path: `/entries/${id}/what`, tells: 'medical', said };
    };
    expect(await preview({})).toEqual([of('t1', 'stitches'), of('t2', 'vomited')]);
    const first = 'timeline:/entries/t1/what';
    const choices = [{ id: 'c1', what: first, does: 'stays' }];
    expect(await preview({ choices })).toEqual([of('t2', 'vomited')]);
    expect(await preview({ choices: [{ id: 'c1', what: 'medical', does: 'goes' }] })).toEqual([]);
    const packet = await makePacket(manager, incident, draftFor('insurer', { read: [first] }));
    expect(packet.cautions.map(({ what, read }) => [what, read])).toEqual([
      [first, true],
      ['timeline:/entries/t2/what', false],
    ]);
    const held = await makePacket(manager, incident, draftFor('insurer', { choices }));
    expect(await textOfZip(await archiveOf(manager, incident, held))).not.toContain('stitches');
  });

  it('is shown item by item before it is made', async () => {
    const answer = await manager
      .post(`/api/incidents/${incident}/packet-previews`)
      .send(draftFor('insurer'))
      .expect(200);
    const { fields } = bodyOf<{ fields: { path: string; does: string; reason: string }[] }>(answer);
    const of = (path: string) => fields.find((one) => one.path === path);
    expect(of('/people/p1/hospital')).toMatchObject({
      does: 'stays',
      reason: expect.stringContaining('choose') as string,
    });
    expect(of('/people/p1/birthDate')).toMatchObject({
      does: 'goes',
      reason: expect.stringContaining('1395y') as string,
    });
  });
});
