import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MailQueue } from '../../src/server/platform/mail/mail-queue.js';
import { MailRounds } from '../../src/server/platform/mail/mail-rounds.js';
import { REOPENED } from '../mail/mail-house.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();
const confirm = (page: Page, name: string) =>
  page.getByRole('dialog').getByRole('button', { name, exact: true }).click();
const open = (page: Page, title: string | RegExp) =>
  page.locator('summary').filter({ hasText: title }).first().click();
const denied = async (who: 'staff' | 'manager', path: string): Promise<void> => {
  const page = await desk.visit(who, path);
  await page.getByRole('heading', { name: 'Not yours to see' }).waitFor();
  await page.context().close();
};

describe('accounts', () => {
  it('are made with a password that is shown once, changed, put back, ended and opened again', async () => {
    const page = await desk.visit('administrator', '/people');
    const faults = listenForFaults(page);
    await page.getByRole('link', { name: 'Add a person' }).click();
    await press(page, 'Add a person');
    await page.getByText(/^Name: Missing/).waitFor();
    await page.getByLabel('Name *', { exact: true }).fill('Ana Ruiz');
    await page.getByLabel('Sign-in name *').fill('ana');
    await page.getByLabel('Role *').selectOption('staff');
    await expectReach(page);
    await press(page, 'Add a person');
    const secret = await page.locator('.shown-once').innerText();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'person-once');
    const first = await desk.visit(null, '/sign-in');
    await first.getByLabel('Sign-in name').fill('ana');
    await first.getByLabel('Password').fill(secret);
    await first.getByRole('main').getByRole('button', { name: 'Sign in' }).click();
    await first.getByText('Your password was given to you by an administrator.').waitFor();
    await first.context().close();

    await page.getByRole('link', { name: 'Ana Ruiz' }).click();
    await open(page, 'Change name, role or address');
    await page.getByLabel('Address').fill('12 Elm Street');
    await press(page, 'Keep the change');
    await page.getByText('Kept as changed.').waitFor();
    await page.getByRole('definition').filter({ hasText: '12 Elm Street' }).waitFor();
    await press(page, 'Undo');
    await page.getByText('Put back as it was before.').waitFor();
    expect(await page.getByRole('definition').filter({ hasText: '12 Elm Street' }).count()).toBe(0);

    await press(page, 'Give a new one-time password');
    await expectReach(page);
    await confirm(page, 'Give a new one-time password');
    expect(await page.locator('.shown-once').innerText()).not.toBe(secret);
    await press(page, 'I have handed it over');
    expect(await page.locator('.shown-once').count()).toBe(0);
    await press(page, 'End the account');
    await confirm(page, 'End the account');
    await page.getByText('The account of Ana Ruiz has ended.').waitFor();
    await press(page, 'Undo');
    await page.getByText('The account of Ana Ruiz is open again.').waitFor();
    await expectReach(page);
    await takePictures(page, 'person');
    await page.getByRole('link', { name: 'People' }).last().click();
    await page.getByRole('link', { name: /^Ana Ruiz\s+Staff\s+ana/ }).waitFor();
    await takePictures(page, 'people');
    expect(faults).toEqual([]);
    await page.context().close();
    const manager = await desk.visit('manager', '/people');
    await manager.getByRole('link', { name: /^Ana Ruiz/ }).click();
    await manager.getByText('Only an administrator changes accounts.').waitFor();
    await expectReach(manager);
    await manager.context().close();
    await denied('staff', '/people');
    await denied('manager', '/people/add');
  });
});

describe('roster and certificates', () => {
  it('say who is on and what is due, and every removal can be undone', async () => {
    const ben = await desk.house.person('staff');
    const page = await desk.visit('manager', '/people/roster');
    await page.getByText('Nobody is on the roster in these days.').waitFor();
    await open(page, 'Put somebody on');
    await page.getByLabel('Person *').selectOption({ label: ben.name });
    await page.getByLabel('Duty *').selectOption('dock');
    await press(page, 'Put somebody on');
    await page.getByText('They are on the roster.').waitFor();
    await page.getByRole('link', { name: 'Certificates' }).click();
    await page.getByText('No certificate is entered.').waitFor();
    await open(page, 'Note a certificate');
    await page.getByLabel('Person *').selectOption({ label: ben.name });
    await page.getByLabel('What is certified *').fill('First aid');
    await page.getByLabel('Last day on which it is good').fill('2025-06-01');
    await press(page, 'Note a certificate');
    await page.getByText('The certificate is noted.').waitFor();
    await page.getByRole('listitem').getByText('Has ended').waitFor();
    await press(page, `Take away: First aid, ${ben.name}`);
    await page.getByText('First aid was taken away.').waitFor();
    await press(page, 'Undo');
    await page.getByRole('listitem').getByText('Has ended').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'certificates');
    await page.getByRole('link', { name: 'Roster' }).click();
    await page.getByText('First aid ended on 1 June 2025').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'roster');
    await press(page, `Take off: ${ben.name}, Dock`);
    await page.getByText(`${ben.name} was taken off.`).waitFor();
    await press(page, 'Undo');
    await page.getByRole('listitem').getByText(`${ben.name}, Dock`, { exact: true }).waitFor();
    await page.context().close();
    const reader = await desk.visit(ben, '/people/roster');
    await reader.getByText(`${ben.name}, Dock`).waitFor();
    expect(await reader.getByRole('button', { name: /^Take off/ }).count()).toBe(0);
    await reader.route('**/api/**', (route) => route.abort());
    await reader.reload();
    await reader.getByText('No signal. This is what this device kept at').waitFor();
    await reader.context().close();
  });
});

