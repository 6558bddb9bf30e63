import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import { dollars, toCents } from '../../../shared/quantity/cents.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import { casualtyTypes } from '../../../shared/vocabulary/casualty-types.js';
import { tellInstant } from '../look/tell-instant.js';
import { common } from '../words/common.js';
import { facts as say } from '../words/facts.js';
import type { FactKind } from './fact-place.js';

/** `nameFact('/people/0/care', facts)` is `'Person p1: Care needed'`. */
export function nameFact(pointer: string, facts: IncidentFacts): string {
  const [list = '', index, member = ''] = pointer.split('/').slice(1);
  const name = say.names[index === undefined ? list : member] ?? pointer;
  const whose = index === undefined ? null : whoseOf(list, Number(index), facts);
  return whose === null ? name : say.of(name, whose);
}

function whoseOf(list: string, index: number, { people, vessels, damage }: IncidentFacts): string | null {
  const id = { people, vessels, damage }[list as 'people' | 'vessels' | 'damage'][index]?.id ?? '';
  if (list === 'people') return say.person(id);
  if (list === 'vessels') return say.craft(id);
  return say.damage(say.things[damage[index]?.of ?? 'other-property'], id);
}

/** A value as people say it. */
export function nameValue(kind: FactKind, value: unknown, timeZone: string): string {
  if (value === undefined || value === 'unknown') return say.unknown;
  if (Array.isArray(value)) return value.map((one) => nameValue(kind, one, timeZone)).join(', ');
  if (typeof value === 'number') return kind === 'amount' ? dollars(toCents(value)) : `${value} ${say.hours}`;
  if (typeof value === 'object') {
    const { low, high } = value as { low: number; high: number };
    return say.range(dollars(toCents(low)), dollars(toCents(high)));
  }
  return nameWord(kind, value as string, timeZone);
}

function nameWord(kind: FactKind, word: string, timeZone: string): string {
  switch (kind) {
    case 'ternary':
      return common.answer[word as 'yes'];
    case 'outcome':
      return say.outcomes[word as 'unhurt'];
    case 'care':
      return say.cares[word as 'none'];
    case 'use':
      return say.uses[word as 'rental'];
    case 'assessment':
      return say.assessments[word as 'complete'];
    case 'instant':
      return tellInstant(word, timeZone);
    case 'state':
      return nameJurisdiction(`us-${word.toLowerCase()}`);
    case 'casualty':
      return casualtyTypes.find(({ slug }) => slug === word)?.label ?? word;
    default:
      return word;
  }
}
