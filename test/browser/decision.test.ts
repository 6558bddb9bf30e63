import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { operatorOf, peopleWith, told } from '../decision/incident-case.js';
import { expectReach, listenForFaults, takePictures } from './desk.js';
import { card, CARE, DutiesDesk, fold, sign, STITCHED, texas } from './duties-desk.js';

const FEDERAL = 'us/accident-report';
const TEXAS = 'us-tx/accident-report';

let duties: DutiesDesk;
beforeAll(async () => {
  duties = await DutiesDesk.open();
});
afterAll(() => duties.close());

describe('the duties of an incident', () => {
  it('go from what cannot be told over an answer and a signature to what is filed', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one);
    const faults = listenForFaults(page);
    await texas(page).getByText('Cannot tell yet').waitFor();
    expect((await page.locator('.counts li').allInnerTexts())[0]).toMatch(/^Cannot tell yet/);

    await texas(page)
      .getByRole('button', { name: `Answer: ${CARE}` })
      .click();
    const question = page.locator('details').filter({ hasText: CARE });
    await question.getByRole('button', { name: 'Save the answer' }).click();
    await question.getByText('Say how it is known.').waitFor();
    await question.getByRole('radio', { name: 'More than first aid' }).check();
    await question.getByRole('radio', { name: 'Somebody told us' }).check();
    await question.getByRole('button', { name: 'Save the answer' }).click();
    await page.getByText('Saved, and determined again').waitFor();
    await texas(page).getByText('Required', { exact: true }).waitFor();

    await sign(texas(page), 'Report');
    await texas(page).getByText(`Signed by ${duties.manager.name}`).waitFor();

    await fold(texas(page), 'Record its filing').click();
    await texas(page).getByLabel('How', { exact: true }).selectOption('online');
    await texas(page).getByRole('radio', { name: 'The owner (we)' }).check();
    expect(await texas(page).getByRole('checkbox', { name: 'federal rule' }).isChecked()).toBe(true);
    await texas(page).getByLabel('Confirmation').fill('B-20991');
    await texas(page).getByRole('button', { name: 'Record the filing' }).click();
    await texas(page).getByText('Filed.', { exact: true }).waitFor();
    await page.getByText('Confirmation: B-20991').waitFor();
    expect((await one.duty(FEDERAL)).state).toBe('filed');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('say first what a late fact has reopened, and what was signed then', async () => {
    const one = await duties.grounding();
    await one.signAll({ kind: 'no-report' });
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED)]));
    const page = await duties.visit(one);
    const first = page.getByRole('heading', { level: 2 }).first();
    expect(await first.innerText()).toBe('Reopened: not as it was when it was signed');
    await page.getByText('It was “Not required” and is now “Required”.').first().waitFor();
    await page.getByText('Signed then: No report due').first().waitFor();
    await expectReach(page);
    await takePictures(page, 'duties-reopened');
    await page.context().close();
  });

  it('ask for a supplement where what was filed has changed', async () => {
    const one = await duties.hurt();
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED)]));
    const filing = {
      form: 'report',
      at: duties.desk.house.now(),
      way: 'online',
      to: 'Texas Parks and Wildlife Department',
      jurisdiction: 'us-tx',
      filedBy: 'owner',
      filer: 'Ana Ruiz',
      satisfies: [FEDERAL, TEXAS].map((duty) => ({ duty, vessel: 'PWC-7' })),
    };
    expect((await one.post('filings', filing)).status).toBe(201);
    const dead = operatorOf('PWC-7', { outcome: told('died'), diedAt: told(duties.desk.house.now()) });
    await one.write('people', peopleWith([dead]));
    const page = await duties.visit(one);
    await page.locator('.reopened').getByText('Supplement the filed report').first().waitFor();
    await fold(page, 'What the operator was told').click();
    await page.getByText('send the family no notice').first().waitFor();
    await page.context().close();
  });
});

describe('signing', () => {
  // The rule of Oklahoma was read in a secondary source, not in the law.
  it('refuses "no report due" in words until a call was logged', async () => {
    const one = await duties.grounding();
    await one.write('time-and-place', {
      occurred: told({ at: duties.desk.house.now(), precision: 'to-the-minute' }),
      states: told(['OK']),
      federalWaters: told('yes'),
    });
    const page = await duties.visit(one);
    const oklahoma = card(page, 'Accident report, Oklahoma');
    await sign(oklahoma, 'No report due');
    const refusal = oklahoma.getByRole('alert');
    await refusal.waitFor();
    expect(await refusal.innerText()).toContain('log the call below, then sign again.');
    await expectReach(page);

    await fold(page, 'Log a call about the law').click();
    await page.getByRole('radio', { name: 'The agency' }).check();
    await page.getByLabel('Who', { exact: true }).fill('Officer Reyes, lake patrol');
    await page.getByLabel('What was said about the duty').fill('A grounding without damage is not reported.');
    await page.getByRole('checkbox', { name: 'Accident report, Oklahoma' }).check();
    await page.getByRole('button', { name: 'Log the call' }).click();
    await page.getByText('The call is logged.').waitFor();
    await oklahoma.getByRole('button', { name: 'Sign: no report due' }).click();
    await oklahoma.getByText('no report due on the facts of that time').waitFor();
    await page.context().close();
  });

  it('refuses to sign away what cannot be told, and waits no longer than the earliest clock', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one);
    await sign(texas(page), 'No report due');
    await texas(page).getByRole('alert').waitFor();
    expect(await texas(page).getByRole('alert').innerText()).toContain('Answer the open questions');
    await texas(page).getByRole('radio', { name: 'Wait' }).check();
    const until = texas(page).getByLabel('Wait until');
    const latest = await until.getAttribute('max');
    expect(latest).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/);
    await until.fill(`${Number(latest?.slice(0, 4)) + 1}${latest?.slice(4)}`);
    await texas(page).getByRole('button', { name: 'Sign: wait' }).click();
    await texas(page).getByText('wait no longer than that').waitFor();
    await until.fill(latest ?? '');
    await texas(page).getByRole('button', { name: 'Sign: wait' }).click();
    await texas(page).getByText('wait until').first().waitFor();
    await texas(page).getByText('Waiting, as signed.').waitFor();
    await page.context().close();
  });

  it('shows what changed meanwhile and asks again', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one);
    await fold(texas(page), 'Decide').click();
    await texas(page).getByRole('radio', { name: 'Report' }).first().check();
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED)]));
    await texas(page).getByRole('button', { name: 'Sign: report' }).click();
    await texas(page).getByText('It was determined again since you opened this.').waitFor();
    await texas(page).getByText('It was “Cannot tell yet” and is now “Required”.').first().waitFor();
    await texas(page).getByRole('button', { name: 'I have read it' }).click();
    await texas(page).getByRole('button', { name: 'Sign: report' }).click();
    await texas(page).getByText('Signed by').waitFor();
    await page.context().close();
  });

  it('is for managers: staff see the duties, answer, and note what the operator was told', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one, 'staff');
    await texas(page).getByText('A manager or an administrator signs.').waitFor();
    expect(await page.locator('summary').filter({ hasText: 'Decide' }).count()).toBe(0);
    await fold(page, 'What the operator was told').click();
    await page.getByRole('radio', { name: 'Yes, they were told' }).check();
    await page.getByLabel('By whom', { exact: true }).first().fill('Sam');
    await page.getByRole('radio', { name: 'Not known yet' }).last().check();
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('Operator of PWC-7 told, by Sam.').waitFor();
    await page.context().close();
  });
});
