import type { Known } from '../../../../shared/call/known.js';
import { type Stamp, stampInstant } from '../../../../shared/call/stamp.js';
import type { PacketRecord } from '../../../../shared/hand-over/packet.js';
import { fieldWords } from '../../../../shared/record/field-words/tell-field.js';
import type { TimelineEntry } from '../../../../shared/record/account-sections.js';
import type { HelpCall, Responder } from '../../../../shared/record/response-sections.js';
import type { JsonValue } from '../../../../shared/record/json-value.js';
import type { Occurred } from '../../../../shared/record/time-and-place.js';
import { tellSource } from '../../../../shared/report/tell-source.js';
import { tellTime } from '../../../../shared/report/tell-value.js';
import { readInstant } from '../../../../shared/time/read-instant.js';
import type { Block } from './blocks.js';
import { sectionsOf } from './name-things.js';
import { isStamp, tellStamp } from './tell-fact.js';

interface Moment {
  /** Milliseconds since the Unix epoch, by which they are put in order. */
  readonly ms: number;
  readonly when: string;
  readonly what: string;
  readonly known: string;
}

/** Everything in the packet that has a minute, in one order: so far as its times leave. */
export function composeTimeline(record: PacketRecord, timeZone: string): Block[] {
  const sections = sectionsOf(record);
  const { calls = [], responders = [] } = sections['emergency-response'] ?? {};
  // A time that is masked is no time any more, and has no place in an order.
  const at = (stamp: Stamp | undefined, what: string): Moment[] =>
    stamp === undefined || !isStamp(stamp as unknown as JsonValue)
      ? []
      : [
          {
            ms: stampInstant(stamp),
            when: tellStamp(stamp, timeZone),
            what,
            known: fieldWords('en').values.stamped[stamp.how],
          },
        ];
  const moments = [
    ...momentOf(sections['time-and-place']?.occurred, timeZone),
    ...at(sections.call?.taken, `The call was taken${byOf(sections.call?.takenBy)}`),
    ...calls.flatMap((call) => momentsOfCall(call, at)),
    ...responders.flatMap((responder) => momentsOfResponder(responder, at)),
    ...(sections.authorities?.officers ?? []).flatMap((officer) => [
      ...at(officer.arrived, `${officer.name ?? 'An officer'} arrived`),
      ...at(officer.left, `${officer.name ?? 'An officer'} left`),
    ]),
    ...(sections.timeline?.entries ?? []).flatMap((entry) => {
      const told = at(entry.at, wordsOf(entry));
      return told.length > 0
        ? told
        : [{ ms: Infinity, when: saidOf(entry), what: wordsOf(entry), known: '' }];
    }),
  ].sort((one, other) => (one.ms === other.ms ? 0 : one.ms - other.ms));
  if (moments.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { title: 'When', share: 0.3 },
        { title: 'What', share: 0.44 },
        { title: 'How the time is known', share: 0.26 },
      ],
      rows: moments.map(({ when, what, known }) => [when, what, known]),
    },
  ];
}

/** A fact that is masked is no moment any more. */
function momentOf(fact: Known<Occurred> | undefined, timeZone: string): Moment[] {
  const { at, precision, until }: Partial<Occurred> = fact?.value ?? {};
  if (fact === undefined || at === undefined) return [];
  const about = precision === 'to-the-minute' ? '' : ', as nearly as anybody can say';
  const what =
    until === undefined ? `It happened${about}` : `It happened between this and ${tellTime(until, timeZone)}`;
  return [{ ms: readInstant(at), when: tellTime(at, timeZone), what, known: tellSource(fact, timeZone) }];
}

/** A time that is masked is told as it leaves. */
function saidOf({ at }: TimelineEntry): string {
  const said: unknown = at;
  return typeof said === 'string' ? said : 'No time';
}

type At = (stamp: Stamp | undefined, what: string) => Moment[];

function momentsOfCall({ to = 'help', made, answered, answeredBy }: HelpCall, at: At): Moment[] {
  return [...at(made, `We called ${to}`), ...at(answered, `${to} answered${byOf(answeredBy)}`)];
}

function momentsOfResponder(responder: Responder, at: At): Moment[] {
  const { who = 'Those who came', left, onScene, careBegun, handedOver, atHospital, back } = responder;
  return [
    ...at(left, `${who} set out`),
    ...at(onScene, `${who} came on scene`),
    ...at(careBegun, `${who} began care`),
    ...at(handedOver, `${who} handed over the hurt`),
    ...at(atHospital, `${who} came to the hospital`),
    ...at(back, `${who} came back`),
  ];
}

const byOf = (name: string | undefined): string => (name === undefined ? '' : `, by ${name}`);

function wordsOf({ what = '', speaker, spokenTo, radioChannel, by }: TimelineEntry): string {
  const radio = radioChannel === undefined ? '' : ` (radio ${radioChannel})`;
  const spoken = [speaker, spokenTo].filter(Boolean).join(' to ');
  const said = `${spoken === '' ? '' : `${spoken}: `}${what}${radio}`;
  return by === undefined ? said : `${said} (written down by ${by})`;
}
