import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tileHost } from '../../src/server/platform/map-config.js';
import { readConfig } from '../../src/server/platform/config.js';
import { House } from '../accounts/house.js';

const TILES = {
  MAP_TILES_URL: 'https://tiles.example.org:8443/{z}/{x}/{y}.png',
  MAP_TILES_ATTRIBUTION: 'Its makers',
};

describe('pictures for the map', () => {
  let house: House;
  afterAll(() => house.close());

  it('are asked of nobody unless the business has set a host', async () => {
    house = await House.open('sqlite');
    const policy = (await house.browser().get('/')).headers as Record<string, string>;
    expect(policy['content-security-policy']).toContain("; img-src 'self' data: blob:; ");
    const staff = await house.signedIn('staff');
    expect((await staff.get('/api/map').expect(200)).body).toEqual({ tiles: null });
  });

  describe('of a host that is set', () => {
    let own: House;
    beforeAll(async () => {
      own = await House.open('sqlite', { mapTiles: readConfig(TILES).mapTiles });
    });
    afterAll(() => own.close());

    it('may come from that host alone, and the client learns of it', async () => {
      const headers = (await own.browser().get('/')).headers as Record<string, string>;
      const host = 'https://tiles.example.org:8443';
      expect(headers['content-security-policy']).toContain(`; img-src 'self' data: blob: ${host}; `);
      expect(headers['content-security-policy']?.split(host)).toHaveLength(2);
      const counsel = await own.signedIn('counsel');
      expect((await counsel.get('/api/map').expect(200)).body).toEqual({
        tiles: { url: TILES.MAP_TILES_URL, attribution: 'Its makers' },
      });
    });
  });

  it.each([
    [{ MAP_TILES_URL: TILES.MAP_TILES_URL }, 'go together'],
    [{ MAP_TILES_ATTRIBUTION: 'Its makers' }, 'go together'],
    [{ ...TILES, MAP_TILES_URL: 'http://tiles.example.org/{z}/{x}/{y}.png' }, 'MAP_TILES_URL is'],
    [{ ...TILES, MAP_TILES_URL: 'https://tiles.example.org/{z}/{x}.png' }, 'MAP_TILES_URL is'],
    [{ ...TILES, MAP_TILES_URL: 'https://a; script-src *//{z}/{x}/{y}' }, 'MAP_TILES_URL is'],
  ])('%j is refused before the start', (environment, told) => {
    expect(() => readConfig(environment)).toThrow(told);
  });

  it('names its host without the path', () => {
    expect(tileHost({ url: 'https://tiles.example.org/a/{z}/{x}/{y}.png', attribution: 'a' })).toBe(
      'https://tiles.example.org',
    );
  });
});
