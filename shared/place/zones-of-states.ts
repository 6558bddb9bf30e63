/**
 * The IANA zones in use in each state, the one of most of it first. Where the zones meet is law: 49 CFR
 * 71.3 to 71.14; that Arizona keeps standard time while the Navajo Nation does not is 15 U.S.C. 260a. A
 * state with any exception has more than one entry, so that nobody takes its zone for settled.
 */
const EASTERN = ['America/New_York'];
const CENTRAL = ['America/Chicago'];
const MOUNTAIN = ['America/Denver'];
const PACIFIC = ['America/Los_Angeles'];
const CENTRAL_AND_MOUNTAIN = [...CENTRAL, ...MOUNTAIN];

const ZONES_OF_STATES: Readonly<Record<string, readonly string[]>> = {
  AL: CENTRAL,
  AK: [
    'America/Anchorage',
    'America/Juneau',
    'America/Sitka',
    'America/Metlakatla',
    'America/Yakutat',
    'America/Nome',
    'America/Adak',
  ],
  AZ: ['America/Phoenix', ...MOUNTAIN],
  AR: CENTRAL,
  CA: PACIFIC,
  CO: MOUNTAIN,
  CT: EASTERN,
  DE: EASTERN,
  DC: EASTERN,
  FL: [...EASTERN, ...CENTRAL],
  GA: EASTERN,
  HI: ['Pacific/Honolulu'],
  ID: ['America/Boise', ...PACIFIC],
  IL: CENTRAL,
  IN: [
    'America/Indiana/Indianapolis',
    ...CENTRAL,
    'America/Indiana/Knox',
    'America/Indiana/Marengo',
    'America/Indiana/Petersburg',
    'America/Indiana/Tell_City',
    'America/Indiana/Vevay',
    'America/Indiana/Vincennes',
    'America/Indiana/Winamac',
  ],
  IA: CENTRAL,
  KS: CENTRAL_AND_MOUNTAIN,
  KY: [...EASTERN, 'America/Kentucky/Louisville', 'America/Kentucky/Monticello', ...CENTRAL],
  LA: CENTRAL,
  ME: EASTERN,
  MD: EASTERN,
  MA: EASTERN,
  MI: ['America/Detroit', 'America/Menominee'],
  MN: CENTRAL,
  MS: CENTRAL,
  MO: CENTRAL,
  MT: MOUNTAIN,
  NE: CENTRAL_AND_MOUNTAIN,
  NV: [...PACIFIC, ...MOUNTAIN],
  NH: EASTERN,
  NJ: EASTERN,
  NM: MOUNTAIN,
  NY: EASTERN,
  NC: EASTERN,
  ND: [
    ...CENTRAL_AND_MOUNTAIN,
    'America/North_Dakota/Beulah',
    'America/North_Dakota/Center',
    'America/North_Dakota/New_Salem',
  ],
  OH: EASTERN,
  OK: CENTRAL,
  OR: [...PACIFIC, 'America/Boise'],
  PA: EASTERN,
  RI: EASTERN,
  SC: EASTERN,
  SD: CENTRAL_AND_MOUNTAIN,
  TN: [...CENTRAL, ...EASTERN],
  TX: CENTRAL_AND_MOUNTAIN,
  UT: MOUNTAIN,
  VT: EASTERN,
  VA: EASTERN,
  WA: PACIFIC,
  WV: EASTERN,
  WI: CENTRAL,
  WY: MOUNTAIN,
  AS: ['Pacific/Pago_Pago'],
  GU: ['Pacific/Guam'],
  MP: ['Pacific/Saipan'],
  PR: ['America/Puerto_Rico'],
  VI: ['America/St_Thomas'],
};

/** Zones of a state, the commonest first; empty for what is not a state. `zonesOf('FL')` has two. */
export function zonesOf(state: string): readonly string[] {
  return Object.hasOwn(ZONES_OF_STATES, state) ? (ZONES_OF_STATES[state] ?? []) : [];
}

/**
 * The zone of a state that has only one: `singleZoneOf('OK')` is `'America/Chicago'`; `singleZoneOf('TX')`
 * is null, as El Paso and Hudspeth counties keep Mountain time, and so is an unknown code.
 */
export function singleZoneOf(state: string): string | null {
  const zones = zonesOf(state);
  return zones.length === 1 ? (zones[0] ?? null) : null;
}
