import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BrowserDesk, choose, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { stockFleet } from './small-fleet.js';

/** In the water off Heron Cove. */
const HERE = { latitude: 33.8205, longitude: -96.575, accuracy: 12 };
const AT_THE_PLACE = { context: { geolocation: HERE, permissions: ['geolocation'] } };

interface Line {
  id: string;
  reference: string;
}

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
});
afterAll(() => desk.close());

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const ask = (page: Page, question: string) => page.getByRole('heading', { name: question }).waitFor();
const sent = (page: Page) => page.getByText(/^Sent \d\d:\d\d/).waitFor();

async function incidents(): Promise<Line[]> {
  const manager = await desk.house.signedIn('manager');
  const answer = await manager.get('/api/incidents').expect(200);
  return (answer.body as { items: Line[] }).items;
}

async function recordOf(id: string): Promise<Record<string, object>> {
  const manager = await desk.house.signedIn('manager');
  const answer = await manager.get(`/api/incidents/${id}/record`).expect(200);
  const { sections } = answer.body as { sections: { section: string; document: object }[] };
  return Object.fromEntries(sections.map(({ section, document }) => [section, document]));
}

const idOf = (page: Page): string => page.url().split('/').at(-1) ?? '';

describe('a call for help', () => {
  it('has craft, place, people and help sent after at most twelve touches on an enrolled phone', async () => {
    const page = await desk.visitOnDevice('/call', AT_THE_PLACE);
    const faults = listenForFaults(page);
    let touches = 0;
    const touch = async (work: Promise<void>): Promise<void> => {
      await work;
      touches += 1;
    };
    expect(await page.getByRole('link', { name: 'Call 911' }).getAttribute('href')).toBe('tel:911');
    await touch(press(page, /^PWC 7/));
    await touch(press(page, 'Next'));
    await ask(page, 'Are you where it happened?');
    await touch(press(page, 'Yes, here'));
    await ask(page, 'Is everyone accounted for?');
    await touch(choose(page, '2'));
    await touch(choose(page, 'Yes'));
    await ask(page, 'Is anyone hurt?');
    await touch(choose(page, 'Not known yet'));
    await ask(page, 'What happened?');
    await touch(choose(page, 'Turned over'));
    await touch(press(page, '911 called'));
    await touch(press(page, 'Boat away'));
    expect(touches).toBeLessThanOrEqual(12);
    await sent(page);
    expect(await page.getByRole('heading', { level: 1 }).locator('..').innerText()).toMatch(/\d{4}-\d{4}/);

    const record = await recordOf(idOf(page));
    expect(record['call']).toMatchObject({ kind: 'now', craftNamed: ['PWC 7'] });
    expect(record['time-and-place']).toMatchObject({
      position: { value: { latitude: 33.8205, longitude: -96.575, accuracyM: 12 }, known: 'read-off' },
    });
    expect(record['people']).toMatchObject({ everyoneAccountedFor: { value: 'yes', known: 'told' } });
    expect(record['emergency-response']).toMatchObject({
      headcountExpected: { value: 2 },
      emergencyServicesCalled: { value: 'yes' },
      calls: [{ to: '911', made: { how: 'pressed' } }],
      responders: [{ kind: 'our-crew', left: { how: 'pressed' } }],
    });
    expect(record['account']).toMatchObject({ casualtyTypes: { value: ['capsizing'] } });
    expect(JSON.stringify(record['timeline'])).toContain('Anyone hurt? Not known yet.');
    expect(faults).toEqual([]);
    await takePictures(page, 'call-done');
    await page.context().close();
  });

  it('takes a stamp and an answer back, and keeps in the timeline that it was said', async () => {
    const page = await desk.visit('staff', '/call', AT_THE_PLACE);
    await press(page, 'All ashore');
    await press(page, 'Undo');
    await press(page, /^Pontoon 2/);
    await press(page, 'Next');
    await press(page, 'No, elsewhere');
    await press(page, 'Heron Cove');
    await choose(page, 'No');
    await sent(page);
    await press(page, 'Change: All there');
    await ask(page, 'Is everyone accounted for?');
    await choose(page, 'Yes');
    await ask(page, 'Is anyone hurt?');
    await expect
      .poll(async () => (await recordOf(idOf(page)))['people'], { timeout: 20_000 })
      .toMatchObject({ everyoneAccountedFor: { value: 'yes' } });
    const record = await recordOf(idOf(page));
    expect(record['emergency-response'] ?? {}).not.toHaveProperty('headcountDone');
    expect(JSON.stringify(record['timeline'])).toContain('Taken back, pressed by mistake: All ashore.');
    expect(JSON.stringify(record['timeline'])).toContain('Everyone accounted for? No.');
    await page.context().close();
  });

  it('is read out from one card: position two ways, landmark, craft, people, ramp', async () => {
    const page = await desk.visitOnDevice('/call', AT_THE_PLACE);
    await press(page, /^PWC 7/);
    await press(page, 'Next');
    await press(page, 'Yes, here');
    await ask(page, 'Is everyone accounted for?');
    await press(page, 'Read this out');
    const card = page.getByRole('dialog', { name: 'Read this out' });
    const text = await card.innerText();
    expect(text).toContain('33° 49.23′ N, 96° 34.50′ W');
    expect(text).toContain('33.82050, -96.57500');
    expect(text).toContain('of The dam');
    expect(text).toContain('PWC 7 (red, white)');
    expect(text).toContain('North dock, 100 Dock Road, Pottsboro');
    await card.getByLabel('Call-back number of this phone').fill('555-0111');
    await card.getByLabel('Call-back number of this phone').blur();
    await card.getByText('Call us back on').waitFor();
    await expectReach(page);
    await takePictures(page, 'call-read-out');
    await page.context().close();
  });

  it('finds the craft by what was said of it', async () => {
    const page = await desk.visitOnDevice('/call');
    await page.getByLabel('Number, colour or renter’s name').fill('the blue one');
    await page.getByRole('group', { name: 'Likely' }).waitFor();
    expect(await page.getByRole('group', { name: 'Likely' }).getByRole('button').allInnerTexts()).toEqual([
      'Pontoon 2\nblue',
    ]);
    await page.context().close();
  });
});

