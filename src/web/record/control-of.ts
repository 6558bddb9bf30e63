import { amount, occurred, position, stamp } from '../../../shared/wire/record-compounds.js';
import { membersOf, type ValueRule } from '../../../shared/wire/record-members.js';
import {
  casualtyTypes,
  count,
  day,
  hoursOrUnknown,
  id,
  ids,
  instant,
  lines,
  stateCode,
  states,
  ternary,
  text,
  timeZone,
  treatments,
  yesOrNo,
} from '../../../shared/wire/record-values.js';

/** What another item is chosen from: a list of this section or of another, or what the business lists. */
export type RefTarget = 'craft' | 'people' | 'officers' | 'lines' | 'fleet' | 'places';

/** How a value is asked for. */
export type Control =
  | {
      readonly kind:
        | 'three-way'
        | 'yes-no'
        | 'text'
        | 'line'
        | 'lines'
        | 'instant'
        | 'day'
        | 'count'
        | 'hours'
        | 'amount'
        | 'stamp'
        | 'position'
        | 'occurred'
        | 'casualty-types'
        | 'treatments'
        | 'vessel-type'
        | 'states'
        | 'state'
        | 'zone';
    }
  | { readonly kind: 'choice'; readonly values: readonly string[] }
  | { readonly kind: 'measure'; readonly units: readonly string[] }
  | { readonly kind: 'ref' | 'refs'; readonly to: RefTarget };

const BY_RULE: ReadonlyMap<
  ValueRule,
  Exclude<Control['kind'], 'choice' | 'measure' | 'ref' | 'refs'>
> = new Map([
  [ternary, 'three-way'],
  [yesOrNo, 'yes-no'],
  [text, 'text'],
  [lines, 'lines'],
  [instant, 'instant'],
  [day, 'day'],
  [count, 'count'],
  [hoursOrUnknown, 'hours'],
  [amount, 'amount'],
  [stamp, 'stamp'],
  [position, 'position'],
  [occurred, 'occurred'],
  [casualtyTypes, 'casualty-types'],
  [treatments, 'treatments'],
  [states, 'states'],
  [stateCode, 'state'],
  [timeZone, 'zone'],
]);

/** What the ids of a member name, by its name. */
const TARGETS: Readonly<Record<string, RefTarget>> = {
  craft: 'craft',
  person: 'people',
  renterPerson: 'people',
  patients: 'people',
  briefed: 'people',
  officer: 'officers',
  line: 'lines',
  damageLine: 'lines',
};

/** Lines that are chosen from what the business lists. */
const LISTED: Readonly<Record<string, Control>> = {
  fleetCraft: { kind: 'ref', to: 'fleet' },
  namedPlace: { kind: 'ref', to: 'places' },
};

/**
 * The control that fits a member of the record, by the rule that its values are read with.
 * @example controlOf(ternary, 'employee') // { kind: 'three-way' }
 */
export function controlOf(rule: ValueRule, name: string): Control {
  const kind = BY_RULE.get(rule);
  if (kind !== undefined) return { kind };
  if (rule === id || rule === ids)
    return { kind: rule === id ? 'ref' : 'refs', to: TARGETS[name] ?? 'people' };
  if (LISTED[name] !== undefined) return LISTED[name];
  const values = rule.schema['enum'];
  if (Array.isArray(values)) return { kind: 'choice', values: values as readonly string[] };
  const unit = rule.part === undefined ? undefined : membersOf(rule.part()).get('unit');
  if (unit !== undefined && 'rule' in unit) {
    return { kind: 'measure', units: unit.rule.schema['enum'] as readonly string[] };
  }
  return { kind: name === 'type' ? 'vessel-type' : 'line' };
}
