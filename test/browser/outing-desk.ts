import type { Page } from 'playwright-core';
import { type Browser, create, HOUR } from '../accounts/house.js';

/** A time so many hours from now. */
export const inHours = (hours: number): string => new Date(Date.now() + hours * HOUR).toISOString();

/** The row of a craft. */
export const craft = (page: Page, unit: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: unit }) });

export const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

/** One station, five craft: one late, one out, and three that nobody wrote down. */
export async function stock(staff: Browser): Promise<void> {
  const station = {
    name: 'North dock',
    timeZone: 'America/Chicago',
    address: '100 Dock Road, Pottsboro',
    position: '33.8250, -96.5800',
    numbers: [
      { id: 'n1', of: 'dispatch', name: 'County dispatch', phone: '555-0101' },
      { id: 'n2', of: 'coast-guard', name: 'Coast Guard', channel: 'VHF 16' },
    ],
  };
  const made = await create(staff, '/api/stations', station).expect(201);
  const { id: stationId } = made.body as { id: string };
  for (const [unitName, colour] of [
    ['PWC 7', 'red'],
    ['PWC 8', 'blue'],
    ['PWC 9', 'white'],
    ['PWC 10', 'green'],
    ['Pontoon 2', 'blue'],
  ]) {
    const type = unitName === 'Pontoon 2' ? 'pontoon-boat' : 'personal-watercraft';
    await create(staff, '/api/craft', { unitName, type, colours: [colour], stationId }).expect(201);
  }
  const renter = { renter: 'Dana Whitlock', phone: '580-555-0142', aboard: 2, vehicle: 'Grey pickup' };
  const late = { unit: 'PWC 7', outAt: inHours(-3), dueBackAt: inHours(-0.75), ...renter };
  await create(staff, '/api/outings', late).expect(201);
  const due = { unit: 'PWC 8', outAt: inHours(-1), dueBackAt: inHours(0.5), renter: 'Lee Marsh' };
  await create(staff, '/api/outings', due).expect(201);
}

export async function standingOf(staff: Browser, unit: string): Promise<string | undefined> {
  const answer = await staff.get('/api/outings').expect(200);
  const { items } = answer.body as { items: { unitName: string; standing: string }[] };
  return items.find(({ unitName }) => unitName === unit)?.standing;
}
