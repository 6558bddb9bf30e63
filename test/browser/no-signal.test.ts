import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { killProfile, launchProfile } from '../support/browser.js';
import { BrowserDesk, PHONE } from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
let profile: string;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  profile = await mkdtemp(join(tmpdir(), 'desk-profile-'));
  await stockFleet(desk.house);
});
afterAll(async () => {
  await desk.close();
  await rm(profile, { recursive: true, force: true });
});

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const sent = (page: Page) => page.getByText(/^Sent \d\d:\d\d/).waitFor();
const onlyHere = (page: Page) =>
  page.getByRole('status').filter({ hasText: 'Saved on this phone, not yet sent' }).waitFor();

interface Lists {
  items: { id: string }[];
  files: { sha256: string }[];
  arriving: object[];
}

async function read(path: string): Promise<Lists> {
  const manager = await desk.house.signedIn('manager');
  return (await manager.get(path).expect(200)).body as Lists;
}

const incidents = async () => (await read('/api/incidents')).items;

async function photograph(colour: string): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const picture = sharp({ create: { width: 900, height: 700, channels: 3, background: colour } });
  return { name: `${colour}.jpg`, mimeType: 'image/jpeg', buffer: await picture.jpeg().toBuffer() };
}

const openProfile = (): Promise<BrowserContext> =>
  launchProfile(profile, { viewport: PHONE, locale: 'en-US', timezoneId: 'America/Chicago' });

async function firstPage(context: BrowserContext): Promise<Page> {
  return context.pages()[0] ?? context.newPage();
}

describe('a call without signal', () => {
  it(
    'with two photographs outlives a killed browser, and is one incident when the signal is back',
    { timeout: 180_000 },
    async () => {
      let context = await openProfile();
      await desk.enrol(context);
      // A browser writes cookies to the disk within half a minute, or when it is closed.
      await context.close();
      context = await openProfile();
      let page = await firstPage(context);
      await page.goto(`${desk.url}/call`);
      await page.getByRole('button', { name: /^PWC 7/ }).waitFor();
      await page.evaluate('navigator.serviceWorker.ready');

      await context.setOffline(true);
      await press(page, /^PWC 7/);
      await press(page, 'Next');
      for (const question of [
        'Are you where it happened?',
        'Is everyone accounted for?',
        'Is anyone hurt?',
        'What happened?',
      ]) {
        await page.getByRole('heading', { name: question }).waitFor();
        await press(page, 'Skip');
      }
      await press(page, '911 called');
      const pictures = [await photograph('teal'), await photograph('olive')];
      await page.getByLabel('Add a photograph').setInputFiles(pictures);
      await page.getByText('2 photographs').waitFor();
      await onlyHere(page);
      const address = page.url();
      await killProfile(profile);

      context = await openProfile();
      await context.setOffline(true);
      page = await firstPage(context);
      await page.goto(address);
      await page.getByText('2 photographs').waitFor();
      await page.getByRole('definition').filter({ hasText: 'PWC 7' }).waitFor();
      await onlyHere(page);
      expect(await incidents()).toEqual([]);

      await context.setOffline(false);
      await sent(page);
      const [incident, ...others] = await incidents();
      expect(others).toEqual([]);
      const { files, arriving } = await read(`/api/incidents/${incident?.id ?? ''}/evidence`);
      expect(files).toHaveLength(2);
      expect(arriving).toEqual([]);
      await page.reload();
      await sent(page);
      expect(await incidents()).toHaveLength(1);
      await context.close();
    },
  );

  it('is one incident where the answers were lost on the way', async () => {
    const before = await incidents();
    const page = await desk.visitOnDevice('/call');
    let lost = 0;
    await page.route('**/api/incidents/**', async (route) => {
      lost += 1;
      if (lost > 3) return route.continue();
      await route.fetch();
      await route.abort();
    });
    await page.route('**/api/incidents', async (route) => {
      await route.fetch();
      await route.abort();
      await page.unroute('**/api/incidents');
    });
    await press(page, /^PWC 7/);
    await onlyHere(page);
    await page.evaluate("dispatchEvent(new Event('online'))");
    await expect
      .poll(
        async () => {
          await page.evaluate("dispatchEvent(new Event('online'))");
          return page.getByText(/^Sent \d\d:\d\d/).count();
        },
        { timeout: 30_000 },
      )
      .toBe(1);
    expect(lost).toBeGreaterThan(3);
    expect(await incidents()).toHaveLength(before.length + 1);
    await page.context().close();
  });

  it('leaves nothing on a phone that was shut out', async () => {
    const page = await desk.visitOnDevice('/call');
    await press(page, /^PWC 7/);
    await sent(page);
    const administrator = await desk.house.signedIn('administrator');
    for (const { id } of await devicesOf(administrator)) await administrator.delete(`/api/devices/${id}`);
    await page.goto(`${desk.url}/call`);
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    const left = await page.evaluate<number>(`new Promise((resolve) => {
      const opening = indexedDB.open('incident-desk');
      opening.onsuccess = () => {
        const names = ['answers', 'outbox', 'files', 'calls', 'self'];
        const turn = opening.result.transaction(names);
        let total = 0;
        for (const name of names) turn.objectStore(name).getAllKeys().onsuccess = ({ target }) => {
          total += target.result.filter((key) => key !== 'session').length;
        };
        turn.oncomplete = () => resolve(total);
      };
    })`);
    expect(left).toBe(0);
    await page.context().close();
  });
});

async function devicesOf(administrator: Awaited<ReturnType<BrowserDesk['house']['signedIn']>>) {
  const answer = await administrator.get('/api/devices').expect(200);
  return (answer.body as { items: { id: string }[] }).items;
}
