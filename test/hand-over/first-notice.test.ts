import { randomUUID } from 'node:crypto';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, expect, it } from 'vitest';
import { HAND_OVER_SCHEMAS } from '../../src/server/hand-over/hand-over.api.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { sha256 } from '../evidence/evidence-desk.js';
import { bodyOf, write } from '../follow-up/desk.js';
import { readPdf, tagsCalled } from '../report/read-pdf.js';
import { PLANTED, plantedIncident } from './packet-desk.js';

interface Notices {
  policies: {
    id: string;
    number: string;
    craft: string[];
    claim: { number: string; adjuster: string } | null;
  }[];
  uncovered: string[];
  notices: { id: string; by: { person: string }; sha256: string; size: number }[];
  claims: object[];
}

const told = (value: unknown) => ({ value, known: 'told', by: 'Ann Lee' });

describeHouse('a first notice', (house) => {
  let manager: Browser;
  let incident: string;
  let policy: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const administrator = await house().signedIn('administrator');
    const craftOf = async (unitName: string): Promise<string> =>
      bodyOf<{ id: string }>(
        await create(administrator, '/api/craft', { unitName, type: 'personal-watercraft' }).expect(201),
      ).id;
    const [seven, nine] = [await craftOf('PWC 7'), await craftOf('PWC 9')];
    const policyOf = async (number: string, firstDay: string, lastDay: string): Promise<string> =>
      bodyOf<{ id: string }>(
        await create(administrator, '/api/policies', {
          ...{ number, insurer: 'Prairie Shore Mutual', firstDay, lastDay, scheduledCraft: [seven] },
          noticeTerms: 'As soon as possible; no repair before inspection.',
        }).expect(201),
      ).id;
    policy = await policyOf('LK-33010', '2020-01-01', '2040-01-01');
    await policyOf('OLD-1', '2019-01-01', '2019-12-31');
    incident = await plantedIncident(manager, house().now());
    await write(manager, incident, 'craft', {
      craft: [
        { id: 'c1', ours: true, fleetCraft: seven, name: 'PWC 7', hullNumber: told('ZZB00043C626') },
        { id: 'c2', ours: true, fleetCraft: nine, name: 'PWC 9' },
        { id: 'c3', ours: false, name: 'A pontoon boat' },
      ],
    });
  });

  const path = (more: string): string => `/api/incidents/${incident}/${more}`;
  const draft = () => ({
    policy,
    seenAt: 'South dock, slip 4',
    callName: 'Mia Torres',
    callNumber: '903-555-0102',
  });
  const listed = async (): Promise<Notices> =>
    bodyOf<Notices>(await manager.get(path('first-notices')).expect(200));
  const paperOf = async (id: string): Promise<Buffer> => {
    const answer = await manager
      .get(path(`first-notices/${id}/paper`))
      .buffer(true)
      .parse((from, done) => {
        const parts: Buffer[] = [];
        from.on('data', (part: Buffer) => parts.push(part));
        from.on('end', () => done(null, Buffer.concat(parts)));
      })
      .expect(200);
    return answer.body as Buffer;
  };
  const made = async (key: string = randomUUID()): Promise<{ id: string }> =>
    bodyOf<{ id: string }>(await create(manager, path('first-notices'), draft(), key).expect(201));

  it('is asked for each policy that held on the day, and names our craft under none', async () => {
    const answer = await manager.get(path('first-notices')).expect(200);
    const { policies, uncovered } = bodyOf<Notices>(answer);
    expect(policies.map(({ number, craft }) => [number, craft])).toEqual([['LK-33010', ['PWC 7']]]);
    expect(uncovered).toEqual(['PWC 9']);
    const validate = addFormats
      .default(new Ajv2020({ strict: false }))
      .compile(HAND_OVER_SCHEMAS['FirstNotices'] as object);
    expect([validate(answer.body), validate.errors]).toEqual([true, null]);
  });

  it('is one tagged page with what an insurer asks first, and without what it does not get', async () => {
    const paper = await paperOf((await made()).id);
    const pdf = await readPdf(paper);
    const text = pdf.texts.join(' ');
    expect([pdf.pages, pdf.isTagged, pdf.labels.length]).toEqual([1, true, 1]);
    expect(tagsCalled('H2', pdf.tags).map((tag) => tag.text)).toEqual([
      'Policy',
      'What happened',
      'Who is hurt',
      'Craft scheduled in the policy',
      'Clocks, and whom to call',
    ]);
    for (const words of [
      ...['LK-33010', '1 January 2020 to 1 January 2040', 'Ann Lee', 'Injured; 39 years old', 'ZZB00043C626'],
      ...['2 listed: 1 hurt, 1 unhurt, 0 not known yet. The list may not be whole.', 'South dock, slip 4'],
      ...['Mia Torres, 903-555-0102', 'no repair before inspection', 'PWC 7: not known yet'],
    ])
      expect(text).toContain(words);
    expect(text).not.toContain(PLANTED.medical);
    expect(text).not.toContain('PWC 9');
    const kept = (await listed()).notices.at(-1);
    expect(kept).toMatchObject({ sha256: sha256(paper), size: paper.length });
  });

  it('stays one page however much there is, and calls nobody unhurt of whom it is not known', async () => {
    const people = Array.from({ length: 30 }, (_, place) => ({
      id: `p${place + 1}`,
      name: `Person Number ${place + 1} With A Rather Long Name`,
      ...(place < 20
        ? { outcome: told('injured'), injuries: [{ id: 'i1', nature: told('x'.repeat(400)) }] }
        : {}),
    }));
    await write(manager, incident, 'people', { people });
    await write(manager, incident, 'account', { whatHappened: told('They met. '.repeat(500)) });
    const pdf = await readPdf(await paperOf((await made()).id));
    expect(pdf.pages).toBe(1);
    const text = pdf.texts.join(' ');
    expect(text).toContain('30 listed: 20 hurt, 0 unhurt, 10 not known yet.');
    expect(text).toContain('14 more who are hurt');
    expect(text).toContain('… (the whole follows)');
    expect(text).toContain('Mia Torres, 903-555-0102');
  });

  it('is made once for one key, and refused for a policy that did not hold', async () => {
    const key = randomUUID();
    expect((await made(key)).id).toBe((await made(key)).id);
    const before = (await listed()).notices.length;
    await create(manager, path('first-notices'), { ...draft(), policy: randomUUID() }).expect(422);
    expect((await listed()).notices).toHaveLength(before);
  });

  it('keeps what the insurer calls its claim, the latest standing and the earlier ones listed', async () => {
    await manager.post(path('claims')).send({ policy }).expect(422);
    await manager.post(path('claims')).send({ policy, number: 'C-88' }).expect(200);
    await manager.post(path('claims')).send({ policy, number: 'C-88-2041', adjuster: 'R. Vale' }).expect(200);
    const { policies, claims, notices } = await listed();
    expect(policies[0]?.claim).toMatchObject({ number: 'C-88-2041', adjuster: 'R. Vale' });
    expect(claims).toHaveLength(2);
    // What was written before in the same section is still there.
    expect(notices.length).toBeGreaterThan(0);
  });
});
