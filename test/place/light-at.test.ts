import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightAt, type LightAt } from '../../shared/place/light-at.js';

type Moment = 'civilDawn' | 'sunrise' | 'sunset' | 'civilDusk';

/** Minutes by which a moment, rounded as the Naval Observatory prints it, differs from a printed hhmm. */
function minutesOff(day: LightAt, moment: Moment, printed: string, offsetMinutes: number): number {
  const at = day[moment];
  if (at === null) throw new Error(`no ${moment}`);
  const minuteOfDay = Math.round(at / 60_000 + offsetMinutes) % 1440;
  return Math.abs(minuteOfDay - (Number(printed.slice(0, 2)) * 60 + Number(printed.slice(-2))));
}

const noon = (date: string, offsetMinutes: number): number =>
  Date.parse(`${date}T12:00:00Z`) - offsetMinutes * 60_000;

describe('published sunrise and sunset, to a minute', () => {
  // Atlanta: U.S. Naval Observatory, as the PyEphem documentation quotes it. Decorah, Iowa: a college
  // weather page of the Observatory's times; it names neither year nor position (both inferred).
  it.each([
    ['Atlanta', 33.8, -84.4, '2009-09-06', -240, '06:50', '07:15', '19:56', '20:21'],
    ['Decorah', 43.3, -91.79, '2012-09-01', -300, '06:02', '06:32', '19:41', '20:11'],
    ['Decorah', 43.3, -91.79, '2012-09-15', -300, '06:19', '06:47', '19:16', '19:45'],
    ['Decorah', 43.3, -91.79, '2012-09-30', -300, '06:36', '07:04', '18:49', '19:18'],
  ])('%s, %d %d on %s', (_place, latitude, longitude, date, offset, dawn, rise, set, dusk) => {
    const day = lightAt(latitude, longitude, noon(date, offset), offset);
    expect(minutesOff(day, 'civilDawn', dawn, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'sunrise', rise, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'sunset', set, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'civilDusk', dusk, offset)).toBeLessThanOrEqual(1);
  });

  it('Wayne, New Jersey, 25 June 1990', () => {
    // Worked example in the Almanac for Computers, U.S. Naval Observatory, 1990, finished by its method.
    const day = lightAt(40.9, -74.3, noon('1990-06-25', -240), -240);
    expect(minutesOff(day, 'sunrise', '05:26', -240)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'sunset', '20:33', -240)).toBeLessThanOrEqual(1);
  });

  // U.S. Naval Observatory, table for one year (2008), W 121 55 N 37 24, eight hours west of Greenwich,
  // standard time all year: the first three days of each month, January to December.
  const TABLE = [
    ['rise', 1, '0722 0711 0638 0552 0512 0448 0451 0512 0539 0604 0633 0704'],
    ['set', 1, '1700 1732 1802 1831 1858 1923 1932 1915 1836 1750 1709 1650'],
    ['rise', 2, '0722 0710 0637 0551 0511 0448 0451 0513 0539 0604 0634 0705'],
    ['set', 2, '1701 1733 1803 1832 1859 1924 1932 1914 1834 1749 1708 1650'],
    ['rise', 3, '0722 0710 0635 0549 0510 0448 0452 0514 0540 0605 0635 0706'],
    ['set', 3, '1702 1734 1804 1833 1900 1924 1932 1913 1833 1747 1707 1650'],
  ] as const;

  it.each(TABLE)('Santa Clara Valley 2008: sun%s on day %d of each month', (kind, dayOfMonth, printed) => {
    printed.split(' ').forEach((time, month) => {
      const date = new Date(Date.UTC(2008, month, dayOfMonth)).toISOString().slice(0, 10);
      const day = lightAt(37 + 24 / 60, -(121 + 55 / 60), noon(date, -480), -480);
      const off = minutesOff(day, kind === 'rise' ? 'sunrise' : 'sunset', time, -480);
      expect(off, date).toBeLessThanOrEqual(1);
    });
  });

  // Computed elsewhere by the NOAA and Meeus formulas, not published.
  it.each([
    ['Miami', 25.75, -80.2, '2024-06-20', -240, '06:04', '06:30', '20:15', '20:41'],
    ['Lake Texoma', 33.85, -96.6, '2024-06-20', -300, '05:47', '06:16', '20:40', '21:10'],
    ['Seattle', 47.6, -122.33, '2024-06-20', -420, '04:31', '05:11', '21:11', '21:51'],
    ['Lake Winnipesaukee', 43.6, -71.33, '2024-06-20', -240, '04:28', '05:04', '20:30', '21:06'],
    ['Honolulu', 21.3, -157.85, '2024-06-20', -600, '05:25', '05:50', '19:16', '19:41'],
    ['Miami', 25.75, -80.2, '2024-09-02', -240, '06:38', '07:02', '19:38', '20:02'],
    ['Lake Texoma', 33.85, -96.6, '2024-09-02', -300, '06:36', '07:01', '19:50', '20:15'],
    ['Seattle', 47.6, -122.33, '2024-09-02', -420, '05:58', '06:30', '19:46', '20:18'],
  ])('%s, %d %d on %s', (_place, latitude, longitude, date, offset, dawn, rise, set, dusk) => {
    const day = lightAt(latitude, longitude, noon(date, offset), offset);
    expect(minutesOff(day, 'civilDawn', dawn, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'sunrise', rise, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'sunset', set, offset)).toBeLessThanOrEqual(1);
    expect(minutesOff(day, 'civilDusk', dusk, offset)).toBeLessThanOrEqual(1);
  });
});

