import { valueOf } from '../call/known.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { PersonRecord } from '../record/people-section.js';
import { whenItHappened } from '../record/when-it-happened.js';

/** Age of majority in most states; in Alabama, Nebraska and Mississippi it is higher (memory), as counsel there knows. */
const OF_AGE = 18;

/** Who is not proven to be of age, by id and by name. */
export interface PossibleMinors {
  readonly ids: ReadonlySet<string>;
  readonly names: readonly string[];
}

/**
 * Everybody who is under age or may be: whoever has a guardian, is younger than 18 when it happened, or of whom nobody
 * said how old they are. A birthday in the year of the accident counts from its day.
 * @example findMinors(recordOf([{ id: 'p1', name: 'Ann' }])).names // ['Ann']
 */
export function findMinors(record: IncidentRecord): PossibleMinors {
  const day = whenItHappened(record).occurredAt.slice(0, 10);
  const { people = [] } = record.sections.people ?? {};
  const young = people.filter((person) => !isOfAge(person, day));
  return {
    ids: new Set(young.map(({ id }) => id)),
    names: young.flatMap(({ name }) => name ?? []),
  };
}

function isOfAge({ minor, age, birthDate }: PersonRecord, day: string): boolean {
  const [years, born] = [valueOf(age), valueOf(birthDate)];
  if (minor !== undefined) return false;
  if (years !== undefined && years < OF_AGE) return false;
  if (born === undefined) return years !== undefined;
  return `${Number(born.slice(0, 4)) + OF_AGE}${born.slice(4)}` <= day;
}
