import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PASSWORD } from '../accounts/house.js';
import { BrowserDesk, listenForFaults, WIDE } from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
});
afterAll(() => desk.close());

/** More than any page of the desk has to be tabbed through. */
const MOST_TABS = 300;

/** Somebody who has a keyboard and nothing else. */
class Fingers {
  constructor(private readonly page: Page) {}

  /** Tabs on until it has the focus; what cannot be reached so fails. */
  async reach(target: Locator): Promise<void> {
    await target.first().waitFor();
    for (let tabs = 0; tabs < MOST_TABS; tabs += 1) {
      if (await target.first().evaluate((element) => element === document.activeElement)) return;
      await this.page.keyboard.press('Tab');
    }
    throw new Error(`No key leads to ${String(target)}`);
  }

  async press(
    role: 'button' | 'link',
    name: string | RegExp,
    within: Page | Locator = this.page,
  ): Promise<void> {
    await this.reach(within.getByRole(role, { name, ...(typeof name === 'string' && { exact: true }) }));
    await this.page.keyboard.press('Enter');
  }

  async unfold(name: string | RegExp, within: Page | Locator = this.page): Promise<void> {
    await this.reach(within.locator('summary').filter({ hasText: name }));
    await this.page.keyboard.press('Enter');
  }

  async type(label: string, words: string, within: Page | Locator = this.page): Promise<void> {
    await this.reach(within.getByLabel(label, { exact: true }));
    await this.page.keyboard.type(words);
  }

  /** Goes by arrows from the first of a group to the one that is meant, and chooses it. */
  async choose(
    group: string | RegExp,
    option: string | RegExp,
    within: Page | Locator = this.page,
  ): Promise<void> {
    const radios = within.getByRole('group', { name: group }).getByRole('radio');
    const wanted = within
      .getByRole('group', { name: group })
      .getByRole('radio', { name: option, ...(typeof option === 'string' && { exact: true }) });
    await this.reach(radios);
    while (!(await wanted.evaluate((element) => element === document.activeElement)))
      await this.page.keyboard.press('ArrowDown');
    await this.page.keyboard.press('Space');
  }
}

describe('the whole job with a keyboard and nothing else', () => {
  it('goes from the sign-in over a call, the record, the law and a signature to a task that is done', async () => {
    const manager = await desk.house.person('manager');
    const page = await desk.visit(null, '/', { viewport: WIDE });
    const faults = listenForFaults(page);
    const fingers = new Fingers(page);
    await fingers.type('Sign-in name', manager.signInName);
    await fingers.type('Password', PASSWORD);
    await page.keyboard.press('Enter');

    await fingers.press('link', 'Call for help', page.getByRole('navigation'));
    await fingers.press('button', /^PWC 7/);
    await fingers.press('button', 'Next');
    await fingers.press('button', 'No, elsewhere');
    await fingers.press('button', 'Heron Cove');
    await fingers.choose('Is everyone accounted for?', 'Yes');
    await fingers.choose('Is anyone hurt?', 'Yes');
    await fingers.choose('What happened?', 'Thrown off');
    await page.getByText(/^Sent \d\d:\d\d/).waitFor();
    await fingers.press('link', 'Open the record');

    await fingers.press('link', 'Weather and water');
    await fingers.choose('How do you know it?', 'Seen');
    await fingers.type('Who saw it', 'Bo Lane');
    await fingers.type('Weather', 'Clear sky');
    await fingers.press('button', 'Save');
    await page.getByText(/^Sent \d\d:\d\d/).waitFor();

    await page.goBack();
    await fingers.press('link', 'Open the duties');
    const report = page.getByRole('article', { name: 'Accident report, Texas' });
    await fingers.press('button', /^Answer: What care did/, report);
    const question = page.locator('details').filter({ hasText: 'What care did' });
    await fingers.choose(/^What care did/, 'More than first aid', question);
    await fingers.choose('How is it known?', 'Somebody told us', question);
    await fingers.press('button', 'Save the answer', question);
    await page.getByText('Saved, and determined again').waitFor();
    await fingers.unfold('Decide', report);
    await fingers.choose('What is signed', /^Report/, report);
    await fingers.press('button', 'Sign: report', report);
    await report.getByText(`Signed by ${manager.name}`).waitFor();

    await fingers.press('link', 'Follow-up', page.getByRole('navigation'));
    const task = page.locator('details.task').first();
    const title = await task.locator('summary strong').first().innerText();
    await fingers.unfold(title);
    await fingers.unfold('It is done', task);
    await fingers.type('What was done, when, by whom', 'Done by telephone at ten', task);
    await fingers.press('button', 'Done', task);
    await page.getByText(`Done: ${title}`).waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
