import { create, type House } from '../accounts/house.js';

/** A small fleet of an invented business on Lake Texoma: two craft, two places, one station with its numbers. */
export async function stockFleet(house: House): Promise<void> {
  const administrator = await house.signedIn('administrator');
  const add = (path: string, body: object) => create(administrator, path, body).expect(201);
  await add('/api/craft', {
    unitName: 'PWC 7',
    type: 'personal-watercraft',
    colours: ['red', 'white'],
  });
  await add('/api/craft', { unitName: 'Pontoon 2', type: 'pontoon-boat', colours: ['blue'] });
  await add('/api/places', { name: 'Heron Cove', position: '33.8300, -96.5750' });
  await add('/api/places', { name: 'The dam', position: '33.8180, -96.5700' });
  await add('/api/stations', {
    name: 'North dock',
    timeZone: 'America/Chicago',
    address: '100 Dock Road, Pottsboro',
    position: '33.8250, -96.5800',
    numbers: [
      { id: 'n1', of: 'dispatch', name: 'County dispatch', phone: '555-0101' },
      { id: 'n2', of: 'tow', name: 'Tow', phone: '555-0102', note: 'until dark' },
      { id: 'n3', of: 'insurer', name: 'Insurer', phone: '555-0103' },
    ],
  });
}
