import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PacketRecord } from '../../shared/hand-over/packet.js';
import { flattenSection } from '../../shared/record/flatten-section.js';
import type { JsonObject, JsonValue } from '../../shared/record/json-value.js';
import { readHandOverForms } from '../../src/server/hand-over/hand-over.api.js';
import type { Browser, Person } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { checkZip } from '../hand-over/check-zip.js';
import { plantedIncident } from '../hand-over/packet-desk.js';
import { readZip } from '../hand-over/read-zip.js';
import { writeZip } from '../hand-over/write-zip.js';
import { BrowserDesk, WIDE } from './desk.js';
import { linkMailed } from './link-mailed.js';

const PHOTO = 'fixtures/evidence/photo-with-position.jpg';
const RECIPIENTS = [
  { radio: 'An insurer', name: 'Prairie Shore Mutual', address: 'claims@insurer.example' },
  { radio: 'Counsel of the business', name: 'Imogen Vance', address: 'vance@counsel.example' },
] as const;

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
  await upload(asManager, incident, await readFile(PHOTO), { name: 'dock.jpg', about: { people: [] } });
});
afterAll(() => desk.close());

type Recipient = (typeof RECIPIENTS)[number];

/** From the page of the hand-overs to what the recipient has on disk: made, sent as a link, collected. */
async function handOver(page: Page, { radio, name, address }: Recipient): Promise<Buffer> {
  await page.getByRole('radio', { name: radio }).check();
  await page.getByLabel('Name of whoever gets it').fill(name);
  await page.getByLabel('What it is for').fill('The accident at the dock');
  await page.getByRole('button', { name: 'See what would leave' }).click();
  await page.getByRole('heading', { name: 'What would leave' }).waitFor();
  const strangers = page.locator('summary').filter({ hasText: 'Can strangers be seen in it?' });
  await strangers.click();
  await page.getByRole('button', { name: 'Nobody to cover' }).click();
  await page.getByText('You looked: nobody to cover.').waitFor();
  await page.getByRole('button', { name: 'Make the packet' }).click();
  const made = page.getByRole('article', { name: `${radio}: ${name}` });
  await made.getByText('Send a link by mail').click();
  await made.getByLabel('Who collects it, by name').fill(name);
  await made.getByLabel('Mail address').fill(address);
  await made.getByRole('button', { name: 'Send the link' }).click();
  const passcode = await made.locator('.passcode').innerText();
  const stranger = await desk.visit(null, await linkMailed(administrator, address));
  await stranger.getByLabel('Passcode').fill(passcode);
  await stranger.getByRole('button', { name: 'Open' }).click();
  const downloading = stranger.waitForEvent('download');
  await stranger.getByRole('link', { name: 'Download the packet (ZIP)' }).click();
  const archive = await readFile(await (await downloading).path());
  await stranger.context().close();
  return archive;
}

/** What the page for anybody says of an archive. */
async function checkOnPage(page: Page, archive: Buffer): Promise<string> {
  await page.goto(`${desk.url}/check`);
  await page
    .getByLabel('The packet (a file that ends in .zip)')
    .setInputFiles({ name: 'packet.zip', mimeType: 'application/zip', buffer: archive });
  await page.getByRole('button', { name: 'Check it' }).click();
  await page
    .getByText(/^(Everything in this packet fits together|This packet is not as it was made)\.$/)
    .waitFor();
  return page.locator('main').innerText();
}

/** `people:/people/p1/name` and what stands there, of everything written in a packet. */
function fieldsOf(files: Map<string, Buffer>): Map<string, JsonValue> {
  const { sections } = JSON.parse(files.get('record.json')?.toString('utf8') ?? '') as PacketRecord;
  return new Map(
    Object.entries(sections).flatMap(([section, document]) =>
      [...flattenSection(document as JsonObject)].map(
        ([path, value]) => [`${section}:${path}`, value] as const,
      ),
    ),
  );
}

describe('one record, handed to an insurer and to counsel', () => {
  const archives: Buffer[] = [];

  it('is made, sent, collected and found whole by the command and by the page', async () => {
    const page = await desk.visit(manager, `/incidents/${incident}/hand-over`, { viewport: WIDE });
    for (const recipient of RECIPIENTS) archives.push(await handOver(page, recipient));
    for (const archive of archives) {
      expect((await checkZip(archive)).join('\n')).toMatch(/All \d+ files are those that the manifest lists/);
      expect(await checkOnPage(page, archive)).toContain('Everything in this packet fits together.');
    }
    await page.context().close();
  }, 40_000);

  it('is named by both where one byte was changed', async () => {
    const page = await desk.visit(null, '/check');
    const files = await readZip(archives[0] ?? Buffer.of());
    const evidence = [...files.keys()].find((path) => path.startsWith('evidence/')) ?? 'no evidence';
    for (const path of ['record.json', 'record.xlsx', evidence]) {
      const content = Buffer.from(files.get(path) ?? Buffer.of());
      const place = path === 'record.json' ? content.indexOf('Ann Lee') : content.length >> 1;
      content.writeUInt8(content.readUInt8(place) ^ 1, place);
      const changed = await writeZip(new Map([...files, [path, content]]));
      const said = [(await checkZip(changed)).join('\n'), await checkOnPage(page, changed)];
      for (const words of said) expect(words).toContain(`${path} was changed`);
    }
    await page.context().close();
  });

  it('differs between the two as the profiles say, and in nothing else', async () => {
    const { classify, profiles } = readHandOverForms();
    const insurer = profiles.find(({ recipient }) => recipient === 'insurer');
    const [toInsurer, toCounsel] = await Promise.all(
      archives.map(async (one) => fieldsOf(await readZip(one))),
    );
    if (toInsurer === undefined || toCounsel === undefined) throw new Error('Both were collected before.');
    const decided = (field: string): string => {
      const [section = '', path = ''] = field.split(':');
      const kind = classify(section, path);
      return (kind && insurer?.decisions[kind]?.does) ?? 'stays';
    };
    const differing = [...toCounsel].filter(
      ([field, value]) => JSON.stringify(toInsurer.get(field)) !== JSON.stringify(value),
    );
    expect(differing.length).toBeGreaterThan(0);
    for (const [field] of differing) expect([field, decided(field)]).not.toEqual([field, 'goes']);
    for (const [field] of toInsurer) expect([field, decided(field)]).not.toEqual([field, 'stays']);
    expect([...toInsurer.keys()].filter((field) => !toCounsel.has(field))).toEqual([]);
  });
});
