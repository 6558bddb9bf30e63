import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create, type Person } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { bodyOf, write } from '../follow-up/desk.js';
import { PLANTED, plantedIncident, privilegedNote } from '../hand-over/packet-desk.js';
import { readZip } from '../hand-over/read-zip.js';
import { writeZip } from '../hand-over/write-zip.js';
import {
  BrowserDesk,
  expectReach,
  listenForFaults,
  PHONE,
  smallTargets,
  takePictures,
  WIDE,
} from './desk.js';

const PHOTO = readFileSync('fixtures/evidence/photo-with-position.jpg');

let desk: BrowserDesk;
let manager: Person;
let lawyer: Person;
let incident: string;
let packet: Buffer;

beforeAll(async () => {
  desk = await BrowserDesk.open();
  manager = await desk.house.person('manager');
  lawyer = await desk.house.person('counsel');
  const asManager = await desk.house.signedIn(manager);
  const administrator = await desk.house.signedIn('administrator');
  const craft = { unitName: 'PWC 7', type: 'personal-watercraft' };
  const { id: seven } = bodyOf<{ id: string }>(await create(administrator, '/api/craft', craft).expect(201));
  const policy = {
    ...{ number: 'LK-33010', insurer: 'Prairie Shore Mutual', firstDay: '2020-01-01', lastDay: '2040-01-01' },
    ...{ scheduledCraft: [seven], noticeTerms: 'As soon as possible; no repair before inspection.' },
  };
  await create(administrator, '/api/policies', policy).expect(201);
  incident = await plantedIncident(asManager, desk.house.now());
  await write(asManager, incident, 'craft', {
    craft: [{ id: 'c1', ours: true, fleetCraft: seven, name: 'PWC 7' }],
  });
  await write(asManager, incident, 'timeline', {
    entries: [{ id: 't1', what: 'She got stitches at ten, said her husband.' }],
  });
  await privilegedNote(asManager, incident, lawyer.id);
  await upload(asManager, incident, PHOTO, { name: 'dock.jpg', about: { people: [] } });
});
afterAll(() => desk.close());

const open = async (who: Person, viewport = WIDE): Promise<Page> => {
  const page = await desk.visit(who, `/incidents/${incident}/hand-over`, { viewport });
  await page.getByRole('heading', { name: 'Packets that were made' }).waitFor();
  return page;
};
const medical = 'What was done about it and where, how long it lasted, and what a death was caused by';

