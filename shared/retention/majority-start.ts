import { valueOf } from '../call/known.js';
import type { Truth } from '../kernel/truth.js';
import type { PersonRecord } from '../record/people-section.js';
import { comesOfAgeOn, endOfPeriod, laterDay } from './end-of-period.js';
import type { StartDay } from './retention-facts.js';
import type { RetentionForm } from './retention-form.js';

/** Months by which somebody unborn at the time may be younger than everybody who was there. */
const UNBORN_MONTHS = 9;

type Who = Pick<PersonRecord, 'id' | 'name' | 'birthDate' | 'age' | 'minor' | 'craft'>;

export interface MajorityFacts {
  readonly people: readonly Who[];
  /** Whether somebody may have a claim who is not listed, such as a child of somebody who died. */
  readonly unlisted: Truth;
  /** Days between which it happened. */
  readonly occurred: { readonly earliest: string; readonly latest: string };
  readonly states: readonly string[] | null;
}

/**
 * From when a period counts that does not run against a minor: the day on which the youngest person concerned comes of
 * age, or the occurrence where that is later. Of somebody whose age nobody knows, the latest day is that of a child
 * born on the day of the occurrence, and the birth date is asked for.
 * @example majorityStart({ people: [{ id: 'p1', birthDate: told('2012-02-29') }], … }, majority)
 * // { known: true, earliest: '2030-03-01', latest: '2030-03-01', missing: [] }
 */
export function majorityStart(
  { people, unlisted, occurred, states }: MajorityFacts,
  majority: RetentionForm['majority'],
): StartDay {
  const years = yearsOfMajority(states, majority);
  const each = people.map((person) => spanOf(person, occurred, years));
  const ends = each.reduce(
    (sum, one) => ({
      earliest: laterDay(sum.earliest, one.earliest),
      latest: laterDay(sum.latest, one.latest),
    }),
    { ...occurred },
  );
  const unborn = endOfPeriod(occurred.latest, years.latest * 12 + UNBORN_MONTHS);
  const missing = each.flatMap((one) => one.missing);
  if (unlisted === 'false') return { known: true, ...ends, missing };
  return {
    known: true,
    earliest: ends.earliest,
    latest: laterDay(ends.latest, unborn),
    missing: [...missing, UNLISTED],
  };
}

const UNLISTED =
  'Whether a minor is concerned who is not listed: that everybody is, and whether whoever died had children.';

interface Years {
  readonly earliest: number;
  readonly latest: number;
}

function yearsOfMajority(
  states: readonly string[] | null,
  { years, later }: RetentionForm['majority'],
): Years {
  if (states === null || states.length === 0)
    return { earliest: years, latest: Math.max(years, ...Object.values(later)) };
  const each = states.map((state) => later[state] ?? years);
  return { earliest: Math.min(...each), latest: Math.max(...each) };
}

function spanOf(
  { id, name, birthDate, age, minor }: Who,
  occurred: MajorityFacts['occurred'],
  years: Years,
): { earliest: string; latest: string; missing: string[] } {
  const [born, old] = [valueOf(birthDate), valueOf(age)];
  const { earliest, latest } = occurred;
  if (born !== undefined)
    return {
      earliest: comesOfAgeOn(born, years.earliest),
      latest: comesOfAgeOn(born, years.latest),
      missing: [],
    };
  const who = name ?? `somebody without a name (${id})`;
  if (old !== undefined) {
    // Whoever is 15 may have been so for a year, or since that day.
    const after = (from: string, left: number) => (left <= 0 ? from : endOfPeriod(from, left * 12));
    return {
      earliest: after(earliest, years.earliest - Math.floor(old) - 1),
      latest: after(latest, years.latest - Math.floor(old)),
      missing: old < years.latest ? [`The birth date of ${who}, of whom only the age is known.`] : [],
    };
  }
  const asked =
    minor === undefined ? `The birth date or age of ${who}.` : `The birth date of ${who}, a minor.`;
  return { earliest, latest: endOfPeriod(latest, years.latest * 12), missing: [asked] };
}
