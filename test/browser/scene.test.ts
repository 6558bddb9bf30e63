import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { IncidentCase } from '../decision/incident-case.js';
import { choose, expectReach, listenForFaults, PHONE, smallTargets, takePictures, WIDE } from './desk.js';
import { DutiesDesk } from './duties-desk.js';

let duties: DutiesDesk;
beforeAll(async () => {
  duties = await DutiesDesk.open();
});
afterAll(() => duties.close());

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const words = (page: Page): Promise<string[]> => page.locator('.scene-text li').allInnerTexts();
const sheet = (page: Page) => page.getByRole('img', { name: 'Sketch of the scene' });

async function kept({ id }: IncidentCase): Promise<unknown> {
  const manager = await duties.desk.house.signedIn(duties.manager);
  const answer = await manager.get(`/api/incidents/${id}/sections/scene`).expect(200);
  return (answer.body as { document: unknown }).document;
}

async function open(one: IncidentCase, viewport = PHONE): Promise<Page> {
  const page = await duties.desk.visit(duties.manager, `/incidents/${one.id}/scene`, { viewport });
  await page.getByText('Nothing is drawn yet. Add a craft').waitFor();
  return page;
}

describe('the sketch of the scene', () => {
  it('is drawn with taps and buttons, says the same in words, and is kept with its figures', async () => {
    const one = await duties.grounding();
    const page = await open(one);
    const faults = listenForFaults(page);
    await expectReach(page);
    await press(page, 'Add PWC-7');
    const box = await sheet(page).boundingBox();
    const side = box?.width ?? 0;
    await sheet(page).click({ position: { x: side * 0.5, y: side * 0.25 } });
    await press(page, 'Turn right 15°');
    await press(page, 'Up');
    await choose(page, 'Under way');
    await page.getByLabel('Shore, dock, shoal or track').selectOption('Dock');
    await sheet(page).click({ position: { x: side * 0.25, y: side * 0.75 } });
    await sheet(page).click({ position: { x: side * 0.75, y: side * 0.75 } });
    await press(page, 'Done with it');
    await page.getByLabel('Width of the sketch').fill('200');
    await page.getByLabel('Wind from').fill('225');
    await page.getByLabel('Current toward').fill('400');
    await page.getByText('Give a number from 0 to 360, or leave it empty.').waitFor();
    await page.getByLabel('Current toward').fill('90');
    await expect.poll(() => words(page)).toContain('The sheet is 200 m (656 ft) wide.');
    const told = await words(page);
    expect(told).toContain('PWC-7 (our craft): 55 m N of the middle, heading NNE (15°), under way.');
    expect(told).toContain('Wind from SW (225°).');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'scene');
    await press(page, 'Keep the sketch');
    await page.getByRole('button', { name: 'Keep the sketch' }).waitFor({ state: 'detached' });
    await expect
      .poll(() => kept(one), { timeout: 20_000 })
      .toMatchObject({ drawnBy: expect.any(String) as unknown });
    expect(await kept(one)).toMatchObject({
      metresAcross: { value: 200, known: 'told' },
      windFrom: { value: 225 },
      currentToward: { value: 90 },
      marks: [{ kind: 'our-craft', up: 55, heading: 15, movement: 'under-way' }],
      lines: [{ kind: 'dock', points: [[-50, -50], [50, -50]] }], // prettier-ignore
    });
    expect(faults).toEqual([]);
    await page.reload();
    await expect.poll(() => words(page)).toEqual(told);
    await page.context().close();
  });

  it('takes a thing off and puts it back, and is drawn by keyboard alone', async () => {
    const one = await duties.grounding();
    const page = await open(one, WIDE);
    await page.getByRole('button', { name: 'Add PWC-7' }).press('Enter');
    await page.getByRole('button', { name: 'Right', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'Take PWC-7 off' }).press('Enter');
    await expect.poll(() => words(page)).toEqual(['Nothing is drawn yet.']);
    await page.getByRole('button', { name: 'Undo' }).press('Enter');
    await expect
      .poll(() => words(page))
      .toContain(
        'PWC-7 (our craft): 1/10 of the way to the edge, E of the middle, heading not known, movement not known.',
      );
    await page.getByRole('button', { name: 'Back to what is kept' }).press('Enter');
    await expect.poll(() => words(page)).toEqual(['Nothing is drawn yet.']);
    await page.context().close();
  });
});
