import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { IncidentCase, operatorOf, peopleWith, told } from '../decision/incident-case.js';

interface Clock {
  incident: string;
  reference: string;
  craft: string[];
  duty: string;
  outcome: string;
  dueAt: string | null;
  overdue: boolean;
}

const HOUR_MS = 3_600_000;
const STITCHED = operatorOf('PWC-7', { outcome: told('injured'), care: told('beyond-first-aid') });

describeHouse('the clocks of all incidents', (house) => {
  let manager: Browser;
  let quiet: IncidentCase;
  let hurt: IncidentCase;
  let longAgo: IncidentCase;

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const hoursAgo = (hours: number) => new Date(Date.parse(house().now()) - hours * HOUR_MS).toISOString();
    quiet = await IncidentCase.quietGrounding(manager, hoursAgo(1));
    hurt = await IncidentCase.quietGrounding(manager, hoursAgo(1));
    await hurt.write('people', peopleWith([STITCHED]));
    longAgo = await IncidentCase.quietGrounding(manager, hoursAgo(100));
    await longAgo.write('people', peopleWith([STITCHED]));
  });

  const page = async (query = '', who = manager): Promise<{ items: Clock[]; next: string | null }> =>
    (await who.get(`/api/clocks${query}`).expect(200)).body as { items: Clock[]; next: string | null };

  it('come soonest first, say what is overdue, and leave out what is not required', async () => {
    const { items } = await page('', await house().signedIn('staff'));
    expect(items.map(({ incident, duty, overdue }) => [incident, duty, overdue])).toEqual([
      // 48 hours where more than first aid was needed (33 CFR 173.55(a)), 30 days in Texas (forms/law/tx.json).
      [longAgo.id, 'us/accident-report', true],
      [hurt.id, 'us/accident-report', false],
      [longAgo.id, 'us-tx/accident-report', false],
      [hurt.id, 'us-tx/accident-report', false],
    ]);
    expect(items.map(({ incident }) => incident)).not.toContain(quiet.id);
    expect(items[0]?.reference).toMatch(/^\d{4}-\d{4}$/);
  });

  it('come to counsel of what was assigned, and of nothing else, as the register does', async () => {
    const lawyer = await house().person('counsel');
    const counsel = await house().signedIn(lawyer);
    const read = async (path: string): Promise<unknown> =>
      (await counsel.get(path).expect(200)).body as unknown;
    expect(await read('/api/clocks')).toEqual({ items: [], next: null });
    expect(await read('/api/register')).toEqual({ items: [], next: null });
    expect(await read('/api/register?status=open')).toEqual({ items: [], next: null });
    expect(await read('/api/register/count')).toMatchObject({ count: 0 });
    await create(manager, `/api/incidents/${hurt.id}/counsel`, { account: lawyer.id }).expect(200);
    const { items } = await page('', counsel);
    expect(items.map(({ incident, duty }) => [incident, duty])).toEqual([
      [hurt.id, 'us/accident-report'],
      [hurt.id, 'us-tx/accident-report'],
    ]);
    expect(await read('/api/register')).toMatchObject({
      items: [
        {
          id: hurt.id,
          duties: expect.arrayContaining([expect.objectContaining({ outcome: 'required' })]) as object[],
        },
      ],
      next: null,
    });
    expect(await read('/api/register?order=due&reports=open')).toMatchObject({ items: [{ id: hurt.id }] });
    expect(await read('/api/register/count')).toMatchObject({ count: 1 });
  });

  it('come in pages that leave nothing out and show nothing twice', async () => {
    const all = (await page()).items;
    const first = await page('?limit=2');
    const second = await page(`?limit=2&after=${first.next ?? ''}`);
    expect([...first.items, ...second.items]).toEqual(all);
    expect(second.next).toBeNull();
    await manager.get('/api/clocks?after=x').expect(422);
  });

  it('are what the OpenAPI document says', async () => {
    const document = (await manager.get('/api/openapi.json').expect(200)).body as object;
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    const validate = ajv.compile({ $ref: 'http://desk/#/components/schemas/ClockPage' });
    expect([validate(await page()), validate.errors]).toEqual([true, null]);
  });

  it('go when nothing is due any more', async () => {
    await hurt.write('people', peopleWith([operatorOf('PWC-7')]));
    expect((await page()).items.map(({ incident }) => incident)).not.toContain(hurt.id);
  });
});
