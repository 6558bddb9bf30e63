import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, type Person } from '../accounts/house.js';
import { bodyOf, DEAD, eventsOf, openIncident, peopleOf, STITCHED, taskOf, UNHURT, write } from './desk.js';

const DUTY = 'us/accident-report';
const UNFILED = 'no filing is recorded: Accident report, federal rule.';
const FILE = `file:${DUTY}:c1`;

describeHouse('tasks and what is signed and filed', (house) => {
  let ana: Person;
  let manager: Browser;
  let id: string;

  beforeAll(async () => {
    ana = await house().person('manager');
    manager = await house().signedIn(ana);
    await manager.put('/api/notice-address').send({ mail: 'ana@example.com' }).expect(200);
    ({ id } = await openIncident(manager, house().now()));
    await write(manager, id, 'people', peopleOf(UNHURT));
    const told = (value: unknown) => ({ value, known: 'told' });
    const line = { id: 'd1', of: told('vessel'), craft: 'c1', amount: told(5000) };
    await write(manager, id, 'damage', { assessment: told('complete'), lines: [line] });
  });

  const settledOnes = async (): Promise<string> =>
    JSON.stringify((await manager.get(`/api/incidents/${id}/closing`).expect(200)).body);
  const told = async (): Promise<string[]> => {
    const administrator = await house().signedIn('administrator');
    const { items } = bodyOf<{ items: { purpose: string }[] }>(
      await administrator.get('/api/mail').expect(200),
    );
    return items.map(({ purpose }) => purpose);
  };

  it('completes the task of filing by the filing, with its id as evidence', async () => {
    expect(await settledOnes()).toContain(UNFILED);
    const filing = {
      form: 'report',
      at: house().now(),
      way: 'online',
      to: 'Parks and Wildlife Department',
      jurisdiction: 'us-tx',
      filedBy: 'owner',
      filer: ana.name,
      satisfies: [{ duty: DUTY, vessel: 'c1' }],
    };
    await create(manager, `/api/incidents/${id}/filings`, filing).expect(201);
    const task = await taskOf(manager, id, FILE);
    expect(task.state).toBe('done');
    const last = (await eventsOf(manager, id, task.id)).at(-1);
    expect(last).toMatchObject({ kind: 'done', words: 'The filing is recorded.', person: ana.name });
    expect(last?.evidenceIds).toHaveLength(1);
    expect(await settledOnes()).not.toContain(UNFILED);
  });

  it('calls for the work again when late facts change the report, says why, and tells everyone once', async () => {
    expect(await told()).not.toContain('supplement-due');
    await write(manager, id, 'people', peopleOf(STITCHED));
    const again = await taskOf(manager, id, FILE, 2);
    expect(again.state).toBe('open');
    expect((await taskOf(manager, id, FILE)).state).toBe('done');
    const [added] = await eventsOf(manager, id, again.id);
    expect(added?.words).toMatch(/^Due again; new since it was done: /);
    await write(manager, id, 'account', { whatHappened: { value: 'It capsized.', known: 'told' } });
    expect((await told()).filter((purpose) => /supplement|reopened/.test(purpose))).toHaveLength(1);
  });

  it('does not take the old filing for the new facts, whatever they do to the deadline', async () => {
    await write(manager, id, 'people', peopleOf(STITCHED, DEAD));
    expect((await taskOf(manager, id, FILE, 2)).state).toBe('open');
  });
});
