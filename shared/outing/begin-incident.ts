import type { Call, Overdue, OverdueEnd } from '../call/call.js';
import type { Known } from '../call/known.js';
import type { Craft, CraftSection } from '../record/craft-section.js';
import { definedMembers } from '../record/defined-members.js';
import type { PeopleSection, PersonRecord } from '../record/people-section.js';
import type { RungStamp, SearchSheet } from './not-back.js';
import type { OutingDetails } from './outing.js';

/** Everything that is known of a craft that is not back. Instants are RFC 3339. */
export interface NotBackFacts {
  readonly craft: { readonly id: string; readonly unitName: string; readonly colours: readonly string[] };
  readonly openedAt: string;
  readonly dueBackAt: string | null;
  readonly outing: OutingDetails;
  readonly sheet: SearchSheet;
  readonly climbed: readonly RungStamp[];
  readonly ended: { readonly how: OverdueEnd; readonly at: string; readonly words: string | null } | null;
  /** Who opens the incident. */
  readonly person: string;
}

export interface BegunIncident {
  readonly call: Call;
  readonly craft: CraftSection;
  readonly people: PeopleSection;
}

const FROM = 'the list of craft due back';

/**
 * What an incident begins with that a craft not back became. What nobody said stays out, and so it is not known: that
 * people are missing is never inferred, and neither is that they are well.
 */
export function beginIncident(facts: NotBackFacts): BegunIncident {
  const { craft, outing } = facts;
  return {
    call: callOf(facts),
    craft: {
      craft: [
        definedMembers<Craft>({
          id: 'c1',
          ours: true,
          fleetCraft: craft.id,
          name: craft.unitName,
          use: readOff('rental'),
          colours: craft.colours.length === 0 ? undefined : craft.colours.join(', '),
          aboard: outing.aboard === undefined ? undefined : readOff(outing.aboard),
        }),
      ],
    },
    people: {
      everyoneAccountedFor: { value: 'unknown', known: 'told', by: facts.person },
      people: peopleOf(facts),
    },
  };
}

function callOf({ craft, openedAt, dueBackAt, outing, sheet, climbed, ended, person }: NotBackFacts): Call {
  const told = <T>(value: T | undefined): Known<T> | undefined =>
    value === undefined ? undefined : { value, known: 'told', by: person };
  const search = climbed.find(({ rung }) => rung === 'search');
  const plan = sheet.plan ?? outing.plan;
  return {
    kind: 'overdue',
    taken: { at: openedAt, how: 'entered' },
    takenBy: person,
    craftNamed: [craft.unitName],
    overdue: definedMembers<Overdue>({
      dueBackAt: dueBackAt === null ? undefined : readOff(dueBackAt),
      lastSeenAt: told(sheet.lastSeenAt),
      lastSeenWhere: told(sheet.lastSeenWhere),
      lastSpokenAt: told(sheet.lastSpokenAt),
      plan: told(plan),
      tried: climbed.length === 0 ? undefined : [...new Set(climbed.map(wordsOf))],
      searchBegan: search?.stamp,
      ended: ended === null ? undefined : told(ended.how),
      endedAt: ended === null ? undefined : told(ended.at),
      endedHow: told(ended?.words ?? undefined),
    }),
  };
}

/** The renter, and the riders who are not the renter again under the same name. */
function peopleOf({ outing: { renter, phone, riders = [] }, ended }: NotBackFacts): PersonRecord[] {
  const others = riders.filter(({ name }) => keyOf(name) !== keyOf(renter ?? ''));
  const people: { name: string; phone?: string | undefined }[] = [
    ...(renter === undefined ? [] : [{ name: renter, phone }]),
    ...others,
  ];
  const away = ended === null || ended.how === 'found-empty' || ended.how === 'stolen';
  return people.map(({ name, phone: number }, place) =>
    definedMembers<PersonRecord>({
      id: `p${place + 1}`,
      name,
      phone: number,
      craft: 'c1',
      outcome: { value: away ? 'not-back' : 'unknown', known: 'told' },
    }),
  );
}

const wordsOf = ({ rung, stamp, words, person }: RungStamp): string =>
  `${rung} at ${stamp.at} by ${person}${words === null ? '' : `: ${words}`}`.slice(0, 500);

const readOff = <T>(value: T): Known<T> => ({ value, known: 'read-off', by: FROM });

const keyOf = (name: string): string => name.trim().toLowerCase();
