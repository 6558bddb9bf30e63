import type { IncidentFacts } from '../../../shared/record/incident-facts.js';

/**
 * Facts without the words of people that were withdrawn from a section of the record; the same facts where none of
 * their words were.
 */
export function withoutWithdrawn(
  facts: IncidentFacts,
  sections: readonly string[],
  paths: readonly string[],
): IncidentFacts {
  const gone = (path: string) => paths.some((one) => one === path || one.startsWith(`${path}/`));
  if (sections.includes('time-and-place') && gone('/description')) {
    const { description, ...place } = facts.place;
    return description === undefined ? facts : { ...facts, place };
  }
  const owned = ({ id, owner }: IncidentFacts['damage'][number]) =>
    owner !== undefined && gone(`/lines/${id}/owner`);
  if (!sections.includes('damage') || !facts.damage.some(owned)) return facts;
  const damage = facts.damage.map((item) => {
    if (!owned(item)) return item;
    const rest = { ...item };
    delete rest.owner;
    return rest;
  });
  return { ...facts, damage };
}
