import type { Response } from 'supertest';
import { beforeAll, expect, it } from 'vitest';
import type { FilledReport } from '../../shared/report/filled-report.js';
import type { KeptNotes, Printed } from '../../src/server/report/report-book.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { bodyOf, DEAD, openIncident, peopleOf, STITCHED, write } from '../follow-up/desk.js';
import { itemOf } from './report-matters.js';
import { readOut, readPdf } from './read-pdf.js';

interface ReportList {
  asOf: string;
  items: (Pick<FilledReport, 'id' | 'vessel' | 'counts' | 'customerWrites'> & {
    duties: { duty: string; outcome: string; dueAt: string | null }[];
  })[];
}
type Report = FilledReport & {
  notesVersion: number;
  printed: Printed[];
  cautions: string[];
  timeZone: string;
};

const OPINION = { text: 'Both looked back.', alcoholOrDrugs: 'no' };

describeHouse('the official reports of an incident', (house) => {
  let manager: Browser;
  let staff: Browser;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
  });

  const hurt = async (): Promise<string> => {
    const { id } = await openIncident(manager, house().now());
    await write(manager, id, 'people', peopleOf({ ...STITCHED, name: 'Zofia Łódźka' }));
    return `/api/incidents/${id}`;
  };
  const report = async (incident: string, id = 'c1.owner'): Promise<Report> =>
    bodyOf<Report>(await manager.get(`${incident}/reports/${id}`).expect(200));
  const writeNotes = (incident: string, version: number, notes: object, id = 'c1.owner') =>
    manager.put(`${incident}/reports/${id}/notes`).set('If-Match', `"${version}"`).send(notes);
  const pdf = (browser: Browser, incident: string, paper = 'c1.owner/worksheet') =>
    browser
      .get(`${incident}/reports/${paper}`)
      .buffer(true)
      .parse((answer, done) => {
        const parts: Buffer[] = [];
        answer.on('data', (part: Buffer) => parts.push(part));
        answer.on('end', () => done(null, Buffer.concat(parts)));
      });
  const pointersOf = ({ body }: Pick<Response, 'body'>): string[] =>
    (body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer);

  it('are listed with how far each is filled in and which duties it answers', async () => {
    const list = bodyOf<ReportList>(await staff.get(`${await hurt()}/reports`).expect(200));
    expect(list.items.map(({ id, customerWrites }) => [id, customerWrites])).toEqual([
      ['c1.owner', false],
      ['c1.operator', true],
    ]);
    for (const { counts } of list.items) expect(counts.answered + counts.unknown + counts.missing).toBe(26);
    // 33 CFR 173.55(a)(2): an injury beyond first aid, reported by the operator, else the owner.
    const federal = list.items[0]?.duties.find(({ duty }) => duty === 'us/accident-report');
    expect(federal).toMatchObject({ outcome: 'required' });
    expect(federal?.dueAt).toMatch(/^\d{4}-/);
  });

  it('say at each section what they still lack, without what anybody said', async () => {
    const answer = await staff.get(`${await hurt()}/report-lacks`).expect(200);
    const { items } = bodyOf<{ items: { section: string; lacks: { item: string; path: string }[] }[] }>(
      answer,
    );
    const craft = items.find(({ section }) => section === 'craft');
    expect(craft?.lacks).toContainEqual(
      expect.objectContaining({ item: '25', path: '/craft/c1/hullNumber' }),
    );
    expect(items.map(({ section }) => section)).toContain('conditions');
  });

  it('tell each item with its lines, for managers and for counsel that was assigned', async () => {
    const incident = await hurt();
    const read = await report(incident);
    expect(itemOf(read, '11')).toMatchObject({ state: 'missing', citation: '33 CFR 173.57(b)(11)' });
    expect(itemOf(read, '11').lines[0]).toMatchObject({
      label: 'Name',
      text: 'Zofia Łódźka',
      state: 'answered',
    });
    expect(read.timeZone).toBe('America/Chicago');
    expect(read.cautions.join(' ')).toMatch(/emergency services first.*Not legal advice/);
    await staff.get(`${incident}/reports/c1.owner`).expect(403);
    const counsel = await house().person('counsel');
    const browser = await house().signedIn(counsel);
    await browser.get(`${incident}/reports/c1.owner`).expect(404);
    await manager.post(`${incident}/counsel`).send({ account: counsel.id }).expect(200);
    await browser.get(`${incident}/reports/c1.owner`).expect(200);
    await browser.get(`${incident}/reports/c1.owner/worksheet`).expect(200);
    await writeNotesAs(browser, incident).expect(403);
  });
  const writeNotesAs = (browser: Browser, incident: string) =>
    browser.put(`${incident}/reports/c1.owner/notes`).set('If-Match', '"0"').send({ opinion: OPINION });

  it('name those that there are for a report that there is not', async () => {
    const answer = await manager.get(`${await hurt()}/reports/c9.owner`).expect(404);
    expect(answer.text).toContain('c1.owner, c1.operator');
  });

  it('take a craft that is linked to the fleet for what the fleet says of it', async () => {
    const details = {
      unitName: 'PWC 31',
      type: 'personal-watercraft',
      hullMaterial: 'fiberglass',
      horsepower: 110,
    };
    const craft = bodyOf<{ id: string }>(await create(manager, '/api/craft', details).expect(201));
    const incident = await hurt();
    const linked = { craft: [{ id: 'c1', ours: true, fleetCraft: craft.id }] };
    await write(manager, incident.slice('/api/incidents/'.length), 'craft', linked);
    const lines = itemOf(await report(incident), '23').lines;
    expect(lines.find(({ label }) => label === 'Construction')).toMatchObject({
      text: 'Fiberglass',
      state: 'answered',
      source: 'the fleet’s own list',
    });
    expect(lines.find(({ label }) => label === 'Horsepower')?.text).toBe('110 hp');
  });

  it('keep who submits, an opinion and what cannot be known beside the record, in versions', async () => {
    const incident = await hurt();
    expect(itemOf(await report(incident), '22').state).toBe('unknown');
    const notes = {
      submitter: { name: 'Mia Torres', address: '1 Dock Road', phone: '903-555-0100' },
      opinion: OPINION,
      notKnown: [{ id: '7', why: 'Nobody measured it.' }],
    };
    const kept = bodyOf<KeptNotes>(await writeNotes(incident, 0, notes).expect(200));
    expect(kept).toMatchObject({ id: 'c1.owner', version: 1, opinion: OPINION });
    expect(kept.opinion?.by).toMatch(/^The manager/);
    const read = await report(incident);
    expect(read.notesVersion).toBe(1);
    expect(itemOf(read, '26').state).toBe('answered');
    expect(itemOf(read, '22').lines[0]?.text).toBe(OPINION.text);
    expect(itemOf(read, '7').state).toBe('unknown');
    await writeNotes(incident, 0, {}).expect(412);
    const { by, at } =
      bodyOf<KeptNotes>(await writeNotes(incident, 1, { opinion: OPINION }).expect(200)).opinion ?? {};
    expect([by, at]).toEqual([kept.opinion?.by, kept.opinion?.at]);
    expect(bodyOf<KeptNotes>(await writeNotes(incident, 2, {}).expect(200)).opinion).toBeUndefined();
    expect(itemOf(await report(incident), '22').state).toBe('unknown');
  });

  it('never hold an opinion that somebody wrote for a customer, nor a note on no item', async () => {
    const incident = await hurt();
    const refused = await writeNotes(incident, 0, { opinion: OPINION }, 'c1.operator').expect(409);
    expect(pointersOf(refused)).toEqual(['/opinion']);
    const unknown = await writeNotes(incident, 0, { notKnown: [{ id: '27', why: 'No such.' }] }).expect(422);
    expect(pointersOf(unknown)).toEqual(['/notKnown/0/id']);
    expect(pointersOf(await writeNotes(incident, 0, { opinion: { text: '' } }).expect(422))).toContain(
      '/opinion/text',
    );
  });

  it('are printed as a tagged PDF, and who printed which content is kept once', async () => {
    const incident = await hurt();
    const answer = await pdf(manager, incident).expect(200);
    expect(answer.headers['content-type']).toBe('application/pdf');
    expect(answer.headers['content-disposition']).toMatch(
      /^inline; filename="report-\d{4}-\d{4}-c1-owner\.pdf"$/,
    );
    const { tags, isTagged, language } = await readPdf(answer.body as Buffer);
    expect([isTagged, language]).toEqual([true, 'en-US']);
    expect(tags.map(readOut).join(' ')).toContain('Zofia Łódźka');
    await pdf(manager, incident).expect(200);
    const [first, ...more] = (await report(incident)).printed;
    expect(first?.content).toMatch(/^[\da-f]{64}$/);
    expect(more).toEqual([]);
    await writeNotes(incident, 0, { submitter: { name: 'Mia Torres' } }).expect(200);
    await pdf(manager, incident).expect(200);
    expect((await report(incident)).printed).toHaveLength(2);
    await pdf(staff, incident).expect(403);
  });

  it('come with a notice for a customer who drove, in two languages, and none for a family that lost somebody', async () => {
    const incident = await hurt();
    const path = `${incident}/reports/c1.operator/notice`;
    const notice = bodyOf<{ notices: { language: string; to: string }[]; recordAt: string }>(
      await staff.get(path).expect(200),
    );
    expect(notice.notices.map(({ language }) => language)).toEqual(['en', 'es']);
    expect(notice.notices[0]?.to).toBe('To Zofia Łódźka (operator of PWC 7)');
    expect(notice.recordAt).toBe(`${incident}/operator-notices`);
    const page = await pdf(staff, incident, 'c1.operator/notice/page?language=es').expect(200);
    expect((await readPdf(page.body as Buffer)).language).toBe('es-US');
    expect((await report(incident, 'c1.operator')).printed).toMatchObject([{ paper: 'notice' }]);
    await staff.get(`${path}/page?language=fr`).expect(422);
    await write(manager, incident.slice('/api/incidents/'.length), 'people', peopleOf(STITCHED, DEAD));
    for (const one of [path, `${path}/page`]) {
      const refused = await staff.get(one).expect(409);
      expect((refused.body as { errors: { code: string }[] }).errors.map(({ code }) => code)).toEqual([
        'BEREAVED',
      ]);
    }
  });
});
