import { beforeAll, expect, it } from 'vitest';
import { DigestWatch } from '../../src/server/follow-up/digest-watch.js';
import { MailRows } from '../../src/server/platform/database/mail-rows.js';
import type { MailRow } from '../../src/server/platform/database/mail.row.js';
import { type Browser, create, describeHouse, HOUR, type Person } from '../accounts/house.js';
import { addTask, openIncident, setAddress } from './work.js';

describeHouse('the digest of the day', (house) => {
  let manager: Person;
  let managers: Browser;
  let staff: Person;
  let incident: { id: string; reference: string };
  beforeAll(async () => {
    manager = await house().person('manager');
    managers = await house().signedIn(manager);
    staff = await house().person('staff');
    incident = await openIncident(managers);
  });

  /** Days of their own for each test: who was told on a day is not told again. */
  let day = 10;
  /** 11:00 in Chicago, where the service of the tests is at home. */
  const nextMorning = (): string => `2031-06-${(day += 1)}T16:00:00.000Z`;
  const sweep = (now: string): Promise<number> => house().app.get(DigestWatch).sweep(now);
  const after = (instant: string, ms: number): string => new Date(Date.parse(instant) + ms).toISOString();
  const mailTo = async (address: string): Promise<MailRow[]> => {
    const rows = await house().app.get(MailRows).page({ limit: 99, after: null }, undefined);
    return rows.filter(({ toAddress, purpose }) => toAddress === address && purpose === 'digest');
  };
  const clearTasks = async (): Promise<void> => {
    await house().plainSql(`UPDATE task SET state = 'done'`);
    await house().plainSql('DELETE FROM notice_address');
  };

  it('tells each person once a day what is overdue and due, by reference alone', async () => {
    await clearTasks();
    const now = nextMorning();
    await setAddress(house(), staff, 'sam@rental.example');
    const given = { assigneeId: staff.id, title: 'Ask Maria about her broken leg' };
    await addTask(house(), incident.id, { ...given, dueAt: after(now, -HOUR) });
    await addTask(house(), incident.id, { ...given, dueAt: after(now, HOUR) });
    await addTask(house(), incident.id, { ...given, dueAt: after(now, 30 * HOUR) });
    await addTask(house(), incident.id, { ...given, dueAt: null });
    expect(await sweep(now)).toBe(1);
    expect(await sweep(after(now, HOUR))).toBe(0);
    const [mail, ...more] = await mailTo('sam@rental.example');
    expect(more).toEqual([]);
    expect(mail?.subject).toBe('Incident desk: 1 overdue, 2 due');
    const line = (time: string): string =>
      `  ${incident.reference}   Wednesday, June 11, 2031 at ${time} CDT`;
    expect(mail?.body.split('\n').slice(0, 8)).toEqual([
      'Overdue:',
      line('10:00 AM'),
      '',
      'Due:',
      line('12:00 PM'),
      '',
      'Due at a time that nobody knows yet:',
      `  ${incident.reference}`,
    ]);
    expect(mail?.body).not.toMatch(/maria|leg/i);
  });

  it('comes again the next day', async () => {
    await clearTasks();
    await setAddress(house(), staff, 'next@rental.example');
    await addTask(house(), incident.id, { assigneeId: staff.id, dueAt: '2031-06-01T16:00:00.000Z' });
    expect([await sweep(nextMorning()), await sweep(nextMorning())]).toEqual([1, 1]);
    expect(await mailTo('next@rental.example')).toHaveLength(2);
  });

  it('is not sent twice by a service that was started again within the day', async () => {
    await clearTasks();
    await setAddress(house(), staff, 'again@rental.example');
    await addTask(house(), incident.id, { assigneeId: staff.id, dueAt: '2031-06-01T16:00:00.000Z' });
    const now = nextMorning();
    await sweep(now);
    Object.assign(house().app.get(DigestWatch), { sweptDay: '' });
    expect(await sweep(now)).toBe(0);
    expect(await mailTo('again@rental.example')).toHaveLength(1);
  });

  it('waits for the morning of the business', async () => {
    await clearTasks();
    await setAddress(house(), staff, 'early@rental.example');
    await addTask(house(), incident.id, { assigneeId: staff.id, dueAt: '2031-06-01T16:00:00.000Z' });
    const morning = nextMorning();
    expect(await sweep(`${morning.slice(0, 10)}T10:59:59.000Z`)).toBe(0);
    expect(await sweep(`${morning.slice(0, 10)}T11:00:00.000Z`)).toBe(1);
  });

  it('is for nobody who left no address, has nothing to do, or has left', async () => {
    await clearTasks();
    const gone = await house().person('staff');
    await setAddress(house(), gone, 'gone@rental.example');
    await setAddress(house(), staff, 'idle@rental.example');
    await house().plainSql(`UPDATE account SET active = false WHERE id = '${gone.id}'`);
    await addTask(house(), incident.id, { assigneeId: gone.id, dueAt: '2031-06-01T16:00:00.000Z' });
    await addTask(house(), incident.id, { assigneeId: manager.id, dueAt: '2031-06-01T16:00:00.000Z' });
    expect(await sweep(nextMorning())).toBe(0);
  });

  it('tells managers, and the shift lead of the day, what nobody was given', async () => {
    await clearTasks();
    const lead = await house().person('staff');
    const morning = nextMorning();
    const today = morning.slice(0, 10);
    const entry = { accountId: lead.id, duty: 'shift-lead', from: today, to: today };
    await create(managers, '/api/roster', entry).expect(201);
    await setAddress(house(), lead, 'lead@rental.example');
    await setAddress(house(), manager, 'max@rental.example');
    await setAddress(house(), staff, 'sam@rental.example');
    const dueAt = after(morning, HOUR);
    await addTask(house(), incident.id, { owner: 'manager', dueAt });
    await addTask(house(), incident.id, { owner: 'shift-lead', dueAt });
    await addTask(house(), incident.id, { owner: 'shift-lead', dueAt: after(morning, -HOUR) });
    expect(await sweep(morning)).toBe(2);
    expect((await mailTo('lead@rental.example')).map(({ subject }) => subject)).toEqual([
      'Incident desk: 1 overdue, 1 due',
    ]);
    expect((await mailTo('max@rental.example')).map(({ subject }) => subject)).toEqual([
      'Incident desk: 0 overdue, 1 due',
    ]);
  });
});
