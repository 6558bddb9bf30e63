import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create, PASSWORD } from '../accounts/house.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

describe('signing in', () => {
  it('happens in place, and leads to what was asked for', async () => {
    const person = await desk.house.person('staff');
    const page = await desk.visit(null, '/password');
    const faults = listenForFaults(page);
    await page.getByLabel('Sign-in name').fill(person.signInName);
    await page.getByLabel('Password').fill('not this one at all');
    await page.getByRole('main').getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('alert').innerText()).toContain('do not go together');
    await expectReach(page);
    await page.getByLabel('Password').fill(PASSWORD);
    await page.getByRole('main').getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('heading', { name: 'Choose a password' }).waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('outlives a reload at any address', async () => {
    const page = await desk.visit('manager', '/password', { viewport: WIDE });
    await page.reload();
    await page.getByRole('heading', { name: 'Choose a password' }).waitFor();
    await page.locator('.head summary', { hasText: 'The manager' }).waitFor();
    await page.context().close();
  });

  it('lets somebody say where they are told, and take it away', async () => {
    const page = await desk.visit('staff', '/password');
    await page.getByLabel('Mail address').fill('dock at example');
    await page.getByRole('button', { name: 'Keep it', exact: true }).click();
    await page.getByLabel('Mail address').and(page.locator('[aria-invalid=true]')).waitFor();
    await page.getByLabel('Mail address').fill('dock@example.com');
    await page.getByRole('button', { name: 'Keep it', exact: true }).click();
    await page.getByText('Kept. What is left empty is taken away.').waitFor();
    await page.reload();
    await expect.poll(() => page.getByLabel('Mail address').inputValue()).toBe('dock@example.com');
    await expectReach(page);
    await page.context().close();
  });

  it('says so at an address where no page is', async () => {
    const page = await desk.visit(null, '/no/such/page');
    await page.getByRole('heading', { name: 'There is no such page' }).waitFor();
    await expectReach(page);
    await page.context().close();
  });

  it('is asked for again over the page when the session ended, and nothing that was typed is lost', async () => {
    const page = await desk.visit('staff', '/password');
    await page.getByLabel('Present password').fill(PASSWORD);
    await page.getByLabel('New password').fill('five pelicans on a post');
    await page.context().clearCookies();
    await page.getByRole('button', { name: 'Keep this password' }).click();
    const dialog = page.getByRole('dialog', { name: 'Your sign-in ended' });
    await dialog.waitFor();
    await expectReach(page);
    await dialog.getByLabel('Password').fill(PASSWORD);
    await dialog.getByRole('button', { name: 'Sign in' }).click();
    await page.getByText('Your new password is kept').waitFor();
    await page.context().close();
  });
});

describe('the pages of sign-in and enrolment', () => {
  it.each(['/sign-in', '/enrol', '/'])('%s can be used by everybody', async (path) => {
    const page = await desk.visit(null, path);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, `session${path.replaceAll('/', '-')}`);
    await page.context().close();
  });

  it('enrols a phone with a code that an administrator was shown, once', async () => {
    const administrator = await desk.house.signedIn('administrator');
    const made = await create(administrator, '/api/devices', { name: 'Dock phone 2' }).expect(201);
    const page = await desk.visit(null, '/enrol');
    await page.getByLabel('Code').fill((made.body as { code: string }).code);
    await page.getByRole('button', { name: 'Enrol this device' }).click();
    await page.getByText('This device is enrolled as Dock phone 2.').waitFor();
    await page.context().close();
  });

  it('speaks Spanish to whoever chooses it', async () => {
    const page = await desk.visit(null, '/sign-in', { viewport: WIDE });
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { name: 'Iniciar sesión' }).waitFor();
    expect(await page.getAttribute('html', 'lang')).toBe('es-US');
    await expectReach(page);
    await page.context().close();
  });
});
