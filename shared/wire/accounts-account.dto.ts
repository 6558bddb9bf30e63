import { type Role, ROLES } from '../kernel/role.js';
import { LineFact, LinesFact } from './accounts-facts.js';
import { BooleanFact, MayBeAbsent, MayBeNull, OneOf } from './declare-fact.js';

const NAME = 'the name of the person';
const SIGN_IN_NAME = 'the name to sign in with';
const ADDRESS = 'an address that will still reach the person after the season';
const LONGEST_SIGN_IN_NAME = 80;
const LONGEST_ADDRESS = 500;

export class AccountCreationDto {
  @LineFact(NAME)
  name: string;

  @LineFact(SIGN_IN_NAME, LONGEST_SIGN_IN_NAME)
  signInName: string;

  @OneOf(ROLES)
  role: Role;

  @MayBeNull()
  @LinesFact(ADDRESS, LONGEST_ADDRESS)
  address?: string | null;
}

/** What is to be different; what is left out stays as it is. */
export class AccountChangeDto {
  @MayBeAbsent()
  @LineFact(NAME)
  name?: string;

  @MayBeAbsent()
  @LineFact(SIGN_IN_NAME, LONGEST_SIGN_IN_NAME)
  signInName?: string;

  @MayBeAbsent()
  @OneOf(ROLES)
  role?: Role;

  @MayBeNull()
  @LinesFact(ADDRESS, LONGEST_ADDRESS)
  address?: string | null;

  @MayBeAbsent()
  @BooleanFact()
  active?: boolean;
}
