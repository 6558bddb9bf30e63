import { beforeAll, expect, it } from 'vitest';
import { type Browser, change, create, describeHouse } from '../accounts/house.js';
import { bodyOf, evidenceOf, upload } from '../evidence/evidence-desk.js';
import { sample } from '../evidence/samples.js';
import { IncidentCase, operatorOf, peopleWith, told } from './incident-case.js';

const FEDERAL = 'us/accident-report';
const LISTS = [
  'evidence',
  'custody',
  'outside-evidence',
  'decisions',
  'operator-notices',
  'filings',
  'legal-calls',
];
const STITCHED = operatorOf('PWC-7', { outcome: told('injured'), care: told('beyond-first-aid') });
const PHOTO = sample('photo-with-position.jpg');

describeHouse('evidence, things, decisions and filings as of a moment', (house) => {
  let manager: Browser;
  let staff: Browser;
  let one: IncidentCase;
  /** Before anything, after the first words, and after they were changed. */
  let moments: [before: string, first: string, later: string];
  let photo: string;

  const listed = async (list: string, at?: string, browser = manager): Promise<object[]> => {
    const query = at === undefined ? '' : `?at=${at}`;
    const { items, files } = bodyOf<{ items?: object[]; files?: object[] }>(
      await browser.get(`/api/incidents/${one.id}/${list}${query}`).expect(200),
    );
    return items ?? files ?? [];
  };
  /** Now, and then a minute passes. */
  const moment = (): string => {
    house().letPass(60_000);
    const now = house().now();
    house().letPass(60_000);
    return now;
  };

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
    one = await IncidentCase.quietGrounding(manager, house().now());
    const before = moment();
    photo = (await upload(staff, one.id, PHOTO, { name: 'bow.jpg', about: { caption: 'The bow' } })).id;
    const bare = (await upload(staff, one.id, PHOTO)).id;
    const item = bodyOf(
      await create(staff, `/api/incidents/${one.id}/custody`, { what: 'Lanyard' }).expect(201),
    );
    const outside = bodyOf(
      await create(staff, `/api/incidents/${one.id}/outside-evidence`, {
        kind: 'dock-camera',
        state: 'not-asked',
      }).expect(201),
    );
    await one.sign(FEDERAL, { kind: 'no-report' });
    const first = moment();
    await change(staff, `${evidenceOf(one.id)}/${photo}`, 1, {
      about: { caption: 'The stern' },
      reason: 'Looked again.',
    }).expect(200);
    await create(staff, `/api/incidents/${one.id}/custody/${item.id}/hand-overs`, {
      from: 'Ana',
      to: 'Pike',
      at: before,
      why: 'Asked for it',
    }).expect(201);
    await staff
      .put(`/api/incidents/${one.id}/outside-evidence/${outside.id}`)
      .set('If-Match', '"1"')
      .send({ kind: 'dock-camera', state: 'asked' })
      .expect(200);
    const notice = { vessel: 'PWC-7', at: before, told: 'yes', toldBy: 'Sam', way: 'in person' };
    await create(staff, `/api/incidents/${one.id}/operator-notices`, {
      ...notice,
      saysFiled: 'unknown',
    }).expect(201);
    moments = [before, first, moment()];
    expect(bare).not.toBe(photo);
  });

  it('shows what there was then, in the words of then, and in the order of then', async () => {
    const [before, first, later] = moments;
    for (const list of LISTS) {
      expect([list, await listed(list, before)]).toEqual([list, []]);
      // As of now it is what stands.
      expect([list, await listed(list, later)]).toEqual([list, await listed(list)]);
    }
    expect(await listed('evidence', first)).toMatchObject([{ about: { caption: 'The bow' } }, { about: {} }]);
    expect(await listed('evidence')).toMatchObject([{ about: { caption: 'The stern' } }, {}]);
    const [item] = await listed('custody', first);
    expect(item).toMatchObject({ what: 'Lanyard', version: 1 });
    expect(item).not.toHaveProperty('handOvers');
    expect(await listed('custody')).toMatchObject([{ handOvers: [{ to: 'Pike' }] }]);
    expect(await listed('outside-evidence', first)).toMatchObject([{ state: 'not-asked' }]);
    expect(await listed('operator-notices', first)).toEqual([]);
    expect(await listed('operator-notices')).toMatchObject([{ toldBy: 'Sam' }]);
    expect(await listed('decisions', first)).toMatchObject([{ duty: FEDERAL, kind: 'no-report' }]);
  });

  it('shows nobody what is restricted now, and nothing of what was withdrawn since', async () => {
    const [, first] = moments;
    expect(await listed('evidence', first, staff)).toHaveLength(2);
    await change(manager, `${evidenceOf(one.id)}/${photo}`, 2, {
      about: { caption: 'The stern', restricted: true },
      reason: 'Shows somebody who was hurt.',
    }).expect(200);
    expect(await listed('evidence', first, staff)).toHaveLength(1);
    expect(await listed('evidence', first)).toHaveLength(2);
    await manager
      .post(`${evidenceOf(one.id)}/${photo}/withdrawal`)
      .send({ reason: 'Of another family', counsel: 'J. Vance', directedOn: '2026-06-20' })
      .expect(200);
    const [then] = await listed('evidence', first);
    expect(then).toMatchObject({
      id: photo,
      about: {},
      withdrawn: { reason: 'Of another family' },
      previews: [],
    });
    expect(JSON.stringify(await listed('evidence', first))).not.toContain('The bow');
  });

  it('shows what was determined and held then', async () => {
    const asOf = async (what: string, at: string, status = 200): Promise<unknown> =>
      (await manager.get(`/api/incidents/${one.id}/${what}?at=${at}`).expect(status)).body as unknown;
    const [before] = moments;
    const federal = (outcome: string) => ({
      determination: {
        duties: expect.arrayContaining([expect.objectContaining({ id: FEDERAL, outcome })]) as object[],
      },
    });
    const quiet = moment();
    // Treatment beyond first aid (33 CFR 173.55(a)(2)); it also begins a hold.
    await one.write('people', peopleWith([STITCHED]));
    const hurt = moment();
    expect(await asOf('determination', '2020-01-01T00:00:00Z', 404)).toMatchObject({ status: 404 });
    expect(await asOf('determination', quiet)).toMatchObject(federal('not-required'));
    expect(await asOf('determination', hurt)).toMatchObject(federal('required'));
    const now = await manager.get(`/api/incidents/${one.id}/determination`).expect(200);
    expect(await asOf('determination', hurt)).toEqual(now.body);
    expect(await asOf('holds', before)).toEqual({ held: false, holds: [], withdrawals: [] });
    expect(await asOf('holds', quiet)).toMatchObject({ held: false, holds: [] });
    expect(await asOf('holds', hurt)).toMatchObject({ held: true, holds: [{ cause: 'beyond-first-aid' }] });
  });

  it('names what is no moment', async () => {
    for (const list of [...LISTS, 'determination', 'holds']) {
      const answer = await manager.get(`/api/incidents/${one.id}/${list}?at=yesterday`).expect(422);
      expect(answer.body).toMatchObject({ source: 'query', errors: [{ pointer: '/at' }] });
    }
  });
});