describe('light at an instant', () => {
  // Atlanta, 6 September 2009 (above): sunset 19:56, end of civil twilight 20:21, by the Naval Observatory.
  it.each([
    ['06:40', 'night', false],
    ['07:00', 'civil twilight', false],
    ['07:14', 'civil twilight', true],
    ['07:16', 'day', true],
    ['07:19', 'day', false],
    ['13:00', 'day', false],
    ['19:53', 'day', false],
    ['19:55', 'day', true],
    ['19:57', 'civil twilight', true],
    ['20:00', 'civil twilight', false],
    ['20:24', 'night', false],
    ['23:59', 'night', false],
  ])('at %s it is %s (borderline: %s)', (time, light, borderline) => {
    const at = lightAt(33.8, -84.4, Date.parse(`2009-09-06T${time}:00-04:00`), -240);
    expect(at).toMatchObject({ light, borderline });
  });

  it('knows the day of the midnight sun and the night of the polar winter', () => {
    const summer = lightAt(71.29, -156.79, Date.parse('2024-06-20T02:00:00-08:00'), -480);
    expect(summer).toEqual({
      light: 'day',
      borderline: false,
      civilDawn: null,
      sunrise: null,
      sunset: null,
      civilDusk: null,
    });
    const winter = lightAt(71.29, -156.79, Date.parse('2024-12-20T13:00:00-09:00'), -540);
    expect(winter).toMatchObject({ light: 'civil twilight', sunrise: null, sunset: null });
    expect(winter.civilDawn).not.toBeNull();
    expect(lightAt(90, 0, Date.parse('2024-12-20T12:00:00Z')).light).toBe('night');
  });

  it('takes the local day from the longitude when no offset is given', () => {
    const given = lightAt(33.8, -84.4, Date.parse('2009-09-06T12:00:00-04:00'), -240);
    const derived = lightAt(33.8, -84.4, Date.parse('2009-09-06T12:00:00-04:00'));
    expect(Math.abs((derived.sunset ?? 0) - (given.sunset ?? 1e9))).toBeLessThan(2_000);
  });

  it('changes at the times that it names, wherever and whenever', () => {
    const anywhere = fc.record({
      latitude: fc.double({ min: -60, max: 60, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
      instantMs: fc.integer({
        min: Date.parse('2000-01-01T00:00:00Z'),
        max: Date.parse('2050-01-01T00:00:00Z'),
      }),
    });
    const minute = 60_000;
    fc.assert(
      fc.property(anywhere, ({ latitude, longitude, instantMs }) => {
        const at = (ms: number): LightAt => lightAt(latitude, longitude, ms);
        const { sunrise, sunset, civilDusk } = at(instantMs);
        if (sunrise === null || sunset === null) throw new Error('the sun rises and sets every day below 60');
        expect(at(sunrise + minute)).toMatchObject({ light: 'day', borderline: true });
        expect(at(sunrise - minute)).toMatchObject({ light: 'civil twilight', borderline: true });
        expect(at(sunset + minute)).toMatchObject({ light: 'civil twilight', borderline: true });
        expect(at(sunset - 3 * minute)).toMatchObject({ light: 'day', borderline: false });
        if (civilDusk !== null) expect(at(civilDusk + minute).light).toBe('night');
      }),
      { numRuns: 40 },
    );
  });
});
