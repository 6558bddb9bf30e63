import { findRefusedNumber } from '../record/find-refused-number.js';
import { flattenSection } from '../record/flatten-section.js';
import { isJsonObject, type JsonObject, type JsonValue, sameJson } from '../record/json-value.js';
import { decideItem, type Item, type Verdict } from './decide-item.js';
import type { Profile } from './hand-over-profile.js';
import { keepFields } from './keep-fields.js';
import { maskNames, maskValue } from './mask-value.js';
import type { SenderChoices } from './sender-choices.js';

/** A field with what becomes of it. */
export interface DecidedField {
  readonly section: string;
  readonly path: string;
  readonly kind: string | undefined;
  readonly verdict: Verdict;
  /** As it leaves; absent where it stays. */
  readonly value?: JsonValue;
}

export interface SectionToDecide {
  readonly section: string;
  readonly document: JsonObject;
  readonly placed: (path: string) => Omit<Item, 'id'>;
  /** Leave as initials wherever they stand. */
  readonly names: readonly string[];
}

/**
 * Lays a profile over one section, field by field. A card or Social Security number leaves for nobody, and a list of
 * which only the ids would leave does not.
 */
export function applySection(
  { section, document, placed, names }: SectionToDecide,
  profile: Profile,
  sender: SenderChoices,
): { readonly document?: JsonObject; readonly fields: readonly DecidedField[] } {
  // Who said a thing is a name like others: it leaves with the names of everybody, or not at all.
  const tellsWho = decideItem({ kind: 'name', id: 'name' }, profile, sender).does === 'goes';
  const decided = [...flattenSection(document)].map(([path, value]): DecidedField => {
    const item = placed(path);
    const id = `${section}:${path}`;
    const verdict = decideItem({ ...item, id }, profile, sender);
    // Whoever has a single text leave against the profile has read it; a whole kind nobody has.
    const isRead = verdict.by === 'override' && sender.choices.some(({ what }) => what === id);
    return { section, path, kind: item.kind, ...leave(verdict, value, isRead ? [] : names, tellsWho) };
  });
  const fields = decided.some(tells) ? withIds(decided, document) : decided.map(withoutKey);
  const kept = new Map(fields.flatMap(({ path, value }) => (value === undefined ? [] : [[path, value]])));
  return kept.size === 0 ? { fields } : { fields, document: keepFields(document, kept) };
}

/** Whether it says more than that there is something. */
function tells({ kind, value }: DecidedField): boolean {
  return kind !== 'key' && value !== undefined;
}

/** Whatever leaves of an item of a list leaves with the id of the item, or nobody could tell which one it is of. */
function withIds(fields: readonly DecidedField[], document: JsonObject): readonly DecidedField[] {
  const needed = new Set(fields.filter(tells).flatMap(({ path }) => idsAbove(path)));
  const values = flattenSection(document);
  return fields.map((field) => {
    const value = values.get(field.path);
    if (field.value !== undefined || !needed.has(field.path) || value === undefined) return field;
    return { ...field, value, verdict: { does: 'goes', reason: WHICH, by: 'profile' } };
  });
}

/** `idsAbove('/people/p1/name')` is `['/people/id', '/people/p1/id']`, of which the second is one. */
function idsAbove(path: string): string[] {
  const tokens = path.split('/');
  return tokens.slice(1, -1).map((_, place) => `${tokens.slice(0, place + 2).join('/')}/id`);
}

function withoutKey({ section, path, kind, verdict }: DecidedField): DecidedField {
  if (verdict.does === 'stays') return { section, path, kind, verdict };
  return { section, path, kind, verdict: { does: 'stays', reason: BARE, by: 'profile' } };
}

/** The value as it leaves; a masking that something needs whatever the profile says is said so. */
function leave(
  verdict: Verdict,
  value: JsonValue,
  names: readonly string[],
  tellsWho: boolean,
): Pick<DecidedField, 'verdict' | 'value'> {
  if (verdict.does === 'stays') return { verdict };
  if (findRefusedNumber(JSON.stringify(value)) !== null) {
    return { verdict: { does: 'stays', reason: REFUSED, by: 'profile' } };
  }
  if (verdict.does === 'masked') return { verdict, value: maskNames(names, maskValue(verdict.how, value)) };
  const bare = tellsWho ? value : withoutWho(value);
  const masked = maskNames(names, bare);
  if (sameJson(masked, value)) return { verdict, value };
  const [how, reason] = sameJson(masked, bare)
    ? (['unnamed', NOT_WHO] as const)
    : (['initials', MAY_BE_A_CHILD] as const);
  return { verdict: { does: 'masked', how, reason, by: verdict.by }, value: masked };
}

/** `withoutWho({ value: 3, known: 'told', by: 'Ann' })` is `{ value: 3, known: 'told' }`. */
function withoutWho(value: JsonValue): JsonValue {
  if (!isJsonObject(value) || !('known' in value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([member]) => member !== 'by'));
}

const REFUSED = 'It holds a card or Social Security number, which leaves for nobody.';
const NOT_WHO = 'Names of others do not leave, and so not who said it.';
const MAY_BE_A_CHILD = 'Whoever is not known to be of age is named by initials.';
const BARE = 'Nothing of this section leaves, and so its bare list does not.';
const WHICH = 'It says of which item the rest is told.';