describe('hand-overs', () => {
  it('lets a manager see what would leave, change it, make it and take it out', async () => {
    const page = await open(manager);
    const faults = listenForFaults(page);
    await page.getByText('No packet was made yet.').waitFor();
    await page.getByRole('button', { name: 'See what would leave' }).click();
    expect(await page.getByText('Write this first.').count()).toBe(2);
    await expectReach(page);
    await page.getByLabel('Name of whoever gets it').fill('Prairie Shore Mutual, claims');
    await page.getByLabel('What it is for').fill('Claim C-88');
    await page.getByRole('button', { name: 'See what would leave' }).click();
    await page.getByRole('heading', { name: 'What would leave' }).waitFor();
    // What stays says why; a choice that the profile leaves to the sender needs no reason.
    await page.locator('summary').filter({ hasText: medical }).click();
    await page.getByText('Details of treatment are health information').first().waitFor();
    expect(await page.getByText(PLANTED.medical).count()).toBe(0);
    await page.getByRole('button', { name: `Let it leave: ${medical}` }).click();
    await page.getByText(PLANTED.medical).waitFor();
    await page
      .getByRole('button', { name: `As the profile has it: ${medical}` })
      .first()
      .click();
    await expect.poll(() => page.getByText(PLANTED.medical).count()).toBe(0);
    // A picture leaves once somebody has looked at it.
    await page.getByText('Nobody has looked yet whether strangers can be seen in it.').first().waitFor();
    await page.locator('summary').filter({ hasText: 'Can strangers be seen in it?' }).click();
    await page.getByRole('img', { name: 'The picture dock.jpg' }).waitFor();
    await page.getByRole('button', { name: 'Cover a part' }).click();
    await page.getByText('Leaves').first().waitFor();
    await page.getByText('One part is covered.').waitFor();
    await page.getByText('Masked: a copy with parts covered').waitFor();
    await page.getByLabel('From the left').fill('3');
    // A text may tell what has a field of its own that stays: it is read first.
    await page.getByRole('heading', { name: 'Read these before they leave' }).waitFor();
    await page.locator('mark').getByText('stitches').waitFor();
    await page.getByRole('button', { name: 'Make the packet' }).click();
    await page.getByText('Read each first: hold it back, or say that it may leave.').waitFor();
    await page
      .getByRole('button', { name: /^Hold it back: .*\(t1\)$/ })
      .first()
      .click();
    await expect.poll(() => page.getByRole('heading', { name: 'Read these' }).count()).toBe(0);
    await page
      .getByRole('button', { name: /^As the profile has it: .*\(t1\)$/ })
      .first()
      .click();
    await page.getByText('One is not decided yet.').waitFor();
    await page.getByRole('button', { name: /^I read it: it may leave .*\(t1\)\)$/ }).click();
    await page.getByText('All are decided.').waitFor();
    await expectReach(page);
    await takePictures(page, 'hand-over-preview');
    await page.getByRole('button', { name: 'Make the packet' }).click();
    await page.getByText('Made, and kept.').waitFor();
    const made = page.getByRole('article', { name: 'An insurer: Prairie Shore Mutual, claims' });
    await made.getByText('Claim C-88').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      made.getByRole('link', { name: 'Take it out (ZIP): Prairie Shore Mutual, claims' }).click(),
    ]);
    packet = readFileSync(await download.path());
    expect([...(await readZip(packet)).keys()].filter((path) => path.endsWith('-copy.jpg'))).toHaveLength(1);
    await made.locator('summary').filter({ hasText: 'Note who received it' }).click();
    await made.getByLabel('Who received it').fill('Prairie Shore Mutual, claims');
    await made.getByLabel('In which way').fill('on a stick, by hand');
    await made.getByRole('button', { name: 'Note it' }).click();
    await made.getByText('Prairie Shore Mutual, claims, on a stick, by hand').waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('asks why something leaves that the profile keeps, and shows it with the packet', async () => {
    const page = await open(manager);
    await page.getByRole('radio', { name: 'In the house' }).check();
    await page.getByLabel('Name of whoever gets it').fill('Training');
    await page.getByLabel('What it is for').fill('To learn from it');
    await page.getByRole('button', { name: 'See what would leave' }).click();
    await page.locator('summary').filter({ hasText: 'When somebody was born' }).click();
    await page.getByRole('button', { name: 'Let it leave: People: Date of birth (p1)' }).click();
    await page.getByText('14 March 1987').waitFor();
    await page.getByRole('button', { name: 'Make the packet' }).click();
    await page.getByText('Say why: the profile keeps it.').waitFor();
    await page.getByRole('button', { name: /^I read it: it may leave .*\(t1\)\)$/ }).click();
    await page.getByText('All are decided.').waitFor();
    await expectReach(page);
    await page.getByLabel('Why it leaves: People: Date of birth (p1)').fill('The course is about ages.');
    await page.getByRole('button', { name: 'Make the packet' }).click();
    await page.getByText('Made, and kept.').waitFor();
    await page
      .getByRole('article', { name: 'In the house: Training' })
      .getByText('The course is about ages.')
      .waitFor();
    await page.context().close();
  });

  it('makes the first notice on a phone, and keeps what the insurer answers', async () => {
    const page = await open(manager, PHONE);
    const policy = page.getByRole('article', { name: 'LK-33010, Prairie Shore Mutual' });
    await policy.locator('summary').filter({ hasText: 'Make the notice' }).click();
    await policy.getByRole('button', { name: 'Make the page' }).click();
    expect(await policy.getByText('Write this first.').count()).toBe(2);
    await policy.getByLabel('Where the craft can be seen').fill('South dock, slip 4');
    await policy.getByLabel('Telephone', { exact: true }).fill('903-555-0102');
    await policy.getByRole('button', { name: 'Make the page' }).click();
    await policy.getByText('Made. Send it').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      policy.getByRole('link', { name: /^Open the page \(PDF\): LK-33010/ }).click(),
    ]);
    expect(
      readFileSync(await download.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    await policy.locator('summary').filter({ hasText: 'Enter claim number' }).click();
    await policy.getByLabel('Number of the claim').fill('C-88-2041');
    await policy.getByLabel('Adjuster', { exact: true }).fill('R. Vale');
    await policy.getByRole('button', { name: 'Keep it' }).click();
    await policy.getByText('C-88-2041, R. Vale').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'hand-over');
    await page.context().close();
  });

  it('shows counsel what was made, and nobody else anything', async () => {
    const page = await open(lawyer);
    await page.getByText('A manager makes packets.').waitFor();
    expect(await page.getByRole('button', { name: 'Make the packet' }).count()).toBe(0);
    expect(await page.getByRole('article').count()).toBeGreaterThan(1);
    await expectReach(page);
    await page.context().close();
    const failing = await desk.visit(manager, '/');
    await failing.route('**/api/**/packets', (route) =>
      route.fulfill({
        status: 500,
        json: { type: 'about:blank', title: 'It failed', status: 500, errors: [] },
      }),
    );
    await failing.goto(`${desk.url}/incidents/${incident}/hand-over`);
    await failing.getByRole('alert').waitFor();
    await expectReach(failing);
    await failing.unroute('**/api/**/packets');
    await failing.getByRole('button', { name: 'Try again' }).click();
    await failing.getByRole('heading', { name: 'Packets that were made' }).waitFor();
    await failing.context().close();
    const staff = await desk.visit('staff', `/incidents/${incident}/hand-over`);
    await staff.getByRole('heading', { level: 1 }).waitFor();
    expect(await staff.getByText('Make a packet').count()).toBe(0);
    await staff.context().close();
  });
});

