import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, DAY, PASSWORD, type Person } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import {
  draftFor,
  makePacket,
  type Packet,
  PLANTED,
  plantedIncident,
  privilegedNote,
} from '../hand-over/packet-desk.js';
import { readZip } from '../hand-over/read-zip.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';
import { linkMailed } from './link-mailed.js';

let desk: BrowserDesk;
let manager: Person;
let asManager: Browser;
let packet: Packet;
let administrator: Browser;
let incident: string;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  manager = await desk.house.person('manager');
  administrator = await desk.house.signedIn('administrator');
  asManager = await desk.house.signedIn(manager);
  incident = await plantedIncident(asManager, desk.house.now());
  packet = await makePacket(asManager, incident, draftFor('insurer'));
});
afterAll(() => desk.close());

/** A link that was sent past the pages. */
async function sendLink(address: string, days = 14) {
  const links = `/api/incidents/${incident}/packets/${packet.id}/links`;
  const made = await create(asManager, links, { to: 'Kim Ortega', address, days }).expect(201);
  const { id, passcode } = bodyOf<{ id: string; passcode: string }>(made);
  return {
    at: await linkMailed(administrator, address),
    passcode,
    revoke: () => asManager.delete(`${links}/${id}`).expect(200),
  };
}

describe('a packet that is sent as a link', () => {
  it('is collected by somebody without an account, who is told who, why and until when', async () => {
    const page = await desk.visit(manager, `/incidents/${incident}/hand-over`, { viewport: WIDE });
    const faults = listenForFaults(page);
    await page.getByText('Send a link by mail').click();
    await page.getByLabel('Who collects it, by name').fill('Kim Ortega');
    await page.getByLabel('Mail address').fill('claims');
    await page.getByRole('button', { name: 'Send the link' }).click();
    await page.getByText('Must be a mail address').first().waitFor();
    await page.getByLabel('Mail address').fill('claims@insurer.example');
    await page.getByRole('button', { name: 'Send the link' }).click();
    const passcode = await page.locator('.passcode').innerText();
    await page.getByText('not collected yet').waitFor();
    await expectReach(page);
    await takePictures(page, 'packet-link');

    const link = await linkMailed(administrator, 'claims@insurer.example');
    const stranger = await desk.visit(null, link);
    const strangersFaults = listenForFaults(stranger);
    await stranger.getByRole('button', { name: 'Open' }).click();
    await stranger.getByText('Give the passcode.', { exact: true }).waitFor();
    await stranger.getByLabel('Passcode').fill('00000-00000');
    await stranger.getByRole('button', { name: 'Open' }).click();
    await stranger.getByText('4 tries are left').waitFor();
    await expectReach(stranger);
    await takePictures(stranger, 'collect-passcode');
    await stranger.getByLabel('Passcode').fill(passcode);
    await stranger.keyboard.press('Enter');
    await stranger.getByText('The claim of 13 June').waitFor();
    await stranger.getByText(manager.name).waitFor();
    await expectReach(stranger);
    expect(await smallTargets(stranger)).toEqual([]);
    expect(await stranger.locator('main').innerText()).not.toContain(PLANTED.child);
    await takePictures(stranger, 'collect');
    const downloading = stranger.waitForEvent('download');
    await stranger.getByRole('link', { name: 'Download the packet (ZIP)' }).click();
    const files = await readZip(await readFile(await (await downloading).path()));
    expect([...files.keys()]).toContain('manifest.json');

    await expect
      .poll(async () => {
        await page.reload();
        await page.getByRole('button', { name: 'Take back the link of Kim Ortega' }).waitFor();
        return page.getByText(/· downloaded /).count();
      })
      .toBe(1);
    await page.getByText('collected by link, with the passcode').waitFor();
    await page.getByRole('button', { name: 'Take back the link of Kim Ortega' }).click();
    await page.getByText('taken back').waitFor();
    await stranger.goto(`${desk.url}${link}`);
    await stranger.getByRole('heading', { name: 'Nothing opens here' }).waitFor();
    await stranger.getByText('The link was taken back').waitFor();
    await expectReach(stranger);
    expect([...faults, ...strangersFaults]).toEqual([]);
    await stranger.context().close();
    await page.context().close();
  });

  it('says in the language of the reader why nothing opens, before it asks for anything', async () => {
    const [revoked, locked, expired] = await Promise.all([
      sendLink('revoked@renter.example'),
      sendLink('locked@renter.example'),
      sendLink('expired@renter.example', 1),
    ]);
    await revoked.revoke();
    const page = await desk.visit(null, locked.at, { context: { locale: 'es-US' } });
    await page.getByText('El enlace abre hasta').waitFor();
    for (const left of ['quedan 4 intentos', 'quedan 3 intentos', 'quedan 2 intentos', 'queda 1 intento']) {
      await page.getByLabel('Clave').fill('00000-00000');
      await page.getByRole('button', { name: 'Abrir' }).click();
      await page.getByText(left).waitFor();
    }
    await expectReach(page);
    await page.getByRole('button', { name: 'Abrir' }).click();
    await page.getByText('El enlace está bloqueado').waitFor();
    await expectReach(page);
    await takePictures(page, 'collect-locked');
    await page.goto(`${desk.url}${revoked.at}`);
    await page.getByText('El enlace fue retirado').waitFor();
    await page.goto(`${desk.url}/collect/${'a'.repeat(43)}`);
    await page.getByText('quizá se cortó').waitFor();
    desk.house.letPass(DAY);
    await page.goto(`${desk.url}${expired.at}`);
    await page.getByText('El enlace ha vencido').waitFor();
    expect(await page.getByLabel('Clave').count()).toBe(0);
    await expectReach(page);
    desk.house.letPass(-DAY);
    await page.context().close();
  });

  it('loses nothing where the signal is lost: before it opens, and while it is downloaded', async () => {
    const { at, passcode } = await sendLink('far@insurer.example');
    const page = await desk.visit(null, '/check');
    await page.clock.install();
    await page.goto(`${desk.url}${at}`);
    await page.getByLabel('Passcode').fill(passcode);
    await page.context().setOffline(true);
    await page.getByRole('button', { name: 'Open' }).click();
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.context().setOffline(false);
    await page.getByRole('button', { name: 'Open' }).click();
    const link = page.getByRole('link', { name: 'Download the packet (ZIP)' });
    await link.waitFor();
    await page.context().setOffline(true);
    await link.click();
    await page.getByRole('alert').waitFor();
    await page.getByText('press again').waitFor();
    await page.context().setOffline(false);
    const downloading = page.waitForEvent('download');
    await link.click();
    expect((await readZip(await readFile(await (await downloading).path()))).has('manifest.json')).toBe(true);
    // The service would begin no download any more.
    await page.clock.fastForward(30 * 60_000);
    await page.getByText('Half an hour is over').waitFor();
    await page.getByLabel('Passcode').waitFor();
    await page.context().close();
  });

  it('with notes for counsel opens for the lawyer it was sent to, who signs in on the page', async () => {
    const lawyer = await desk.house.person('counsel');
    await privilegedNote(asManager, incident, lawyer.id);
    await makePacket(asManager, incident, draftFor('counsel', { name: 'Díaz and Vale' }));
    const page = await desk.visit(manager, `/incidents/${incident}/hand-over`, { viewport: WIDE });
    const made = page.getByRole('article', { name: 'Counsel of the business: Díaz and Vale' });
    await made.getByText('Send a link to counsel').click();
    await made.getByRole('button', { name: 'Send the link' }).click();
    await made.locator('.fault', { hasText: 'Choose a lawyer' }).waitFor();
    await made.getByLabel('Which lawyer').selectOption({ label: lawyer.name });
    await made.getByRole('button', { name: 'Send the link' }).click();
    await made.getByText('give an address').first().waitFor();
    await made.getByLabel('Mail address').fill('diaz@law.example');
    await made.getByRole('button', { name: 'Send the link' }).click();
    await made.getByText('opens signed in').waitFor();
    expect(await page.locator('.passcode').count()).toBe(0);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'counsel-link');

    const link = await linkMailed(administrator, 'diaz@law.example');
    await page.goto(`${desk.url}${link}`);
    await page.getByText('is signed in here, and is no lawyer').waitFor();
    await expectReach(page);
    await page.locator('main').getByRole('button', { name: 'Sign out' }).click();
    await page.getByRole('heading', { name: 'Sign in as the lawyer it was sent to' }).waitFor();
    await expectReach(page);
    await page.getByLabel('Name', { exact: false }).first().fill(lawyer.signInName);
    await page.getByLabel('Password').fill(PASSWORD);
    await page.keyboard.press('Enter');
    await page.getByText(`Signed in as ${lawyer.name}.`).waitFor();
    await takePictures(page, 'collect-counsel');
    await page.getByRole('button', { name: 'Open' }).click();
    await page.getByText(manager.name).waitFor();
    const downloading = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Download the packet (ZIP)' }).click();
    const files = await readZip(await readFile(await (await downloading).path()));
    expect(files.get('record.json')?.toString()).toContain(PLANTED.privileged);
    await page.context().close();
  });
});
