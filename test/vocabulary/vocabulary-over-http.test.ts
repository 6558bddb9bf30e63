import { expect, it } from 'vitest';
import { describeHouse } from '../accounts/house.js';

describeHouse('the words of the trade', (house) => {
  it('are there for anyone, by the day of the occurrence', async () => {
    const browser = house().browser();
    const older = await browser.get('/api/vocabulary?day=2023-12-31').expect(200);
    expect(older.body).toMatchObject({ day: '2023-12-31', version: '2013', note: null });
    const now = await browser.get('/api/vocabulary').expect(200);
    expect(now.body).toMatchObject({ day: house().now().slice(0, 10), version: '2024' });
    expect((now.body as { stateLabels: object[] }).stateLabels.length).toBeGreaterThan(0);
    await browser.get('/api/vocabulary?day=2023-13-01').expect(422);
  });
});
