import type { Locator, Page } from 'playwright-core';
import { create, type Person } from '../accounts/house.js';
import { IncidentCase } from '../decision/incident-case.js';
import { BrowserDesk } from './desk.js';

export const press = (within: Page | Locator, name: string | RegExp) =>
  within.getByRole('button', { name }).click();
export const choose = (within: Page | Locator, group: string, option: string) =>
  within.getByRole('group', { name: group }).getByRole('radio', { name: option, exact: true }).check();
export const save = (page: Page) => press(page, /^(Save|Guardar)$/);
export const sent = (page: Page) => page.getByText(/^Sent \d\d:\d\d/).waitFor();
export const onlyHere = (page: Page) => page.getByText('Saved on this phone, not yet sent').first().waitFor();
export const lookNow = (page: Page) => page.evaluate("dispatchEvent(new Event('online'))");
export const item = (page: Page, name: string | RegExp): Locator =>
  page.locator('details.item').filter({ has: page.locator('> summary', { hasText: name }) });

export async function knows(page: Page, how: string, who: string, name: string): Promise<void> {
  await choose(page, 'How do you know it?', how);
  await page.getByLabel(who, { exact: true }).first().fill(name);
}

interface Read {
  readonly version: number;
  readonly document: Record<string, { value: unknown } | undefined> & { people?: Record<string, unknown>[] };
}

/** A desk with somebody of the staff, and incidents to write about. */
export class RecordPages {
  private constructor(
    readonly desk: BrowserDesk,
    readonly staff: Person,
  ) {}

  static async open(): Promise<RecordPages> {
    const desk = await BrowserDesk.open();
    return new RecordPages(desk, await desk.house.person('staff'));
  }

  /** A page of a section, ready to be written in. */
  async open(id: string, section: string, context: { locale?: string } = {}): Promise<Page> {
    const page = await this.desk.visit(this.staff, `/incidents/${id}/record/${section}`, { context });
    await page.getByRole('button', { name: /^(Save|Guardar)$/ }).waitFor();
    return page;
  }

  async go(page: Page, id: string, section: string): Promise<void> {
    await page.goto(`${this.desk.url}/incidents/${id}/record/${section}`);
    await page.getByRole('button', { name: 'Save' }).waitFor();
  }

  async read(id: string, section: string): Promise<Read> {
    const manager = await this.desk.house.signedIn('manager');
    return (await manager.get(`/api/incidents/${id}/sections/${section}`).expect(200)).body as Read;
  }

  /** An incident of which next to nothing is known. */
  async empty(): Promise<string> {
    const manager = await this.desk.house.signedIn('manager');
    const answer = await create(manager, '/api/incidents', { call: { said: 'help' } }).expect(201);
    return (answer.body as { id: string }).id;
  }

  /** One of which everything is known that the law asks. */
  async quiet(): Promise<IncidentCase> {
    return IncidentCase.quietGrounding(await this.desk.house.signedIn('manager'), this.desk.house.now());
  }
}