describe('other ways into a call', () => {
  it('take a late caller without strip and stamps', async () => {
    const page = await desk.visit('staff', '/call?as=late');
    await page.getByLabel('Name').fill('Rita Vale');
    await page.getByLabel('Number to call back').fill('555-0120');
    await page.getByLabel('When did it happen?').fill('Saturday about four');
    await press(page, 'Next');
    await ask(page, 'Which craft?');
    expect(await page.getByRole('link', { name: 'Call 911' }).count()).toBe(0);
    expect(await page.getByRole('button', { name: '911 called' }).count()).toBe(0);
    await sent(page);
    expect((await recordOf(idOf(page)))['call']).toMatchObject({
      kind: 'late',
      caller: { name: 'Rita Vale', callBack: '555-0120' },
      happenedWhen: { value: 'Saturday about four', known: 'told' },
    });
    await page.context().close();
  });

  it('print a blank sheet with the numbers for help', async () => {
    const page = await desk.visitOnDevice('/call/sheet');
    await page.getByText('County dispatch').waitFor();
    expect(await page.getByText('Insurer').count()).toBe(0);
    await expectReach(page);
    await takePictures(page, 'call-sheet');
    await page.context().close();
  });
});

describe('an enrolled phone without a sign-in', () => {
  it('adds to the record and cannot read it', async () => {
    const page = await desk.visitOnDevice('/call');
    await press(page, /^PWC 7/);
    await sent(page);
    const id = idOf(page);
    expect((await incidents()).some((one) => one.id === id)).toBe(true);
    for (const path of ['', '/record', '/sections/call', '/amendments']) {
      const answer = await page.context().request.get(`${desk.url}/api/incidents/${id}${path}`);
      expect(answer.status(), path).toBe(401);
    }
    expect(await page.getByRole('link', { name: 'Open the record' }).count()).toBe(0);
    await page.context().close();
  });

  it('cannot be called from a browser that nobody enrolled and nobody signed in to', async () => {
    const page = await desk.visit(null, '/call');
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    await page.context().close();
  });
});

describe('every state of the call page', () => {
  const STATES: [string, (page: Page) => Promise<void>][] = [
    ['first', () => Promise.resolve()],
    [
      'where',
      async (page) => {
        await press(page, /^PWC 7/);
        await press(page, 'Next');
        await ask(page, 'Are you where it happened?');
      },
    ],
    [
      'elsewhere',
      async (page) => {
        await press(page, 'Skip');
        await press(page, 'No, elsewhere');
        await page.getByLabel('Coordinates, or in words').fill('33 49.23 N 96 34.5 W');
      },
    ],
    [
      'people',
      async (page) => {
        await press(page, 'Skip');
        await press(page, 'Skip');
        await ask(page, 'Is everyone accounted for?');
        await press(page, '911 called');
      },
    ],
    [
      'happened',
      async (page) => {
        for (const question of [
          'Are you where it happened?',
          'Is everyone accounted for?',
          'Is anyone hurt?',
          'What happened?',
        ]) {
          await press(page, 'Skip');
          await ask(page, question);
        }
      },
    ],
    [
      'no-signal',
      async (page) => {
        await page.route('**/api/**', (route) => route.abort());
        await press(page, /^PWC 7/);
        await page.getByText('Saved on this phone, not yet sent').first().waitFor();
      },
    ],
  ];

  it.each(STATES)('%s can be used by everybody', async (name, reach) => {
    const page = await desk.visitOnDevice('/call', AT_THE_PLACE);
    await page.getByRole('button', { name: /^PWC 7/ }).waitFor();
    await reach(page);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, `call-${name}`);
    await page.context().close();
  });
});
