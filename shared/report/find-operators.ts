import { valueOf } from '../call/known.js';
import type { IncidentRecord, SectionName } from '../record/incident-record.js';
import type { PersonRecord } from '../record/people-section.js';
import type { RentalOperator } from '../record/rental-section.js';

/** Somebody who drove a craft, as the section on people says, or the agreement where that says nothing. */
export interface Driver extends Omit<PersonRecord, 'id'>, Pick<RentalOperator, 'educationCard'> {
  readonly section: SectionName;
  readonly path: string;
}

/**
 * Who drove a craft: whoever the section on people calls its operator, and whom the rental says really drove.
 * @example operatorsOf('c1', { rental: { operators: [{ id: 'o1', name: 'Ann', craft: 'c1', drove }] } })[0]?.name // 'Ann'
 */
export function operatorsOf(craft: string, { people, rental }: IncidentRecord['sections']): Driver[] {
  const listed = people?.people ?? [];
  const named = (rental?.operators ?? []).filter(
    (one) => one.craft === craft && valueOf(one.drove) === 'yes',
  );
  const drivers = listed.filter(
    (person) =>
      (person.craft === craft && valueOf(person.role) === 'operator') ||
      named.some((one) => one.person === person.id),
  );
  return [
    ...drivers.map(({ id, ...person }): Driver => {
      const educationCard = named.find((one) => one.person === id)?.educationCard;
      return {
        ...person,
        ...(educationCard === undefined ? {} : { educationCard }),
        section: 'people',
        path: `/people/${id}`,
      };
    }),
    ...named
      .filter(({ person }) => !listed.some(({ id }) => id === person))
      .map(({ id, name, age, educationCard }): Driver => ({
        ...(name === undefined ? {} : { name }),
        ...(age === undefined ? {} : { age }),
        ...(educationCard === undefined ? {} : { educationCard }),
        section: 'rental',
        path: `/operators/${id}`,
      })),
  ];
}