describe('devices', () => {
  it('get a code that is shown once, and are shut out after a second question', async () => {
    const page = await desk.visit('administrator', '/devices', { viewport: WIDE });
    await page.getByText('No device is enrolled.').waitFor();
    await page.getByLabel('What it is called *').fill('Dock phone 2');
    await press(page, 'Get a code for a device');
    const code = await page.locator('.shown-once').innerText();
    await expectReach(page);
    await takePictures(page, 'devices');
    const phone = await desk.visit(null, '/enrol');
    await phone.getByLabel('Code').fill(code);
    await press(phone, 'Enrol this device');
    await phone.getByText('This device is enrolled as Dock phone 2.').waitFor();
    await page.reload();
    await page.getByText('Enrolled', { exact: true }).waitFor();
    expect(await page.locator('.shown-once').count()).toBe(0);
    await press(page, 'Shut out: Dock phone 2');
    await expectReach(page);
    await confirm(page, 'Shut it out');
    await page.getByText('Dock phone 2 is shut out.').waitFor();
    await phone.goto(`${desk.url}/call`);
    await phone.getByRole('heading', { name: 'Sign in' }).waitFor();
    await phone.context().close();
    await page.context().close();
    await denied('manager', '/devices');
  });
});

describe('mail', () => {
  const queue = async (to: string, key: string): Promise<void> => {
    await desk.house.app.get(MailQueue).enqueue({ to, message: REOPENED, key, incidentId: 'i-1' });
    await desk.house.app.get(MailRounds).settled();
  };

  it('says what went out and what it says, and lets a person decide about what did not go through', async () => {
    const administrator = await desk.house.person('administrator');
    const page = await desk.visit(administrator, '/mail');
    await page.getByText('No mail is here.').waitFor();
    await expectReach(page);
    await queue('ana@rental.example', 'k1');
    await queue('12 Shore Road', 'k2');
    await queue('ben@rental.example', 'k3');
    await queue('cora@rental.example', 'k4');
    await desk.house.plainSql(
      "UPDATE mail SET state = 'uncertain' WHERE to_address LIKE 'ben%' OR to_address LIKE 'cora%'",
    );
    await page.reload();
    const mail = (to: string) => page.getByRole('article', { name: new RegExp(to) });
    await mail('ana').getByText('Sent', { exact: true }).waitFor();
    await mail('ana').getByText('What the mail says').click();
    await mail('ana').getByText('a decision is open again').last().waitFor();
    await mail('Shore').getByText('Failed', { exact: true }).waitFor();
    await mail('ben').getByText('It was delivered').click();
    await mail('ben').getByRole('button', { name: 'It was delivered' }).click();
    await confirm(page, 'It was delivered');
    await page.getByText('Why: Missing').waitFor();
    await mail('ben').getByLabel('Why *').fill('Ben has it.');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'mail');
    await mail('ben').getByRole('button', { name: 'It was delivered' }).click();
    await confirm(page, 'It was delivered');
    await mail('ben').getByText(`Said to be delivered: ${administrator.name}`).waitFor();
    await mail('cora').getByText('Send it again').click();
    await mail('cora').getByLabel('Why *').fill('Cora says that nothing has come.');
    await mail('cora').getByRole('button', { name: 'Send it again' }).click();
    await confirm(page, 'Send it again');
    await mail('cora').getByText('Sent again:').waitFor();
    await page.getByLabel('Which').selectOption('uncertain');
    await page.getByText('No mail is in this state.').waitFor();
    await page.context().close();
    await denied('manager', '/mail');
  });
});
