import { beforeAll, expect, it } from 'vitest';
import { MailRows } from '../../src/server/platform/database/mail-rows.js';
import { MailMessage } from '../../src/server/platform/mail/mail-message.js';
import { MailQueue } from '../../src/server/platform/mail/mail-queue.js';
import { MailRounds } from '../../src/server/platform/mail/mail-rounds.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { bodyOf, openIncident, writeSection } from '../evidence/evidence-desk.js';
import { bytesOnDisk, decide, everything, lineOf, told, YEARS } from './retention-desk.js';

const RENTER = 'zwiebelrenter';
const PLATE = 'platequokka';
const OURS = 'ourspangolin';

describeHouse('rental data and mail of a month', (house) => {
  let manager: Browser;
  let month: string;

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const craftOf = async (unitName: string) => {
      const body = { unitName, type: 'personal-watercraft' };
      return { unitName, id: bodyOf(await create(manager, '/api/craft', body).expect(201)).id };
    };
    const [one, other] = [await craftOf('PWC 7'), await craftOf('PWC 8')];
    month = house().now().slice(0, 7);
    for (const [craft, renter] of [
      [one, RENTER],
      [other, OURS],
    ] as const) {
      await create(manager, '/api/outings', { unit: craft.unitName, renter, vehicle: PLATE }).expect(201);
      await create(manager, `/api/outings/units/${craft.unitName}/back`, {}).expect(200);
    }
    const id = await openIncident(manager);
    await writeSection(manager, id, 'craft', {
      craft: [{ id: 'c1', ours: true, fleetCraft: other.id, name: other.unitName, use: told('rental') }],
    });
  });

  it('is due once the longest period of any state is over, and outings of craft with an incident then are not in it', async () => {
    expect(await lineOf(manager, 'outings', month)).toBeUndefined();
    house().letPass(6 * YEARS);
    manager = await house().signedIn('manager');
    const line = await lineOf(manager, 'outings', month);
    expect(line).toMatchObject({ state: 'due', holds: { outings: 2 }, incidentId: null });
    // New Jersey's year of rental records (forms/law/nj.json) is the longest of those that were read.
    expect(line?.periods.find(({ id }) => id.startsWith('livery-nj'))).toMatchObject({ months: 12 });
    const before = await everything(house());
    for (const word of [RENTER, PLATE, OURS]) expect(before).toContain(word);
    expect(await decide(manager, line, {})).toMatchObject({ status: 201, body: { gone: { outings: 1 } } });
    const after = await everything(house());
    expect(after).not.toContain(RENTER);
    expect(after).toContain(OURS);
    expect(bytesOnDisk(house())).not.toContain(RENTER);
  });

  it('of mail leaves that it was sent, so that it is never sent again', async () => {
    const address = 'quokka@example.org';
    const queue = house().app.get(MailQueue);
    const message = MailMessage.about('decision-reopened', '2026-0001');
    const mail = { to: address, message, key: 'retention test' };
    expect(await queue.enqueue(mail)).toBe(true);
    await house().app.get(MailRounds).settled();
    const sent = house().now().slice(0, 7);
    house().letPass(3 * YEARS);
    manager = await house().signedIn('manager');
    const line = await lineOf(manager, 'mails', sent);
    expect(line).toMatchObject({ state: 'due', holds: { mails: 1 } });
    expect((await decide(manager, line, {})).status).toBe(201);
    expect(await everything(house())).not.toContain(address);
    expect(await queue.enqueue(mail)).toBe(false);
    expect(await house().app.get(MailRows).monthsWithText()).toEqual([]);
    expect(bodyOf<{ items: object[] }>(await manager.get('/api/retention/decisions')).items).toHaveLength(2);
  });
});
