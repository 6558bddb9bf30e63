import { beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, describeHouse } from '../accounts/house.js';

const PWC = { type: 'personal-watercraft' };
const saw = <T>(value: T) => ({ value, known: 'saw' });

interface Service {
  inService: boolean;
  holds: { incident: string; gravity: string; against: { code: string }[] }[];
}

describeHouse('the craft of an incident', (house) => {
  let manager: Browser;
  let dock: Browser;

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    dock = (await house().device(await house().signedIn('administrator'))).browser;
  });

  const addCraft = async (unitName: string): Promise<string> => {
    const answer = await create(manager, '/api/craft', { unitName, ...PWC }).expect(201);
    return (answer.body as { id: string }).id;
  };
  const call = async (browser: Browser, call: object): Promise<string> => {
    const answer = await create(browser, '/api/incidents', { call }).expect(201);
    return (answer.body as { id: string }).id;
  };
  const service = async (craft: string): Promise<Service> =>
    (await manager.get(`/api/craft/${craft}/service`).expect(200)).body as Service;
  const write = (incident: string, section: string, version: number, document: object, reason?: string) =>
    manager
      .put(`/api/incidents/${incident}/sections/${section}`)
      .set('If-Match', `"${version}"`)
      .send({ document, ...(reason && { reason }) });

  it('is out of service from the first touch on a shared phone', async () => {
    const craft = await addCraft('PWC 7');
    const other = await addCraft('PWC 70');
    const incident = await call(dock, { said: 'help', craftNamed: ['PWC 7'] });
    expect(await service(craft)).toMatchObject({
      inService: false,
      holds: [{ incident, gravity: 'unclear' }],
    });
    expect(await service(other)).toMatchObject({ inService: true, holds: [] });
  });

  it('stays in service when the caller named none, and is taken out when the record does', async () => {
    const craft = await addCraft('PWC 8');
    const incident = await call(manager, { said: 'somebody is in the water' });
    expect((await service(craft)).inService).toBe(true);
    const listed = { craft: [{ id: 'a', ours: true, fleetCraft: craft }] };
    await write(incident, 'craft', 0, listed).expect(200);
    expect((await service(craft)).inService).toBe(false);
  });

  it('is named by the pointer of the field when the fleet does not have it, and nothing is written', async () => {
    const incident = await call(manager, { said: 'help' });
    const fleetCraft = '6f0f4a5e-2f5a-4a38-8e3f-0d9c6a1f2b3c';
    const answer = await write(incident, 'craft', 0, { craft: [{ id: 'a', fleetCraft }] }).expect(422);
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/document/craft/0/fleetCraft' }] });
    expect((await manager.get(`/api/incidents/${incident}/sections/craft`)).body).toMatchObject({
      version: 0,
    });
  });

  describe('released as damage alone', () => {
    it('is taken out again when a renter writes of stitches a week later', async () => {
      const craft = await addCraft('PWC 9');
      await create(await house().signedIn('administrator'), '/api/release-amounts', {
        amountCents: 50_000,
      }).expect(201);
      const incident = await call(manager, { craftNamed: ['PWC 9'] });
      const people = (care: string, outcome: string) => ({
        assessment: saw('complete'),
        everyoneAccountedFor: saw('yes'),
        people: [{ id: 'p', role: saw('operator'), outcome: saw(outcome), care: saw(care) }],
      });
      const damage = {
        assessment: saw('complete'),
        lines: [{ id: 'd', of: saw('vessel'), amount: saw(120), basis: saw('estimate') }],
      };
      await write(incident, 'people', 0, people('none', 'unhurt')).expect(200);
      await write(incident, 'damage', 0, damage).expect(200);
      expect((await service(craft)).holds).toMatchObject([{ gravity: 'damage-only' }]);
      await create(manager, `/api/craft/${craft}/service-steps`, {
        kind: 'released',
        incident,
        photographs: ['photo-1'],
      }).expect(201);
      expect((await service(craft)).inService).toBe(true);
      await write(
        incident,
        'people',
        1,
        people('beyond-first-aid', 'injured'),
        'She wrote of stitches.',
      ).expect(200);
      expect(await service(craft)).toMatchObject({ inService: false, holds: [{ gravity: 'grave' }] });
    });
  });
});
