import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser, Person } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import { draftFor, makePacket, PLANTED, plantedIncident } from '../hand-over/packet-desk.js';
import { readZip } from '../hand-over/read-zip.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';

let desk: BrowserDesk;
let manager: Person;
let administrator: Browser;
let incident: string;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  manager = await desk.house.person('manager');
  administrator = await desk.house.signedIn('administrator');
  const asManager = await desk.house.signedIn(manager);
  incident = await plantedIncident(asManager, desk.house.now());
  await makePacket(asManager, incident, draftFor('insurer'));
});
afterAll(() => desk.close());

/** The path of the link in the latest mail, as its recipient reads it. */
async function linkMailed(): Promise<string> {
  const latest = async (): Promise<string> => {
    const { items } = bodyOf<{ items: { words: string | null }[] }>(
      await administrator.get('/api/mail?limit=1'),
    );
    return /^Written to (.+)$/.exec(items[0]?.words ?? '')?.[1] ?? '';
  };
  await expect.poll(latest).not.toBe('');
  const mail = (await readFile(await latest(), 'utf8')).replaceAll('=\r\n', '');
  return new URL(/https:\S+\/collect\/[\w-]{43}/.exec(mail)?.[0] ?? '').pathname;
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

    const link = await linkMailed();
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
    await stranger.getByLabel('Passcode').fill(passcode);
    await stranger.getByRole('button', { name: 'Open' }).click();
    await stranger.getByRole('heading', { name: 'Nothing opens here' }).waitFor();
    await stranger.getByText('The link was taken back').waitFor();
    await expectReach(stranger);
    expect([...faults, ...strangersFaults]).toEqual([]);
    await stranger.context().close();
    await page.context().close();
  });
});
