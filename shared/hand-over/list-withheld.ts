import type { DecidedField } from './apply-section.js';
import type { DecidedFile } from './decide-file.js';
import type { FieldKinds } from './hand-over-profile.js';
import { WITHHELD_FORMAT, type Withheld } from './packet.js';

/** Something that stays and is neither field nor file. */
export interface OtherWithheld {
  readonly kind: string;
  readonly count: number;
  readonly reason: string;
}

/** Of these it says nothing that they stay: they tell nothing. */
const TELL_NOTHING = ['key', undefined];

/**
 * What the recipient is told of what is not there: each masked field, and of what stays its kind, how much of it there is
 * and why. Where it stands is not said, as that alone may tell something.
 */
export function listWithheld(
  fields: readonly DecidedField[],
  files: readonly DecidedFile[],
  others: readonly OtherWithheld[],
  { kinds, attachments }: FieldKinds,
): Withheld {
  const words = new Map([...kinds, ...attachments].map(({ kind, what }) => [kind, what]));
  const counted = new Map<string, Withheld['withheld'][number]>();
  const add = (kind: string, reason: string, count: number): void => {
    const key = JSON.stringify([kind, reason]);
    const before = counted.get(key)?.count ?? 0;
    counted.set(key, { kind, what: words.get(kind) ?? kind, count: before + count, reason });
  };
  for (const { kind, verdict } of fields) {
    if (verdict.does === 'stays' && !TELL_NOTHING.includes(kind)) add(kind ?? '', reasonOf(verdict), 1);
  }
  for (const { kind, verdict } of files) if (verdict.does === 'stays') add(kind, reasonOf(verdict), 1);
  for (const { kind, reason, count } of others) if (count > 0) add(kind, reason, count);
  const masked = fields.flatMap(({ section, path, verdict }) =>
    verdict.does === 'masked' ? [{ section, path, how: verdict.how, reason: verdict.reason }] : [],
  );
  return { format: WITHHELD_FORMAT, masked, withheld: [...counted.values()] };
}

/** A sender's own words stay in the house. */
function reasonOf({ by, reason }: DecidedFile['verdict']): string {
  return by === 'profile' ? reason : 'The sender held it back.';
}
