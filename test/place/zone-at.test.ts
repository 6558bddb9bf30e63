import { describe, expect, it } from 'vitest';
import { STATE_NAMES, isStateCode } from '../../shared/place/state-codes.js';
import { singleZoneOf, zonesOf } from '../../shared/place/zones-of-states.js';
import { buildGeography } from '../../shared/place/build-geography.js';
import { loadGeography } from '../../src/server/place/place.api.js';

describe('zone of a position', () => {
  const geography = loadGeography();
  // Zones by 49 CFR 71.3 to 71.14; places and coordinates from memory.
  it.each([
    ['Lake Texoma', 33.818, -96.571, 'America/Chicago'],
    ['Lake Havasu, Arizona side', 34.48, -114.35, 'America/Phoenix'],
    ['Lake Mead, Nevada', 36.1, -114.8, 'America/Los_Angeles'],
    ['Lake Winnipesaukee', 43.6, -71.33, 'America/New_York'],
    ['Pensacola, in the Central part of Florida', 30.42, -87.21, 'America/Chicago'],
    ['Miami', 25.77, -80.19, 'America/New_York'],
    ['El Paso, in the Mountain part of Texas', 31.76, -106.49, 'America/Denver'],
    ["Coeur d'Alene, in the Pacific part of Idaho", 47.67, -116.78, 'America/Los_Angeles'],
    ['Boise', 43.61, -116.2, 'America/Boise'],
    ['Detroit', 42.34, -83.06, 'America/Detroit'],
    ['Indianapolis', 39.77, -86.16, 'America/Indiana/Indianapolis'],
    ['Honolulu', 21.3, -157.86, 'Pacific/Honolulu'],
    ['Anchorage', 61.2, -149.9, 'America/Anchorage'],
    ['Attu', 52.9, 172.9, 'America/Adak'],
    ['San Juan', 18.4, -66.06, 'America/Puerto_Rico'],
    ['St Thomas', 18.34, -64.93, 'America/St_Thomas'],
    ['Guam', 13.45, 144.78, 'Pacific/Guam'],
    ['Saipan', 15.2, 145.75, 'Pacific/Saipan'],
    ['Tutuila, a day behind Apia', -14.3, -170.7, 'Pacific/Pago_Pago'],
    ['10 km off Virginia Beach', 36.85, -75.86, 'America/New_York'],
    ['10 km off Tutuila', -14.45, -170.75, 'Pacific/Pago_Pago'],
    ['18 km off Pensacola Beach', 30.17, -87.15, 'America/Chicago'],
    ['100 km off North Carolina: no state, the zone of the sea', 35, -74.5, 'Etc/GMT+5'],
  ])('%s', (_place, latitude, longitude, zone) => {
    expect(geography.zoneAt(latitude, longitude)).toBe(zone);
  });
});

describe('a state with several zones', () => {
  const square = {
    states: ['ID'],
    longitude: Float32Array.from([-116, -115, -115, -116, -116]),
    latitude: Float32Array.from([44, 44, 44.05, 44.05, 44]),
    oneSide: Uint8Array.from([0, 0, 0, 0, 255]),
    otherSide: Uint8Array.from([255, 255, 255, 255, 255]),
    bandStart: Uint32Array.from([...Array<number>(590).fill(0), 0, 4]),
    segments: Uint16Array.from([0, 1, 2, 3]),
  };

  it('takes the zone of the table when the state has it', () => {
    expect(buildGeography(square, () => 'America/Boise').zoneAt(44.02, -115.5)).toBe('America/Boise');
  });

  it('looks around for a zone of the state when the table names one that it never had', () => {
    const lookUp = (_latitude: number, longitude: number): string =>
      longitude > -115.49 ? 'America/Los_Angeles' : 'America/Regina';
    expect(buildGeography(square, lookUp).zoneAt(44.02, -115.5)).toBe('America/Los_Angeles');
  });

  it('falls back on the zone of most of the state', () => {
    expect(buildGeography(square, () => 'America/Regina').zoneAt(44.02, -115.5)).toBe('America/Boise');
  });
});

describe('zones of the states', () => {
  it('has at least one zone for every state and territory, each known to the runtime', () => {
    for (const state of Object.keys(STATE_NAMES)) {
      const zones = zonesOf(state);
      expect(zones.length, state).toBeGreaterThan(0);
      for (const timeZone of zones) {
        expect(() => new Intl.DateTimeFormat('en-US', { timeZone }), timeZone).not.toThrow();
      }
    }
  });

  // 49 CFR 71.5, 71.7 and 71.9 draw the lines through these states; Arizona: 15 U.S.C. 260a; Alaska: 71.11, 71.12.
  it('has more than one for exactly the states that a line runs through', () => {
    const several = Object.keys(STATE_NAMES).filter((state) => singleZoneOf(state) === null);
    const expected = 'AK AZ FL ID IN KS KY MI ND NE NV OR SD TN TX'.split(' ');
    expect(several.sort()).toEqual(expected);
  });

  it.each([
    ['OK', 'America/Chicago'],
    ['NH', 'America/New_York'],
    ['UT', 'America/Denver'],
    ['CA', 'America/Los_Angeles'],
    ['HI', 'Pacific/Honolulu'],
    ['PR', 'America/Puerto_Rico'],
    ['TX', null],
    ['XX', null],
    ['toString', null],
  ])('single zone of %s: %s', (state, zone) => {
    expect(singleZoneOf(state)).toBe(zone);
  });
});

describe('state codes', () => {
  it('knows fifty states, the district and five territories', () => {
    expect(Object.keys(STATE_NAMES)).toHaveLength(56);
    for (const code of ['TX', 'DC', 'AS', 'GU', 'MP', 'PR', 'VI']) expect(isStateCode(code)).toBe(true);
    for (const code of ['tx', 'XX', '', 'CM', 'toString', 'UM']) expect(isStateCode(code)).toBe(false);
  });
});
