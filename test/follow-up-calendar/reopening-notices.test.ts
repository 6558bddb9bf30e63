import { beforeAll, expect, it } from 'vitest';
import { zoneClock } from '../../shared/time/zone-clock.js';
import { MailRows } from '../../src/server/platform/database/mail-rows.js';
import type { MailRow } from '../../src/server/platform/database/mail.row.js';
import { type Browser, create, describeHouse, type House, type Person } from '../accounts/house.js';
import { IncidentCase, operatorOf, peopleWith, told } from '../decision/incident-case.js';
import { setAddress } from './work.js';

const STITCHED = operatorOf('PWC-7', { outcome: told('injured'), care: told('beyond-first-aid') });

async function mailsAbout(house: House, incidentId: string): Promise<MailRow[]> {
  const rows = await house.app.get(MailRows).page({ limit: 99, after: null }, undefined);
  return rows.filter((row) => row.incidentId === incidentId);
}

describeHouse('mail about what reopens', (house) => {
  let manager: Person;
  let managers: Browser;
  beforeAll(async () => {
    manager = await house().person('manager');
    managers = await house().signedIn(manager);
    await setAddress(house(), manager, 'max@rental.example');
    await setAddress(house(), await house().person('manager'), 'ana@rental.example');
    await setAddress(house(), await house().person('staff'), 'sam@rental.example');
    // Somebody who left no address is no hindrance.
    await house().person('manager');
  });

  it('goes once to each manager while none is on the roster, and says nothing of stitches', async () => {
    const one = await IncidentCase.quietGrounding(managers, house().now());
    await one.signAll({ kind: 'no-report' });
    expect(await mailsAbout(house(), one.id)).toEqual([]);
    await one.write('people', peopleWith([STITCHED]));
    const mails = await mailsAbout(house(), one.id);
    expect(mails.map(({ toAddress }) => toAddress).sort()).toEqual([
      'ana@rental.example',
      'max@rental.example',
    ]);
    for (const { purpose, subject, body } of mails) {
      expect(purpose).toBe('decision-reopened');
      expect(subject).toMatch(/^Incident \d{4}-\d{4}: a decision is open again$/);
      expect(body).not.toMatch(/stitch|sutur|injur|operator|PWC/i);
    }
    await one.write('account', { casualtyTypes: told(['grounding']), oilSheen: told('no') });
    expect(await mailsAbout(house(), one.id)).toHaveLength(2);
  });

  it('goes to the others when the manager on duty left no address', async () => {
    const one = await IncidentCase.quietGrounding(managers, house().now());
    await one.signAll({ kind: 'no-report' });
    const unreached = await house().person('manager');
    const day = zoneClock('America/Chicago').localDate(Date.parse(house().now()));
    await create(managers, '/api/roster', {
      accountId: unreached.id,
      duty: 'shift-lead',
      from: day,
      to: day,
    }).expect(201);
    await one.write('people', peopleWith([STITCHED]));
    expect((await mailsAbout(house(), one.id)).map(({ toAddress }) => toAddress).sort()).toEqual([
      'ana@rental.example',
      'max@rental.example',
    ]);
  });

  it('is not sent while nothing was signed', async () => {
    const one = await IncidentCase.quietGrounding(managers, house().now());
    await one.write('people', peopleWith([STITCHED]));
    expect(await mailsAbout(house(), one.id)).toEqual([]);
  });
});
