import type { Locator, Page } from 'playwright-core';
import type { Browser, Person } from '../accounts/house.js';
import { IncidentCase, operatorOf, peopleWith, told } from '../decision/incident-case.js';
import { BrowserDesk, WIDE } from './desk.js';

/** Needs more than first aid. */
export const STITCHED = { outcome: told('injured'), care: told('beyond-first-aid') };
export const CARE = 'What care did the operator (operator-PWC-7) need: none, first aid, or more?';

/** A desk with a manager, and incidents to decide about. */
export class DutiesDesk {
  private constructor(
    readonly desk: BrowserDesk,
    readonly manager: Person,
    private readonly asManager: Browser,
  ) {}

  static async open(): Promise<DutiesDesk> {
    const desk = await BrowserDesk.open();
    const manager = await desk.house.person('manager');
    return new DutiesDesk(desk, manager, await desk.house.signedIn(manager));
  }

  close(): Promise<void> {
    return this.desk.close();
  }

  /** Nothing about it calls for a report. */
  grounding(): Promise<IncidentCase> {
    return IncidentCase.quietGrounding(this.asManager, this.desk.house.now());
  }

  /** The operator was hurt, and nobody has said what care was needed. */
  async hurt(): Promise<IncidentCase> {
    const one = await this.grounding();
    const { care, ...operator } = operatorOf('PWC-7', { outcome: told('injured') });
    void care;
    await one.write('people', peopleWith([operator]));
    return one;
  }

  /** The page of its duties, whole. */
  async visit(
    { id }: IncidentCase,
    who: Parameters<BrowserDesk['visit']>[0] = this.manager,
    viewport = WIDE,
  ): Promise<Page> {
    const page = await this.desk.visit(who, `/incidents/${id}/duties`, { viewport });
    await page.getByRole('heading', { name: 'What the law calls for' }).waitFor();
    return page;
  }
}

export const card = (page: Page, name: string): Locator => page.getByRole('article', { name });
export const texas = (page: Page): Locator => card(page, 'Accident report, Texas');

/** The title behind which a form is. */
export const fold = (within: Page | Locator, title: string): Locator =>
  within.locator('summary').filter({ hasText: title }).first();

export async function sign(duty: Locator, kind: string): Promise<void> {
  await fold(duty, 'Decide').click();
  await duty.getByRole('radio', { name: new RegExp(`^${kind}`) }).check();
  await duty.getByRole('button', { name: `Sign: ${kind.toLowerCase()}` }).click();
}