describe('checking a packet', () => {
  const choose = async (page: Page, name: string, buffer: Buffer): Promise<void> => {
    await page
      .getByLabel('The packet (a file that ends in .zip)')
      .setInputFiles({ name, mimeType: 'application/zip', buffer });
    await page.getByRole('button', { name: 'Check it' }).click();
  };

  it('is for anybody, uploads nothing, and names what was changed', async () => {
    const page = await desk.visit(null, '/check');
    const faults = listenForFaults(page);
    await page.getByRole('button', { name: 'Check it' }).click();
    await page.getByText('Choose the packet first.').waitFor();
    await expectReach(page);
    const sent: string[] = [];
    page.on('request', (request) => sent.push(`${request.method()} ${new URL(request.url()).pathname}`));
    await choose(page, 'packet.zip', packet);
    await page.getByText('Everything in this packet fits together.').waitFor();
    await page.getByText(/All \d+ files are those that the manifest lists/).waitFor();
    await expectReach(page);
    await takePictures(page, 'check-good');
    // One byte of the paper, in an archive that is whole in itself.
    const files = await readZip(packet);
    const paper = Buffer.from(files.get('record.pdf') ?? Buffer.of());
    paper[paper.length - 100] = (paper[paper.length - 100] ?? 0) ^ 1;
    await choose(page, 'changed.zip', await writeZip(new Map([...files, ['record.pdf', paper]])));
    await page.getByText('This packet is not as it was made.').waitFor();
    await page.getByText(/^record\.pdf was changed/).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'check-bad');
    // One byte of the archive itself.
    const broken = Buffer.from(packet);
    broken.fill(0, 200, 260);
    await choose(page, 'broken.zip', broken);
    await page.getByText(/This packet is not as it was made|This is no packet that can be checked/).waitFor();
    await choose(page, 'letter.zip', Buffer.from('Dear Sir'));
    await page.getByText('This is no packet that can be checked.').waitFor();
    await expectReach(page);
    expect(sent.filter((one) => one.startsWith('POST') || one.includes('/api/'))).toEqual([]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('holds it against a head that was received before', async () => {
    const page = await desk.visit(null, '/check', { viewport: WIDE });
    await page.getByLabel('The head of the log that you had before (optional)').fill('12:abc');
    await page.getByText('That is no head').waitFor();
    await page.getByLabel('The head of the log that you had before (optional)').fill(`1:${'ab'.repeat(32)}`);
    await choose(page, 'packet.zip', packet);
    await page.getByText('This packet is not as it was made.').waitFor();
    await page.getByText('The packet proves nothing about a head at 1 amendments').waitFor();
    await page.context().close();
  });
});
