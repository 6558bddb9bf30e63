import { valueOf } from '../call/known.js';
import { lightAt } from '../place/light-at.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { PersonRecord } from '../record/people-section.js';
import type { Quantity } from '../record/quantity-as-entered.js';
import { readInstant } from '../time/read-instant.js';
import type { AdoptedRules, HouseRuleId, Observation } from './house-rule.js';

/** One thing that the record shows, or does not, beside a rule. */
type Finding = Omit<Observation, 'rule'>;

/**
 * What the record shows beside the rules that were adopted: plain observations for whoever looks, made anew each time
 * and kept nowhere. They name people by their id in the record, and nobody's fault.
 * @example observeHouseRules(recordOfABareCall, { adoptedOn, document, rules: [{ id: 'life-jacket-always', value: null }] })
 * // [{ rule: 'life-jacket-always', stands: 'not-known', text: 'No person is in the record.' }]
 */
export function observeHouseRules(record: IncidentRecord, { rules }: AdoptedRules): Observation[] {
  return rules.flatMap(({ id, value }) =>
    OBSERVERS[id](record, value).map((finding) => ({ rule: id, ...finding })),
  );
}

const notKnown = (text: string): Finding[] => [{ stands: 'not-known', text }];
const compare = (isAsAdopted: boolean, text: string): Finding => ({
  stands: isAsAdopted ? 'as-adopted' : 'differs',
  text,
});

const OBSERVERS: Readonly<
  Record<HouseRuleId, (record: IncidentRecord, value: number | null) => readonly Finding[]>
> = {
  'distance-from-craft': () => notKnown('The record holds no distance from other craft.'),
  'distance-from-boats-and-docks': () => notKnown('The record holds no distance from boats and docks.'),
  'anchoring-depth': () => notKnown('The record does not hold where anybody anchored.'),
  'least-depth': ({ sections }, least) => {
    const depth = valueOf(sections.conditions?.waterDepth);
    const feet = depth === undefined ? null : feetOf(depth);
    if (depth === undefined || feet === null || least === null)
      return notKnown('The depth is not in the record.');
    return [
      compare(feet >= least, `Depth of water: ${depth.amount} ${depth.unit}; adopted: at least ${least} ft.`),
    ];
  },
  'minors-not-alone': ({ sections }, age) => {
    const people = (sections.people?.people ?? []).filter(isAboard);
    if (age === null || people.length === 0) return notKnown('No person is in the record.');
    const aboardOf = (craft: string | undefined): number | undefined =>
      valueOf((sections.craft?.craft ?? []).find(({ id }) => id === craft)?.aboard);
    return people.flatMap((person) => {
      const theirs = valueOf(person.age);
      if (theirs === undefined) return notKnown(`Age of ${person.id}: not in the record.`);
      if (theirs >= age) return [];
      const aboard = aboardOf(person.craft);
      if (aboard === undefined)
        return notKnown(`${person.id} was ${theirs}; how many were aboard is not in the record.`);
      return [
        compare(
          aboard > 1,
          `${person.id} was ${theirs}, with ${aboard} aboard; adopted: not alone under ${age}.`,
        ),
      ];
    });
  },
  'life-jacket-always': ({ sections }) =>
    observePeople(
      sections.people?.people ?? [],
      isAboard,
      ({ lifeJacket }) => valueOf(lifeJacket),
      'worn',
      'life jacket',
    ),
  'lanyard-always': ({ sections }) =>
    observePeople(
      sections.people?.people ?? [],
      ({ role }) => valueOf(role) === 'operator',
      ({ lanyard }) => valueOf(lanyard),
      'clipped',
      'lanyard',
    ),
  'no-towing-in-the-dark': (record) => {
    const towing = towingCraft(record);
    if (towing.length === 0) return towingNotKnown(record);
    const light = lightThen(record);
    return towing.map((name) =>
      light === null
        ? { stands: 'not-known', text: `${name} was towing; time or position are not in the record.` }
        : compare(light === 'day', `${name} was towing; light at that time and place: ${light}.`),
    );
  },
  'observer-when-towing': (record) => {
    const towing = towingCraft(record);
    if (towing.length === 0) return towingNotKnown(record);
    return (record.sections.craft?.craft ?? [])
      .filter(({ id, name }) => towing.includes(name ?? id))
      .map(({ id, name, aboard }) => {
        const count = valueOf(aboard);
        if (count === undefined) {
          return {
            stands: 'not-known',
            text: `${name ?? id} was towing; how many were aboard is not in the record.`,
          };
        }
        return count < 2
          ? compare(false, `${name ?? id} was towing with ${count} aboard.`)
          : {
              stands: 'not-known',
              text: `${name ?? id} was towing with ${count} aboard; who watched is not in the record.`,
            };
      });
  },
};

function observePeople(
  people: readonly PersonRecord[],
  isMeant: (person: PersonRecord) => boolean,
  read: (person: PersonRecord) => string | undefined,
  adopted: string,
  thing: string,
): Finding[] {
  const meant = people.filter(isMeant);
  if (meant.length === 0) return notKnown('No person that it is about is in the record.');
  return meant.map((person) => {
    const told = read(person) ?? 'unknown';
    const text = `${person.id}, ${thing}: ${told === 'unknown' ? 'not in the record' : told.replaceAll('-', ' ')}.`;
    return told === 'unknown' ? { stands: 'not-known', text } : compare(told === adopted, text);
  });
}

function isAboard({ role }: PersonRecord): boolean {
  return !['ashore', 'in-water'].includes(valueOf(role) ?? 'unknown');
}

function feetOf({ amount, unit }: Quantity): number | null {
  if (unit === 'ft') return amount;
  if (unit === 'in') return amount / 12;
  return unit === 'm' ? amount / 0.3048 : null;
}

function towingCraft({ sections }: IncidentRecord): string[] {
  return (sections.craft?.craft ?? []).flatMap(({ id, name, beingTowed }) =>
    (valueOf(beingTowed) ?? 0) > 0 ? [name ?? id] : [],
  );
}

/** Nothing to say where every craft is known to have towed nobody. */
function towingNotKnown({ sections }: IncidentRecord): Finding[] {
  const craft = sections.craft?.craft ?? [];
  const isKnown = craft.length > 0 && craft.every(({ beingTowed }) => beingTowed !== undefined);
  return isKnown ? [] : notKnown('Whether anybody was towed is not in the record.');
}

function lightThen({ sections }: IncidentRecord): string | null {
  const { occurred, position } = sections['time-and-place'] ?? {};
  const [when, where] = [valueOf(occurred), valueOf(position)];
  if (when === undefined || where === undefined || when.precision !== 'to-the-minute') return null;
  const { light, borderline } = lightAt(where.latitude, where.longitude, readInstant(when.at));
  return borderline ? null : light;
}
