import { isJsonObject, type JsonValue } from '../record/json-value.js';
import type { DecidedField } from './apply-section.js';
import { decideItem } from './decide-item.js';
import { findSensitiveText, SENSITIVE, type Sensitive } from './find-sensitive-text.js';
import type { Profile } from './hand-over-profile.js';
import type { SenderChoices } from './sender-choices.js';

/** A text that leaves and may tell what the profile keeps where it stands in a field of its own. */
export interface Caution {
  readonly section: string;
  readonly path: string;
  /** The kind that stays. */
  readonly tells: Sensitive;
  readonly said: string;
}

/** Kinds whose own words look like what is searched for: numbers of craft, and those of officers, whom all may call. */
const EXPECTED: ReadonlySet<string> = new Set(['craft', 'authority', 'response', 'event', ...SENSITIVE]);

/**
 * The texts that a sender reads before they leave: what each profile decides by kind of field, people also write into
 * texts. A kind that leaves anyway is not searched for.
 * @param year in which it happened
 */
export function findCautions(
  fields: readonly DecidedField[],
  year: number,
  profile: Profile,
  sender: SenderChoices,
): Caution[] {
  const kept = new Set<Sensitive>(
    SENSITIVE.filter((kind) => decideItem({ kind, id: kind }, profile, sender).does !== 'goes'),
  );
  return fields.flatMap(({ section, path, kind, value }) => {
    if (value === undefined || kind === undefined || EXPECTED.has(kind)) return [];
    return findSensitiveText(textsIn(value).join('\n'), year)
      .filter((found) => kept.has(found.kind))
      .map(({ kind: tells, said }) => ({ section, path, tells, said }));
  });
}

/** Everything that people typed; instants and words of closed lists have no spaces, and are no texts. */
function textsIn(value: JsonValue): string[] {
  if (typeof value === 'string') return /\s/.test(value) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one: JsonValue) => textsIn(one));
  if (!isJsonObject(value)) return [];
  return Object.values(value).flatMap((one) => textsIn(one));
}
