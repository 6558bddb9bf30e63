import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { craftOf, operatorOf, peopleWith, told } from '../decision/incident-case.js';
import { expectReach, PHONE, smallTargets, takePictures } from './desk.js';
import { card, CARE, DutiesDesk, STITCHED, texas } from './duties-desk.js';

let duties: DutiesDesk;
beforeAll(async () => {
  duties = await DutiesDesk.open();
});
afterAll(() => duties.close());

describe('what if', () => {
  it('shows what would change beside what stands, and saves nothing', async () => {
    const one = await duties.hurt();
    const before = await one.duties();
    const page = await duties.visit(one);
    const question = page.locator('details').filter({ hasText: CARE });
    await question.locator('summary').click();
    await question.getByRole('radio', { name: 'More than first aid' }).check();
    await question.getByRole('button', { name: 'Only try it' }).click();
    await page.getByText('Only tried: nothing of this is saved.').waitFor();
    const row = page.getByRole('row', { name: 'Accident report, Texas' });
    await row.waitFor();
    expect(await row.getByRole('cell').allInnerTexts()).toEqual([
      expect.stringContaining('Cannot tell yet'),
      expect.stringContaining('Required'),
    ]);
    await expectReach(page);
    await takePictures(page, 'duties-what-if');
    await page.getByLabel('Which fact').selectOption({ label: 'Was an officer there?' });
    await page.getByRole('radio', { name: 'Yes' }).last().check();
    await page.getByRole('button', { name: 'Try it', exact: true }).click();
    await page.getByRole('button', { name: 'Take back: Person operator-PWC-7: Care needed' }).click();
    await page.getByText('Nothing would change').waitFor();
    await page.reload();
    await texas(page).getByText('Cannot tell yet').waitFor();
    expect(await one.duties()).toEqual(before);
    await page.context().close();
  });
});

describe('what stands beside the duties', () => {
  it('is what nobody asked, what is done with nothing to file, and a signed answer whether it is reportable', async () => {
    const one = await duties.grounding();
    await one.write('craft', {
      craft: [craftOf('PWC-7'), craftOf('other', { ours: false, use: told('recreational') })],
    });
    await one.write('people', peopleWith([operatorOf('PWC-7', { ...STITCHED })]));
    await one.write('account', {
      casualtyTypes: told(['collision-with-recreational-vessel', 'fire-or-explosion-other']),
      involvesVesselOrEquipment: told('yes'),
    });
    const page = await duties.visit(one);
    const section = (name: string) => page.getByRole('region', { name });
    const unasked = section('Not asked yet').getByRole('listitem');
    await unasked.first().waitFor();
    expect(await unasked.locator('summary').allInnerTexts()).toEqual([
      expect.stringMatching(/^Was there a film or sheen of oil/),
      'Was operator-PWC-7 an employee of the business, at work?',
    ]);
    const sheen = unasked.first();
    await sheen.locator('summary').click();
    await sheen.getByRole('radio', { name: 'Yes' }).check();
    await sheen.getByRole('radio', { name: 'One of us saw it' }).check();
    await sheen.getByRole('button', { name: 'Save the answer' }).click();
    const oil = card(page, 'Oil discharge notice, federal rule');
    await oil.waitFor();
    await oil.locator('summary').filter({ hasText: 'The law behind it' }).click();
    expect(await oil.getByRole('link', { name: /^The whole page of the law/ }).getAttribute('href')).toBe(
      '/law/US-OIL-DISCHARGE',
    );
    await oil.getByRole('heading', { name: 'What is doubtful about it' }).waitFor();
    expect(await section('To be done, with nothing to file').innerText()).toContain(
      'Assistance duty, federal rule',
    );

    const aids = section('Is it reportable at all?');
    const fire = aids.getByRole('article');
    await fire.locator('summary').click();
    await fire.getByRole('button', { name: 'Sign the answer' }).click();
    expect(await fire.getByText('Say it before you sign.').count()).toBe(2);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'duties-reportable');
    await fire.getByRole('radio', { name: /^It is not a reportable occurrence/ }).check();
    await fire.getByLabel('Why').fill('It burnt on the trailer; the agency counts none such.');
    await fire.getByRole('button', { name: 'Sign the answer' }).click();
    await fire.getByText(/answered on .*: not a reportable occurrence\. federal rule\. It burnt/).waitFor();
    await card(page, 'Accident report, federal rule (PWC-7)')
      .getByText('Not required on these facts')
      .waitFor();
    await texas(page).getByText('Required', { exact: true }).waitFor();
    await page.context().close();
  });
});

