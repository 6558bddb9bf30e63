import type { Call } from '../../../shared/call/call.js';
import type { HowKnown, Known } from '../../../shared/call/known.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import type { AccountSection, TimelineSection } from '../../../shared/record/account-sections.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { PeopleSection } from '../../../shared/record/people-section.js';
import type { EmergencyResponseSection } from '../../../shared/record/response-sections.js';
import type { TimeAndPlace } from '../../../shared/record/time-and-place.js';
import type { Answered, CallDraft, Where } from './call-draft.js';

interface Documents {
  readonly call: Call;
  readonly 'time-and-place': TimeAndPlace;
  readonly people: PeopleSection;
  readonly 'emergency-response': EmergencyResponseSection;
  readonly account: AccountSection;
  readonly timeline: TimelineSection;
}

/** What a call says, section by section of the record. An answer that nobody has given stands nowhere. */
export function documentsOf(draft: CallDraft): Record<keyof Documents, JsonObject> {
  const documents: Documents = {
    call: callOf(draft),
    'time-and-place': placeOf(draft),
    people: peopleOf(draft),
    'emergency-response': responseOf(draft),
    account: accountOf(draft),
    timeline: { entries: draft.lines.map((line) => ({ ...line, ...by(draft) })) },
  };
  return JSON.parse(JSON.stringify(documents)) as Record<keyof Documents, JsonObject>;
}

const CHANNELS = { now: 'one-touch', late: 'phone', 'check-in': 'in-person' } as const;

function callOf(draft: CallDraft): Call {
  const { answers, entry, taken } = draft;
  const { craft, where, said, callerName, callBack, when, whyNow } = answers;
  const words = where?.value.asSaid;
  return {
    kind: entry,
    channel: CHANNELS[entry],
    taken,
    ...(draft.takenBy !== null && { takenBy: draft.takenBy }),
    ...((callerName ?? callBack) !== undefined && {
      caller: {
        ...(callerName !== undefined && { name: callerName.value }),
        ...(callBack !== undefined && { callBack: callBack.value }),
      },
    }),
    ...(said !== undefined && { said: said.value }),
    ...(craft !== undefined && { craftNamed: [...craft.value] }),
    ...(where !== undefined && words !== undefined && { happenedWhere: told({ ...where, value: words }) }),
    ...(when !== undefined && { happenedWhen: told(when) }),
    ...(draft.stamps.called !== undefined && {
      emergencyServicesTold: saw<Ternary>('yes', draft.stamps.called.at),
    }),
    ...(whyNow !== undefined && { late: { whyNow: told(whyNow) } }),
  };
}

const HOW: Readonly<Record<Exclude<Where['how'], 'words'>, { known: HowKnown; by: string }>> = {
  phone: { known: 'read-off', by: 'the position of the phone at the place' },
  place: { known: 'computed', by: 'the position of the named place' },
  written: { known: 'told', by: 'whoever gave the coordinates' },
  map: { known: 'told', by: 'whoever pointed at the map' },
};

function placeOf({ answers: { where } }: CallDraft): TimeAndPlace {
  if (where === undefined) return {};
  const { how, latitude, longitude, accuracyM, asSaid, placeId } = where.value;
  const located = how !== 'words' && latitude !== undefined && longitude !== undefined;
  return {
    ...(located && {
      position: {
        value: {
          latitude,
          longitude,
          ...(accuracyM !== undefined && { accuracyM }),
          ...(asSaid !== undefined && { asSaid }),
        },
        ...HOW[how],
        learnedAt: where.at,
      },
    }),
    ...(placeId !== undefined && { namedPlace: placeId }),
    ...(how === 'words' && asSaid !== undefined && { description: told({ ...where, value: asSaid }) }),
  };
}

/** Somebody who is hurt is a person of the record at once: who it is and what they need is asked there. */
function peopleOf({ answers: { accounted, hurt } }: CallDraft): PeopleSection {
  return {
    ...(accounted !== undefined && { everyoneAccountedFor: told(accounted) }),
    ...(hurt?.value === 'yes' && {
      people: [{ id: 'hurt', outcome: told({ ...hurt, value: 'injured' as const }) }],
    }),
  };
}

function responseOf({ stamps, answers: { people } }: CallDraft): EmergencyResponseSection {
  const { called, boatAway, onScene, allAshore } = stamps;
  return {
    ...(called !== undefined && {
      emergencyServicesCalled: saw<Ternary>('yes', called.at),
      calls: [{ id: 'first', to: '911', channel: 'Telephone', made: called }],
    }),
    ...((boatAway ?? onScene) !== undefined && {
      responders: [
        {
          id: 'our-boat',
          kind: 'our-crew' as const,
          ...(boatAway !== undefined && { left: boatAway }),
          ...(onScene !== undefined && { onScene }),
        },
      ],
    }),
    ...(people !== undefined && { headcountExpected: told(people) }),
    ...(allAshore !== undefined && { headcountDone: allAshore }),
  };
}

function accountOf({ answers: { happened } }: CallDraft): AccountSection {
  if (happened?.value === undefined || happened.value === null) return {};
  return { casualtyTypes: told({ ...happened, value: [happened.value] }) };
}

const by = ({ takenBy }: CallDraft): { by?: string } => (takenBy === null ? {} : { by: takenBy });

function told<Value>({ value, at }: Answered<Value>): Known<Value> {
  return { value, known: 'told', learnedAt: at };
}

function saw<Value>(value: Value, at: string): Known<Value> {
  return { value, known: 'saw', learnedAt: at };
}
