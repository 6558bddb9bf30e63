import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchBrowser } from '../support/browser.js';
import { type RunningServer, startServer } from '../support/start-server.js';

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 900 };
const TARGET_PX = 48;

let browser: Browser;
let server: RunningServer;
let axe: string;
beforeAll(async () => {
  [browser, server, axe] = await Promise.all([
    launchBrowser(),
    startServer(),
    readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'),
  ]);
});
afterAll(async () => {
  await browser.close();
  await server.stop();
});

let page: Page;
let said: string[];
beforeEach(async () => {
  page = await browser.newPage({ viewport: PHONE });
  said = [];
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('console', (message) => {
    if (/Content Security Policy|Refused/.test(message.text())) said.push(message.text());
  });
  await page.goto(`${server.url}/law/try`);
  await expect.poll(factsShown).toContain('occurredAt');
});
afterEach(async () => {
  expect(said).toEqual([]);
  await page.close();
});

const determine = () => page.getByRole('button', { name: 'Determine' }).click();
const factsShown = () => page.locator('textarea').inputValue();
const heading = () => page.locator('.answer h2');
const textsOf = (selector: string) => page.locator(selector).allInnerTexts();

async function chooseSample(title: string): Promise<void> {
  const before = await factsShown();
  await page.getByRole('radio', { name: title }).check();
  await expect.poll(factsShown).not.toBe(before);
}

