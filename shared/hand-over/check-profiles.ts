import { ATTACHMENTS, type FieldKinds, type Profile, RECIPIENTS } from './hand-over-profile.js';

/**
 * What is undecided: fields of the record without a kind, with two, or that are gone; kinds that a profile does not
 * decide, or decides in vain. None means that nothing leaves or stays by accident.
 * @param fields every field there is, as section and pointer
 * @example checkProfiles([':/new'], kinds, profiles) // ['A new field :/new has no kind in forms/hand-over/fields.json…']
 */
export function checkProfiles(
  fields: readonly string[],
  { kinds, attachments }: FieldKinds,
  profiles: readonly Profile[],
): string[] {
  const placed = kinds.flatMap(({ fields: of }) => of);
  const named = new Set(placed);
  const there = new Set(fields);
  const known = new Set([...kinds, ...attachments].map(({ kind }) => kind));
  const listed = new Set(attachments.map(({ kind }) => kind));
  return [
    ...fields
      .filter((field) => !named.has(field))
      .map((field) => `The field ${field} has no kind in forms/hand-over/fields.json: say what it tells.`),
    ...placed.filter((field) => !there.has(field)).map((field) => `There is no field ${field}: take it out.`),
    ...placed
      .filter((field, place) => placed.indexOf(field) !== place)
      .map((field) => `The field ${field} has two kinds: keep one.`),
    ...ATTACHMENTS.filter((kind) => !listed.has(kind)).map((kind) => `The attachment ${kind} is not listed.`),
    ...RECIPIENTS.filter((one) => profiles.filter(({ recipient }) => recipient === one).length !== 1).map(
      (one) => `There must be one profile for ${one}.`,
    ),
    ...profiles.flatMap(({ recipient, decisions }) => [
      ...[...known]
        .filter((kind) => decisions[kind] === undefined)
        .map((kind) => `The profile for ${recipient} does not decide ${kind}.`),
      ...Object.keys(decisions)
        .filter((kind) => !known.has(kind))
        .map((kind) => `The profile for ${recipient} decides ${kind}, which there is not.`),
    ]),
  ];
}
