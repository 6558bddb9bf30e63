import { afterAll, describe, expect, it } from 'vitest';
import { bodyOf } from '../follow-up/desk.js';
import { archiveOf, draftFor, makePacket, plantedIncident } from '../hand-over/packet-desk.js';
import { hasOpenssl, TimeAuthority } from '../hand-over/time-authority.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';

const IS_HERE = hasOpenssl();
const WITHOUT = IS_HERE ? '' : ' (not run: there is no openssl on this machine)';

describe.skipIf(!IS_HERE)(`checking a time stamp in the browser${WITHOUT}`, () => {
  const open: { close(): unknown }[] = [];
  afterAll(async () => {
    for (const one of open) await one.close();
  });

  it('tells what it proves, whose certificate it rests on, and whether that is one that is trusted', async () => {
    const authority = await TimeAuthority.open();
    const another = await TimeAuthority.open();
    const desk = await BrowserDesk.open({ timeStampUrl: authority.url });
    open.push(authority, another, desk);
    const manager = await desk.house.person('manager');
    const asManager = await desk.house.signedIn(manager);
    const incident = await plantedIncident(asManager, desk.house.now());
    const made = await makePacket(asManager, incident, draftFor('insurer'));
    const packet = await archiveOf(asManager, incident, made);

    const listed = await desk.visit(manager, `/incidents/${incident}/hand-over`, { viewport: WIDE });
    await listed.getByText(/, by Unit 1, Invented Time Authority$/).waitFor();
    await listed.context().close();

    const page = await desk.visit(null, '/check');
    const faults = listenForFaults(page);
    const check = async (): Promise<void> => {
      await page.getByRole('button', { name: 'Check it' }).click();
    };
    await page
      .getByLabel('The packet (a file that ends in .zip)')
      .setInputFiles({ name: 'packet.zip', mimeType: 'application/zip', buffer: packet });
    await check();
    await page.getByText('Everything in this packet fits together.').waitFor();
    await page
      .getByText(/if the certificate of the time stamp is genuine: it says that then Unit 1/)
      .waitFor();
    await takePictures(page, 'check-time-stamp');
    await page.locator('summary').filter({ hasText: 'Certificates for time stamps' }).click();
    const trust = async (pem: Buffer): Promise<void> => {
      await page
        .getByLabel('A file of certificates that you trust (PEM)')
        .setInputFiles({ name: 'trusted.pem', mimeType: 'application/x-pem-file', buffer: pem });
      await check();
    };
    await trust(Buffer.from('Dear Sir'));
    await page.getByText('That file holds no certificate').waitFor();
    await expectReach(page);
    await trust(another.root);
    await page.getByText('leads to none that you gave').waitFor();
    await trust(authority.root);
    await page.getByText(/Its certificate leads to one that you gave/).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    expect(faults).toEqual([]);
    expect(bodyOf<object>(await asManager.get(`/api/incidents/${incident}/packets`))).toMatchObject({
      items: [{ stamp: { authority: 'Unit 1, Invented Time Authority' } }],
    });
  });
});
