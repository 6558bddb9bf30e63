import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Role } from '../../shared/kernel/role.js';
import { create, House, PASSWORD, type Person } from '../accounts/house.js';
import { launchBrowser } from '../support/browser.js';

export const PHONE = { width: 390, height: 844 };
export const WIDE = { width: 1280, height: 900 };
/** A narrow phone, and what is left of a desk screen at 400 %. */
export const NARROW = { width: 320, height: 640 };

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const AXE_RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const PICTURES = join(import.meta.dirname, '..', '..', 'screenshots');

interface Visit {
  readonly viewport?: { width: number; height: number };
  readonly context?: BrowserContextOptions;
}

/** A running service on an empty SQLite database, and a browser before it. Needs `npm run build` for dist/web. */
export class BrowserDesk {
  private constructor(
    readonly house: House,
    readonly browser: Browser,
    readonly url: string,
  ) {}

  static async open(config: Parameters<typeof House.open>[1] = {}): Promise<BrowserDesk> {
    const [house, browser] = await Promise.all([House.open('sqlite', config), launchBrowser()]);
    await house.app.listen(0, '127.0.0.1');
    return new BrowserDesk(house, browser, (await house.app.getUrl()).replace('[::1]', '127.0.0.1'));
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.house.close();
  }

  /**
   * A page of somebody's browser; nobody is signed in with null. The worker that keeps the desk on the device stays out,
   * unless `context` says `serviceWorkers: 'allow'`, as requests that go through it cannot be held or refused by a test.
   */
  async visit(who: Role | Person | null, path: string, visit: Visit = {}): Promise<Page> {
    const page = await this.openPage(visit);
    if (who !== null) await this.signIn(page.context(), who);
    await page.goto(`${this.url}${path}`);
    return page;
  }

  /** A page on a phone that an administrator has enrolled; nobody is signed in. */
  async visitOnDevice(path: string, visit: Visit = {}): Promise<Page & { deviceId?: string }> {
    const page = await this.openPage(visit);
    await this.enrol(page.context());
    await page.goto(`${this.url}${path}`);
    return page;
  }

  /** Signs in past the page: the cookie is what a page gets too. */
  async signIn(context: BrowserContext, who: Role | Person): Promise<Person> {
    const person = typeof who === 'string' ? await this.house.person(who) : who;
    const data = { signInName: person.signInName, password: PASSWORD };
    const answer = await context.request.post(`${this.url}/api/session`, { data });
    expect(answer.status()).toBe(200);
    return person;
  }

  /** Enrols the browser as a device; gives the device's id. */
  async enrol(context: BrowserContext, name = 'Dock phone'): Promise<string> {
    const administrator = await this.house.signedIn('administrator');
    const made = await create(administrator, '/api/devices', { name }).expect(201);
    const { id, code } = made.body as { id: string; code: string };
    const answer = await context.request.post(`${this.url}/api/device`, { data: { code } });
    expect(answer.status()).toBe(200);
    return id;
  }

  private async openPage({ viewport = PHONE, context = {} }: Visit): Promise<Page> {
    const opened = await this.browser.newContext({
      viewport,
      serviceWorkers: 'block',
      locale: 'en-US',
      timezoneId: 'America/Chicago',
      ...context,
    });
    return opened.newPage();
  }
}

/** What axe finds on the page as it stands: a list of rule and element, empty when all is well. */
export async function findBarriers(page: Page): Promise<[string, string[]][]> {
  await page.evaluate(AXE);
  // What stays on the screen covers half of a link that lies under it just then; axe would take that half for the link.
  const setPosition = (position: string): Promise<void> =>
    page.evaluate(
      `for (const bar of document.querySelectorAll('.actions, .caution-strip')) bar.style.position = '${position}'`,
    );
  await setPosition('static');
  const { violations } = await page.evaluate<AxeResults>(
    `axe.run({ runOnly: ${JSON.stringify(AXE_RULES)} })`,
  );
  await setPosition('');
  return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
}

/** Nothing for axe in the light and in the dark, and no scrolling sideways down to 320 pixels. */
export async function expectReach(page: Page): Promise<void> {
  const viewport = page.viewportSize() ?? PHONE;
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await findBarriers(page)).toEqual([]);
  }
  await page.emulateMedia({ colorScheme: null });
  await page.setViewportSize(NARROW);
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(NARROW.width);
  await page.setViewportSize(viewport);
}

/** Presses one of a few answers where it is seen, once it stands still. */
export async function choose(page: Page, name: string): Promise<void> {
  await page.locator('.option', { has: page.getByRole('radio', { name, exact: true }) }).click();
}

/** Everything that is pressed, and is lower than a wet thumb needs (48 px, WCAG 2.2 asks for 24). */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate<
    string[]
  >(`[...document.querySelectorAll('main a, main button, main summary, main .option, main input:not([type=radio], [type=checkbox]), main select, header a, header summary')]
    .filter((target) => target.checkVisibility() && target.closest('p, li p') === null)
    .filter((target) => target.getBoundingClientRect().height < 48)
    .map((target) => target.outerHTML.slice(0, 120))`);
}

/** Pictures of the page at 390 and 1280 px, light and dark, in the ignored folder screenshots/. For people to look at. */
export async function takePictures(page: Page, name: string): Promise<void> {
  mkdirSync(PICTURES, { recursive: true });
  const viewport = page.viewportSize() ?? PHONE;
  for (const size of [PHONE, WIDE]) {
    await page.setViewportSize(size);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const path = join(PICTURES, `${name}-${size.width}-${colorScheme}.png`);
      await page.screenshot({ path, fullPage: true });
    }
  }
  await page.emulateMedia({ colorScheme: null });
  await page.setViewportSize(viewport);
}

/** Faults of scripts and of the content policy that a page has shown; a test holds that there are none. */
export function listenForFaults(page: Page): string[] {
  const said: string[] = [];
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('console', (message) => {
    if (/Content Security Policy|Refused to/.test(message.text())) said.push(message.text());
  });
  return said;
}