describe('the page of duties', () => {
  it('can be used by everybody on a phone, with everything open', async () => {
    const one = await duties.hurt();
    await one.write('damage', {
      assessment: told('partial'),
      lines: [{ id: 'd1', of: told('vessel'), amount: told({ low: 900, high: 2600 }) }],
    });
    const page = await duties.visit(one, duties.manager, PHONE);
    await page.getByText('All property together.').first().waitFor();
    await takePictures(page, 'duties');
    for (const summary of await page.locator('main summary').all()) await summary.click();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await page.context().close();
  });

  it('says so while nothing was determined, when the service fails, and to a stranger', async () => {
    const one = await duties.grounding();
    const page = await duties.desk.visit(duties.manager, '/');
    await page.route('**/api/**/duties', (route) =>
      route.fulfill({ json: { determination: null, items: [] } }),
    );
    await page.goto(`${duties.desk.url}/incidents/${one.id}/duties`);
    await page.getByText('Nothing was determined for this incident yet.').waitFor();
    await expectReach(page);
    await page.unroute('**/api/**/duties');
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/**/duties', (route) => route.fulfill({ status: 500, json: fault }));
    await page.goto(`${duties.desk.url}/law/try`);
    await page.goto(`${duties.desk.url}/incidents/${one.id}/duties`);
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.unroute('**/api/**/duties');
    await page.getByRole('button', { name: 'Try again' }).click();
    await texas(page).waitFor();
    await page.context().close();
    const stranger = await duties.desk.visit(null, `/incidents/${one.id}/duties`);
    await stranger.getByRole('heading', { name: 'Sign in' }).waitFor();
    await stranger.context().close();
  });

  it('prints without navigation and forms, says when and by whom, and opens every reason', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one);
    await page.emulateMedia({ media: 'print' });
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    expect(await page.locator('.printed').innerText()).toMatch(
      new RegExp(`^Printed .+ by ${duties.manager.name}, manager.$`),
    );
    expect(await page.locator('header').isVisible()).toBe(false);
    expect(await page.getByText('Decide', { exact: true }).first().isVisible()).toBe(false);
    expect(await texas(page).locator('.reasons li').first().isVisible()).toBe(true);
    expect(await page.evaluate('getComputedStyle(document.body).backgroundColor')).toBe('rgb(255, 255, 255)');
    await page.context().close();
  });

  it('is done by keyboard alone from question to signature', async () => {
    const one = await duties.hurt();
    const page = await duties.visit(one);
    const tabTo = async (found: () => Promise<boolean>): Promise<void> => {
      for (let presses = 0; presses < 200 && !(await found()); presses += 1) await page.keyboard.press('Tab');
      expect(await found()).toBe(true);
    };
    const onText = (text: string) => async () =>
      (
        await page.evaluate<string>(
          "document.activeElement.matches('body') ? '' : document.activeElement.textContent",
        )
      ).includes(text);
    const onRadio = async (): Promise<boolean> =>
      (await page.evaluate<string>('document.activeElement.type')) === 'radio';
    await tabTo(onText('Answer'));
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate('document.activeElement.tagName')).toBe('SUMMARY');
    await tabTo(onRadio);
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await tabTo(onText('Save the answer'));
    await page.keyboard.press('Enter');
    await page.getByText('Saved, and determined again').waitFor();
    await expect.poll(() => onText('Saved, and determined again')()).toBe(true);
    await page.reload();
    await texas(page).waitFor();
    await tabTo(onText('Decide'));
    await page.keyboard.press('Enter');
    await tabTo(onRadio);
    await page.keyboard.press('Space');
    await tabTo(onText('Sign: report'));
    await page.keyboard.press('Enter');
    await page.getByText('Signed: Report.').waitFor();
    await page.context().close();
  });

  it('leads to each earlier determination as it was made', async () => {
    const one = await duties.hurt();
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED)]));
    const page = await duties.visit(one);
    const latest = (await one.duties()).determination;
    await page.getByRole('link', { name: `Determination ${latest - 1}`, exact: true }).click();
    await page.getByRole('heading', { name: 'What changed since' }).waitFor();
    await page.getByText('It was “Cannot tell yet” and is now “Required”.').first().waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