describe('the page', () => {
  it('puts emergency services first, and says what it is not', async () => {
    expect(await page.locator('.caution-strip').innerText()).toMatch(
      /^Anyone hurt, missing or in danger: emergency services first\./,
    );
    expect(await page.getByRole('link', { name: 'Call 911' }).getAttribute('href')).toBe('tel:911');
    expect(await page.locator('.lead').innerText()).toContain(
      'Not legal advice. Confirm with the state agency and counsel.',
    );
  });

  it('shows the duties of a sample: sign with word, clock, who, questions', async () => {
    await determine();
    await heading().waitFor();
    expect(await textsOf('.outcome')).toContain('Cannot tell yet');
    const federal = page.locator('.duty').first();
    expect(await federal.locator('.title').innerText()).toBe('Accident report, federal rule');
    expect(await federal.locator('.clock').innerText()).toMatch(
      /\d+ (day|h|min).* left\nby \w{3} \d+ \w+ 13:30, if it is required|\d+ (day|h|min).* left\nby \w{3} \d+ \w+ 14:30, if it is required/,
    );
    expect(await federal.locator('.part h4').allInnerTexts()).toEqual([
      'Who reports',
      'What could change it, the most telling first',
    ]);
    expect(await federal.locator('.questions code').first().innerText()).toBe('/people/0/care');
    expect(await page.locator('.outcome svg').count()).toBe(await page.locator('.outcome').count());
  });

  it('shows why, each point with its value in words and its citation', async () => {
    await determine();
    const why = page.locator('.duty details').first();
    await why.locator('summary').click();
    expect(await why.locator('.value').first().innerText()).toMatch(/^(Yes|No|Not known yet)$/);
    expect(await why.locator('cite').allInnerTexts()).toContain('33 CFR 173.55(a)(2)');
  });

  it('says "Act now" when someone is missing', async () => {
    await chooseSample('A rider has not been found');
    await determine();
    expect(await page.locator('.earliest strong').innerText()).toBe('Act now');
    expect(await textsOf('.outcome')).not.toContain('Not required');
    expect(await textsOf('.clock.immediate strong')).toContain('At once');
  });

  it('says what is not required without a clock', async () => {
    await chooseSample('A scratched hull, and nobody is hurt');
    await determine();
    await heading().waitFor();
    expect(new Set(await textsOf('.outcome'))).toEqual(new Set(['Not required']));
    expect(await page.locator('.clock, .earliest').count()).toBe(0);
  });

  it.each([
    ['text that is not JSON', '{"schemaVersion": 1,', /^Not JSON: /],
    ['facts with a fault', JSON.stringify({ schemaVersion: 1, weather: 'fine' }), /^\/casualtyTypes /],
  ])('names what is wrong with %s', async (_name, text, first) => {
    await page.locator('textarea').fill(text);
    await determine();
    await heading().waitFor();
    expect(await heading().innerText()).toBe('No determination');
    expect((await textsOf('.problem li'))[0]).toMatch(first);
    expect(await page.locator('textarea').getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.duty').count()).toBe(0);
  });

  it('says so when the service does not answer, and that nothing was determined', async () => {
    await page.route('**/api/determinations', (route) => route.abort());
    await determine();
    await heading().waitFor();
    expect(await page.locator('.problem').innerText()).toMatch(
      /The service could not be reached[^]*Nothing was determined/,
    );
  });

  it('says that it is working while it waits, and asks once', async () => {
    let asked = 0;
    let answer = (): void => undefined;
    const held = new Promise<void>((resolve) => (answer = resolve));
    await page.route('**/api/determinations', async (route) => {
      asked += 1;
      await held;
      await route.continue();
    });
    await determine();
    await page.getByRole('button', { name: 'Determine' }).click({ force: true });
    expect(await page.locator('.actions [role=status]').innerText()).toBe('Determining…');
    answer();
    await heading().waitFor();
    expect(await page.locator('.actions [role=status]').innerText()).toBe('');
    expect(asked).toBe(1);
  });

  it('goes by keyboard alone from sample to reason', async () => {
    const focused = () => page.evaluate<string>('document.activeElement.tagName');
    const tabTo = async (id: string): Promise<void> => {
      for (let presses = 0; presses < 20 && (await focused()) !== id; presses += 1)
        await page.keyboard.press('Tab');
      expect(await focused()).toBe(id);
    };
    await page.getByRole('radio').first().focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(factsShown).toContain('missingSince');
    await tabTo('TEXTAREA');
    await tabTo('BUTTON');
    await page.keyboard.press('Enter');
    await heading().waitFor();
    expect(await focused()).toBe('H2');
    await tabTo('SUMMARY');
    await page.keyboard.press('Enter');
    expect(await page.locator('.duty details').first().getAttribute('open')).not.toBeNull();
  });

  it('opens every reason for the printer', async () => {
    await determine();
    await heading().waitFor();
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    expect(await page.locator('details:not([open])').count()).toBe(0);
  });

  it('has targets that a wet thumb hits', async () => {
    await determine();
    await heading().waitFor();
    const sizes = `[...document.querySelectorAll('main a, main button, main summary, .option, .caution-strip a')].map((target) => [
      target.textContent.trim().slice(0, 30), target.getBoundingClientRect().height])`;
    const targets = await page.evaluate<[string, number][]>(sizes);
    expect(targets.filter(([, height]) => height < TARGET_PX)).toEqual([]);
  });

  it.each([PHONE, DESK])('fits a screen of $width pixels', async (viewport) => {
    await page.setViewportSize(viewport);
    await determine();
    await heading().waitFor();
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(viewport.width);
  });
});

describe('what axe finds on the page', () => {
  const STATES: [string, () => Promise<void>][] = [
    ['before anything is asked', () => Promise.resolve()],
    [
      'with an answer, its reasons open',
      async () => {
        await determine();
        await heading().waitFor();
        await page.evaluate("dispatchEvent(new Event('beforeprint'))");
      },
    ],
    [
      'with faults named',
      async () => {
        await page.locator('textarea').fill('{}');
        await determine();
        await heading().waitFor();
      },
    ],
  ];

  describe.each(['light', 'dark'] as const)('in the %s', (colorScheme) => {
    it.each(STATES)('%s is nothing', async (_name, reach) => {
      await page.emulateMedia({ colorScheme });
      await reach();
      await page.evaluate(axe);
      const { violations } = await page.evaluate<AxeResults>(
        "axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })",
      );
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    });
  });
});
