import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { DutiesDesk } from './duties-desk.js';

let duties: DutiesDesk;
beforeAll(async () => {
  duties = await DutiesDesk.open();
});
afterAll(() => duties.close());

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const open = (page: Page, title: string): Promise<void> =>
  page.locator('summary').filter({ hasText: title }).first().click();

const NOTE = 'The governor may have been off, said the mechanic.';

describe('holds and counsel', () => {
  it('keeps everything on a manager’s word, and takes a note that only the assigned lawyer reads', async () => {
    const one = await duties.grounding();
    const lawyer = await duties.desk.house.person('counsel');
    const page = await duties.desk.visit(duties.manager, `/incidents/${one.id}/counsel`);
    const faults = listenForFaults(page);
    await page.getByText('Nothing is held.').waitFor();
    await page.getByText('No lawyer has asked for notes.').waitFor();
    await expectReach(page);

    await open(page, 'Start a hold');
    await press(page, 'Start it');
    await page.getByText('Missing: give').first().waitFor();
    await page.getByLabel('Why', { exact: true }).fill('The family’s lawyer wrote.');
    await press(page, 'Start it');
    await page.getByText('Keeps everything', { exact: true }).waitFor();
    await open(page, 'Name somebody who keeps things');
    await page.getByLabel('Name, where there is no account').fill('The mechanic');
    await press(page, 'Name them');
    await page.getByText('The mechanic, has not acknowledged').waitFor();
    await press(page, 'The mechanic acknowledged on paper');
    await page.getByText(/^The mechanic, acknowledged/).waitFor();

    await open(page, 'Enter that a lawyer asked');
    await page.getByLabel('Name of the lawyer').last().fill('Cleo Law');
    await page.getByLabel('Day on which they asked').fill('2026-06-14');
    await page.getByLabel('Their account, where there is one').selectOption(lawyer.id);
    await press(page, 'Enter it');
    await open(page, 'Write a note for Cleo Law');
    await page.getByLabel('The note').fill(NOTE);
    await press(page, 'Keep the note');
    await page.getByText('Kept. Only assigned counsel can read it.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'counsel-manager');
    await page.reload();
    await page.getByText('Cleo Law asked on 2026-06-14').waitFor();
    expect(await page.getByText(NOTE).count()).toBe(0);
    expect(faults).toEqual([]);

    const counsel = await duties.desk.visit(lawyer, `/incidents/${one.id}/counsel`);
    await counsel.getByText(NOTE).waitFor();
    await counsel.getByText('Keeps everything', { exact: true }).waitFor();
    expect(await counsel.getByRole('button', { name: /^End:/ }).count()).toBe(0);
    await expectReach(counsel);
    await takePictures(counsel, 'counsel-counsel');

    const staff = await duties.desk.visit('staff', `/incidents/${one.id}/counsel`);
    await staff.getByText('Keeps everything', { exact: true }).waitFor();
    expect(await staff.getByText('Notes that a lawyer asked for').count()).toBe(0);
    for (const each of [page, counsel, staff]) await each.context().close();
  });
});
