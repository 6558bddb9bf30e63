import { OVERDUE_ENDS } from '../../../shared/call/call.js';
import { NOT_BACK_ENDS, RUNGS } from '../../../shared/outing/not-back.js';
import { STANDINGS } from '../../../shared/outing/outing.js';
import {
  COUNT_ANSWERS,
  CountAnswerDto,
  NotBackEndDto,
  NotIncidentDto,
  OpenCountDto,
  OpenNotBackDto,
  OutingDto,
  OutingImportDto,
  OutingMarkDto,
  RungStampDto,
  SearchSheetDto,
  UndoingDto,
} from '../../../shared/wire/outing-requests.dto.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const id: Schema = { type: 'string', format: 'uuid' };
const instant: Schema = { type: 'string', format: 'date-time' };
const whole: Schema = { type: 'integer', minimum: 0 };
const yes: Schema = { type: 'boolean' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const maybeOf = (schema: Schema): Schema => ({ oneOf: [{ type: 'null' }, schema] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });
const choice = (values: readonly string[]): Schema => ({ type: 'string', enum: values });
const members = (properties: Record<string, Schema>, ...optional: string[]): Schema => ({
  type: 'object',
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  properties,
});
const sent = (shape: new () => object, example: object): Schema => ({
  ...schemaOf(shape),
  examples: [example],
});

const EVENTS = listOf(
  members({ kind: text, at: instant, document: { type: 'object' }, person: text, device: maybe(text) }),
);
const RECEIPT = {
  id,
  version: whole,
  craftId: id,
  unit: text,
  outAt: maybe(instant),
  dueBackAt: maybe(instant),
  backAt: maybe(instant),
  details: { type: 'object', description: 'Left out towards a device: names and numbers are in it.' },
};
const OUTING = members(RECEIPT);
const STAMP: Schema = { type: 'object', description: 'When: {"at", "how"}.' };
const CLIMBED = members({ id, rung: choice(RUNGS), stamp: STAMP, words: maybe(text), person: text });
const COUNTED = {
  answer: choice(COUNT_ANSWERS),
  where: maybe(text),
  person: text,
  at: instant,
};
const NOT_BACK = {
  id,
  version: whole,
  craftId: id,
  unit: text,
  timeZone: text,
  openedAt: instant,
  openedBy: text,
  craft: { type: 'object', description: 'What searchers look for: unit, colours, type, numbers.' },
  outing: maybeOf(OUTING),
  sheet: ref('SearchSheet'),
  nightLimit: members({ sunset: maybe(instant), civilDusk: maybe(instant), lightNow: text }),
  ladder: listOf(
    members({
      rung: choice(RUNGS),
      by: instant,
      until: maybe(instant),
      says: text,
      basis: text,
      climbed: listOf(CLIMBED),
    }),
  ),
  climbed: listOf(members({ id, rung: choice(RUNGS), stamp: STAMP })),
  ended: { type: ['string', 'null'], enum: [...OVERDUE_ENDS, null] },
  endedAt: maybe(instant),
  endedBy: maybe(text),
  endedHow: maybe(text),
  notIncident: maybe(text),
  notIncidentBy: maybe(text),
  proposesIncident: maybe(text),
  incidentId: maybe(id),
};
const FOR_DEVICE = ['id', 'version', 'craftId', 'unit', 'openedAt', 'ended', 'incidentId', 'climbed'];
const notForDevice = Object.keys(NOT_BACK).filter((name) => !FOR_DEVICE.includes(name));
const COUNT = {
  id,
  version: whole,
  day: { type: 'string', format: 'date' },
  unanswered: listOf(text),
  stationId: maybe(id),
  answers: listOf(members({ craftId: id, unitName: text, ...COUNTED })),
  openedBy: text,
  openedAt: instant,
  closedById: maybe(id),
  closedBy: maybe(text),
  closedAt: maybe(instant),
  outcome: maybeOf(members({ opened: listOf(text), markedBack: listOf(text), stillToEnd: listOf(text) })),
};

/** Bodies and answers of out and back by the names that its routes give them. */
export const OUTING_SCHEMAS: Readonly<Record<string, Schema>> = {
  OutingSent: sent(OutingDto, {
    unit: 'PWC 7',
    outAt: '2026-06-13T13:00:00-05:00',
    dueBackAt: '2026-06-13T14:30:00-05:00',
    renter: 'Dana Whitlock',
    phone: '580-555-0142',
    aboard: 2,
    vehicle: 'Grey pickup, trailer',
  }),
  OutingImport: sent(OutingImportDto, {
    csv: 'Unit,Renter,Out,Due back,Riders\nPWC 7,Dana Whitlock,1:00 pm,2:30 pm,2\n',
    day: '2026-06-13',
  }),
  OutingImported: members({ id, taken: whole, ignored: listOf(text), day: text, timeZone: text }),
  OutingMark: sent(OutingMarkDto, { at: '2026-06-13T14:20:00-05:00' }),
  OutingUndoing: sent(UndoingDto, { why: 'Another craft of the same colour.' }),
  Outing: members(RECEIPT, 'details'),
  OutingWithEvents: members({ ...RECEIPT, events: EVENTS }),
  CraftWhereabouts: members({
    asOf: instant,
    items: listOf(
      members({
        craftId: id,
        unitName: text,
        colours: listOf(text),
        stationId: maybe(id),
        inService: yes,
        standing: choice(STANDINGS),
        dueBackAt: maybe(instant),
        lastIn: maybe(instant),
        outing: maybeOf(OUTING),
        notBack: maybe(id),
        counted: maybeOf(members(COUNTED)),
      }),
    ),
  }),
  NotBackSent: sent(OpenNotBackDto, { unit: 'PWC 7' }),
  SearchSheet: sent(SearchSheetDto, { lastSeenWhere: 'Off the north point, heading west', fuel: 'half' }),
  RungStamp: sent(RungStampDto, {
    rung: 'sheriff',
    stamp: { at: '2026-06-13T15:05:00-05:00', how: 'pressed' },
    words: 'Dispatcher sends a boat.',
  }),
  NotBackEnd: sent(NotBackEndDto, { ended: NOT_BACK_ENDS[0] ?? 'late', how: 'Came in by itself.' }),
  NotIncident: sent(NotIncidentDto, { why: 'It drifted off the dock line, nobody was on it.' }),
  NotBack: members(NOT_BACK, ...notForDevice),
  NotBackWithEvents: members({ ...NOT_BACK, events: EVENTS }),
  NotBackList: members({ items: listOf(members(NOT_BACK)) }),
  ClosingCountSent: sent(OpenCountDto, {}),
  CountAnswer: sent(CountAnswerDto, { unit: 'PWC 7', answer: 'in' }),
  ClosingCount: members(
    COUNT,
    ...Object.keys(COUNT).filter((name) => !['id', 'version', 'day', 'unanswered'].includes(name)),
  ),
  ClosingCountList: members({ items: listOf(ref('ClosingCount')) }),
};
