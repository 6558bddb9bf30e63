import type { Known } from '../call/known.js';
import type { ReportLine } from './filled-report.js';
import type { ReportPart } from './report-form.js';
import type { Subject } from './report-matter.js';
import { tellMoney } from './tell-money.js';
import { tellSource } from './tell-source.js';
import { isNothing, saysNotKnown, tellValue, type Telling } from './tell-value.js';

interface Told {
  readonly text: string;
  readonly source: string | null;
  readonly notKnown: boolean;
}

/**
 * What the record says of one subject to one part of an item; nothing where it may be left out and is.
 * @example fillLine({ label: 'Name', fields: ['name'], … }, { name: null, value: {}, … }, telling)[0]?.state // 'missing'
 */
export function fillLine(part: ReportPart, subject: Subject, telling: Telling): ReportLine[] {
  const { label, fields, optional = false } = part;
  const line = { label, subject: subject.name, section: subject.section, path: pathOf(subject, fields[0]) };
  const told = fields.flatMap((field) => readField(subject.value, field, { ...telling, terms: part.terms }));
  const known = told.filter(({ notKnown }) => !notKnown);
  if (known.length > 0) {
    const sources = [...new Set(known.flatMap(({ source }) => source ?? []))];
    return [
      {
        ...line,
        state: 'answered',
        text: known.map(({ text }) => text).join('; '),
        source: sources.length === 0 ? null : sources.join('; '),
      },
    ];
  }
  const [open] = told;
  if (open !== undefined) return [{ ...line, state: 'unknown', text: 'Not known', source: open.source }];
  const instead = part.unless?.find(({ field, value }) => saysInstead(subject.value, field, value));
  if (instead !== undefined) return [{ ...line, state: instead.state, text: instead.text, source: null }];
  const fromFleet = tellFleet(part, subject, telling);
  if (fromFleet !== '')
    return [{ ...line, state: 'answered', text: fromFleet, source: 'the fleet’s own list' }];
  return optional ? [] : [{ ...line, state: 'missing', text: missingText(part), source: null }];
}

function missingText({ fields, fleet }: ReportPart): string {
  if (fields.length > 0) return 'Not recorded';
  return fleet === undefined
    ? 'The record has no place for it: write it on the form'
    : 'Not in the fleet’s list: link the craft to the fleet, and complete it there';
}

/** Where the record keeps what is asked, for whoever goes there to write it. */
function pathOf({ path }: Subject, field: string | undefined): string {
  return field === undefined ? path : `${path}/${field}`;
}

function readField(subject: object, field: string, telling: Telling): Told[] {
  const value = memberAt(subject, field);
  if (isNothing(value)) return [];
  if (!isFact(value)) return [tell(field, value, null, telling)].filter(({ text }) => text !== '');
  return isNothing(value.value)
    ? []
    : [tell(field, value.value, tellSource(value, telling.timeZone), telling)];
}

function tell(field: string, value: unknown, source: string | null, telling: Telling): Told {
  const text = field === 'amount' ? tellMoney(value) : tellValue(value, telling);
  return { text, source, notKnown: saysNotKnown(value) || text === 'unknown' };
}

function memberAt(object: object, field: string): unknown {
  return field
    .split('/')
    .reduce<unknown>(
      (at, name) =>
        typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[name] : undefined,
      object,
    );
}

function isFact(value: unknown): value is Known<unknown> {
  return typeof value === 'object' && value !== null && 'known' in value && 'value' in value;
}

function saysInstead(subject: object, field: string, wanted: string | undefined): boolean {
  const value = memberAt(subject, field);
  const plain = isFact(value) ? value.value : value;
  return wanted === undefined ? !isNothing(plain) : plain === wanted;
}

function tellFleet(
  { fleet = [], unit, terms }: ReportPart,
  { fleet: details = {} }: Subject,
  telling: Telling,
): string {
  const told = fleet.flatMap((member) => {
    const value = details[member];
    return isNothing(value) ? [] : [tellValue(value, { ...telling, terms })];
  });
  return told.length === 0 ? '' : `${told.join(' ')}${unit === undefined ? '' : ` ${unit}`}`;
}
