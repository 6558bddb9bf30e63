import type { Actor } from '../accounts/accounts.api.js';

/** Whom an amendment names: ids in the clear, the name committed to. */
export interface Author {
  readonly who: string | null;
  readonly device: string | null;
  readonly person: string;
}

export function authorOf(actor: Actor): Author {
  return {
    who: actor.accountId ?? null,
    device: actor.deviceId ?? null,
    person: actor.personName,
  };
}

/** Whether two authors are one person, as far as the record can tell. */
export function sameAuthor(one: Author, other: Author): boolean {
  if (one.who !== null || other.who !== null) return one.who === other.who;
  return one.device === other.device && one.person === other.person;
}

/** Under which name somebody's drafts are kept. */
export function holderOf(actor: Actor): string {
  const { who, device, person } = authorOf(actor);
  return who === null ? `device ${device ?? ''} ${person}` : `account ${who}`;
}
