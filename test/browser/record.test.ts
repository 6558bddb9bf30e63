import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create, PASSWORD, type Person } from '../accounts/house.js';
import { operatorOf, peopleWith, told } from '../decision/incident-case.js';
import { type BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { choose, item, knows, lookNow, onlyHere, press, RecordPages, save, sent } from './record-pages.js';

let pages: RecordPages;
let desk: BrowserDesk;
let staff: Person;
beforeAll(async () => {
  pages = await RecordPages.open();
  ({ desk, staff } = pages);
});
afterAll(() => desk.close());

describe('the record', () => {
  it(
    'is typed section by section, in any order, and the law is determined from it',
    { timeout: 60_000 },
    async () => {
      const id = await pages.empty();
      const page = await pages.open(id, 'people');
      const faults = listenForFaults(page);
      await press(page, 'Add: Person');
      const person = item(page, 'Person 1');
      await person.getByLabel('Name').first().fill('Ann Reed');
      await choose(page, 'Part in it', 'Operator');
      await choose(page, 'What became of them', 'Injured');
      await choose(page, 'Care needed', 'More than first aid');
      await save(page);
      // Nobody has said yet how it is known.
      await page.getByText('Say how you know it').waitFor();
      await expectReach(page);
      await takePictures(page, 'record-source');
      await knows(page, 'Told', 'Who told it', 'Bo Lane');
      await page.getByText('Told: Bo Lane').first().waitFor();
      await save(page);
      await sent(page);
      await expectReach(page);
      expect(await smallTargets(page)).toEqual([]);
      await takePictures(page, 'record-people');

      await pages.go(page, id, 'craft');
      await knows(page, 'Seen', 'Who saw it', 'Bo Lane');
      await press(page, 'Add: Craft');
      await page.getByLabel('What it is called').fill('PWC 7');
      await page.getByLabel('Type of craft').selectOption('personal-watercraft');
      await page.getByText('For this kind of craft').waitFor();
      await choose(page, 'Throttle on while turning?', 'No');
      await page.getByLabel('Power setting').fill('Learner mode');
      await page.getByRole('group', { name: 'Speed' }).getByLabel('Figure').fill('25.5');
      await save(page);
      await sent(page);

      await pages.go(page, id, 'time-and-place');
      await knows(page, 'Told', 'Who told it', 'Bo Lane');
      await page.getByRole('combobox', { name: 'State' }).selectOption('TX');
      const when = new Date(Date.now() - 3_600_000).toLocaleString('sv-SE', { timeZone: 'America/Chicago' });
      await page
        .getByRole('group', { name: 'When it happened' })
        .getByLabel('Time')
        .fill(when.slice(0, 16).replace(' ', 'T'));
      await choose(page, 'How exact is that?', 'About');
      await save(page);
      await sent(page);
      expect(await smallTargets(page)).toEqual([]);

      await pages.go(page, id, 'account');
      await knows(page, 'Seen', 'Who saw it', 'Bo Lane');
      await page.getByRole('combobox', { name: 'Kind of occurrence' }).selectOption('person-ejected');
      await choose(page, 'Was a craft or its equipment involved?', 'Yes');
      await save(page);
      await sent(page);
      await page.goto(`${desk.url}/incidents/${id}/duties`);
      const report = page.getByRole('article', { name: 'Accident report, Texas' });
      await report.getByText('Required', { exact: true }).first().waitFor();
      expect((await pages.read(id, 'people')).document.people).toMatchObject([
        { name: 'Ann Reed', outcome: { value: 'injured', known: 'told', by: 'Bo Lane' } },
      ]);
      expect(faults).toEqual([]);
      await page.context().close();
    },
  );

  it('leads to what the report lacks, takes an item back and gives it again, and needs no pointer', async () => {
    const one = await pages.quiet();
    const page = await desk.visit(staff, `/incidents/${one.id}`);
    const people = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'People' }) });
    await people.getByText(/The official report still lacks/).click();
    await people.getByRole('link', { name: /Experience/ }).click();
    await expect
      .poll(() => page.evaluate('document.activeElement.closest("[data-path]")?.dataset.path'))
      .toBe('/people/operator-PWC-7/experience');
    await page.getByText('The official report lacks this.').first().waitFor();
    await page
      .getByRole('button', { name: /^Remove: / })
      .last()
      .focus();
    await page.keyboard.press('Enter');
    await page.getByText(/^Removed: /).waitFor();
    await page.getByText('Not saved yet. What you write is kept on this phone.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText(/^Removed: /).waitFor({ state: 'detached' });
    await save(page);
    await page.getByText('Nothing was written that is not in the record already.').waitFor();
    await page.context().close();
  });

  it('keeps what two people write in one section, also in one text, and a person chooses where one answer can stand', async () => {
    const one = await pages.quiet();
    await one.write('conditions', { weather: told('Clear sky') });
    const page = await pages.open(one.id, 'conditions');
    await knows(page, 'Seen', 'Who saw it', 'Ann');
    await page.getByLabel('Weather', { exact: true }).fill('Clear sky, then clouds from the north');
    await page.getByRole('group', { name: 'Wind', exact: true }).getByLabel('Figure').fill('12');
    // Somebody else is faster.
    await one.write('conditions', {
      weather: told('Clear sky until four'),
      wind: { value: { amount: 9, unit: 'mph' }, known: 'read-off' },
      water: told('Choppy'),
    });
    await page.getByLabel('Why is it changed?').fill('Remembered more.');
    await save(page);
    await page.getByRole('heading', { name: 'Changed by someone else while you were writing' }).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'record-conflict');
    await save(page);
    await page.getByText('2 things keep it from being saved.').waitFor();
    const wind = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Wind' }) });
    expect(await wind.innerText()).toContain('12 mph');
    expect(await wind.innerText()).toContain('9 mph');
    await press(wind, 'Keep mine');
    await page.getByLabel('Why is it changed?').fill('Read off the gauge at the dock.');
    await save(page);
    await page.getByText(/^Sent .* both kept$/).waitFor();
    const { document } = await pages.read(one.id, 'conditions');
    expect(document).toMatchObject({
      weather: { value: 'Clear sky until four\nClear sky, then clouds from the north' },
      wind: { value: { amount: 12, unit: 'mph' } },
      water: { value: 'Choppy' },
    });
    await page.context().close();
  });

  it('without signal is saved on the phone, says so, and is sent once when the signal is back', async () => {
    const one = await pages.quiet();
    const page = await pages.open(one.id, 'account');
    await page.context().setOffline(true);
    await knows(page, 'Seen', 'Who saw it', 'Ann');
    await page.getByLabel('What happened, in order').fill('It turned left before the dock.');
    await save(page);
    await onlyHere(page);
    await page.getByLabel('What happened, in order').fill('It turned left before the dock. Two fell in.');
    await page.getByText('Saved on this phone, not yet sent').first().waitFor();
    await save(page);
    await onlyHere(page);
    // Somebody else finishes another question of the same section meanwhile.
    await one.browser
      .post(`/api/incidents/${one.id}/sections/account/additions`)
      .send({ bridgeStruck: told('no') })
      .expect(200);
    const before = await pages.read(one.id, 'account');
    await page.context().setOffline(false);
    await lookNow(page);
    await page.getByText(/^Sent .* both kept$/).waitFor();
    const after = await pages.read(one.id, 'account');
    expect(after.version).toBe(before.version + 1);
    expect(after.document).toMatchObject({
      bridgeStruck: { value: 'no' },
      whatHappened: { value: 'It turned left before the dock. Two fell in.', by: 'Ann' },
    });
    await page.context().close();
  });

  it('outlives the end of the session and a reload while somebody types', async () => {
    const id = await pages.empty();
    const page = await pages.open(id, 'timeline');
    await press(page, 'Add: Line');
    await page.getByLabel('What', { exact: true }).fill('Boat away with two aboard.');
    await page.reload();
    await item(page, 'Boat away').waitFor();
    expect(await page.getByLabel('What', { exact: true }).inputValue()).toBe('Boat away with two aboard.');
    await page.context().clearCookies();
    await page.getByLabel('What', { exact: true }).fill('Boat away with two aboard and a stretcher.');
    await save(page);
    const shut = page.getByRole('heading', { name: 'Sign in' });
    await expect.poll(async () => (await lookNow(page), shut.count())).toBe(1);
    await page.getByLabel('Sign-in name').fill(staff.signInName);
    await page.getByLabel('Password').fill(PASSWORD);
    await press(page.locator('main'), 'Sign in');
    await expect
      .poll(async () => {
        await lookNow(page);
        return (await pages.read(id, 'timeline')).document;
      })
      .toMatchObject({ entries: [{ what: 'Boat away with two aboard and a stretcher.' }] });
    await page.context().close();
  });

  it('helps with the wording of own words before the first save alone, and stops nothing', async () => {
    const id = await pages.empty();
    const page = await pages.open(id, 'account');
    const aid = page.getByRole('note').filter({ hasText: 'Say what was seen.' });
    const happened = page.getByLabel('What happened, in order');
    await choose(page, 'How do you know it?', 'Seen');
    await happened.fill('He was careless and probably drunk, that is negligence.');
    await aid.waitFor();
    expect(await aid.getByRole('listitem').count()).toBe(4);
    await aid.getByText('What was seen, heard or smelled?').waitFor();
    await expectReach(page);
    await takePictures(page, 'record-wording');
    // What somebody else told is their words.
    await choose(page, 'How do you know it?', 'Told');
    await aid.waitFor({ state: 'detached' });
    await choose(page, 'How do you know it?', 'Seen');
    await aid.waitFor();
    await save(page);
    await sent(page);
    await aid.waitFor({ state: 'detached' });
    expect((await pages.read(id, 'account')).document).toMatchObject({
      whatHappened: { value: 'He was careless and probably drunk, that is negligence.' },
    });
    await pages.go(page, id, 'call');
    await page.getByLabel('What the caller said, in their words').fill('It was his fault.');
    await page.getByText('Not saved yet.').waitFor();
    expect(await aid.count()).toBe(0);
    await page.context().close();
  });

  it('is added to by a shared device, which reads nothing, and is read by counsel, who changes nothing', async () => {
    const one = await pages.quiet();
    await one.write('people', peopleWith([operatorOf('PWC-7', { name: 'Ann Reed' })]));
    const asked: string[] = [];
    const page = await desk.visitOnDevice('/call');
    page.on('request', (request) => asked.push(`${request.method()} ${new URL(request.url()).pathname}`));
    await page.goto(`${desk.url}/incidents/${one.id}/record/people`);
    await page.getByText('Nobody is signed in on this device').waitFor();
    expect(await page.getByText('Ann Reed').count()).toBe(0);
    await press(page, 'Add: Person');
    await page.getByLabel('Name').first().fill('Cy Marsh');
    await expectReach(page);
    await takePictures(page, 'record-device');
    await press(page, 'Add to the record');
    await expect
      .poll(async () => (await pages.read(one.id, 'people')).document.people?.map(({ name }) => name))
      .toEqual(['Ann Reed', 'Cy Marsh']);
    await sent(page);
    expect(asked.filter((one) => one.startsWith('GET /api/incidents'))).toEqual([]);
    await page.context().close();

    const counsel = await desk.house.person('counsel');
    await create(one.browser, `/api/incidents/${one.id}/counsel-requests`, {
      counsel: counsel.name,
      counselAccount: counsel.id,
      requestedOn: '2026-06-20',
    }).expect(201);
    const reading = await desk.visit(counsel, `/incidents/${one.id}/record/people`);
    await reading.getByText('Counsel reads the record and changes nothing.').waitFor();
    expect(await reading.getByRole('button', { name: 'Save' }).count()).toBe(0);
    expect(await reading.getByText('Cy Marsh').count()).toBeGreaterThan(0);
    await expectReach(reading);
    await takePictures(reading, 'record-read');
    await reading.context().close();
  });

  it('is written even where nothing of it is on the phone and there is no signal', async () => {
    const one = await pages.quiet();
    const page = await desk.visit(staff, '/call');
    await page.route('**/api/incidents/**', (route) => route.abort());
    await page.goto(`${desk.url}/incidents/${one.id}/record/account`);
    await page.getByText('What stands in the record is not on this phone').waitFor();
    await knows(page, 'Seen', 'Who saw it', 'Ann');
    await page.getByLabel('What happened, in order').fill('It turned left.');
    await save(page);
    await onlyHere(page);
    await expectReach(page);
    await page.unroute('**/api/incidents/**');
    await lookNow(page);
    await page.getByText(/^Sent .* both kept$/).waitFor();
    expect((await pages.read(one.id, 'account')).document).toMatchObject({
      casualtyTypes: { value: ['grounding'] },
      whatHappened: { value: 'It turned left.' },
    });
    await page.context().close();
  });

  it('is written in Spanish by whoever reads that', async () => {
    const id = await pages.empty();
    const page = await pages.open(id, 'conditions', { locale: 'es-US' });
    await page.getByRole('heading', { name: 'Tiempo y agua' }).waitFor();
    await page.getByRole('group', { name: '¿Cómo lo sabe?' }).getByRole('radio', { name: 'Visto' }).check();
    await page.getByLabel('Luz').fill('Day');
    await save(page);
    await page.getByText(/^Enviado a las \d\d:\d\d/).waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
