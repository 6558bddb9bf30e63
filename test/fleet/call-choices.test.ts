import { expect, it } from 'vitest';
import { create, describeHouse } from '../accounts/house.js';

describeHouse('what a call for help chooses from', (house) => {
  it('is craft, places and the numbers for help, and nothing of renters, policies or counsel', async () => {
    const administrator = await house().signedIn('administrator');
    const { browser } = await house().device(administrator);
    await create(administrator, '/api/craft', {
      unitName: 'PWC 7',
      type: 'personal-watercraft',
      colours: ['red'],
    }).expect(201);
    await create(administrator, '/api/craft', {
      unitName: 'PWC 8',
      type: 'personal-watercraft',
      retiredOn: '2026-05-01',
    }).expect(201);
    await create(administrator, '/api/places', { name: 'Heron Cove', position: '33.82, -96.57' }).expect(201);
    await create(administrator, '/api/stations', {
      name: 'North dock',
      timeZone: 'America/Chicago',
      numbers: [
        { id: 'n1', of: 'tow', name: 'Tow', phone: '555-0101' },
        { id: 'n2', of: 'counsel', name: 'Counsel', phone: '555-0102' },
      ],
    }).expect(201);

    const { craft, places, stations } = (await browser.get('/api/device/fleet').expect(200)).body as Record<
      string,
      Record<string, unknown>[]
    >;
    expect(craft).toMatchObject([{ unitName: 'PWC 7', colours: ['red'], registrationNumber: null }]);
    expect(places).toMatchObject([{ name: 'Heron Cove', latitude: 33.82, longitude: -96.57 }]);
    expect(stations).toMatchObject([{ name: 'North dock', numbers: [{ of: 'tow' }] }]);
  });
});
