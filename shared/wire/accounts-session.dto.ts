import { LONGEST_PASSWORD, newPasswordFault, pinFault, SHORTEST_PASSWORD } from './accounts-secrets.js';
import { Fact } from './declare-fact.js';

const NEW_PASSWORD = `a password of at least ${SHORTEST_PASSWORD} characters`;
const SECRET = `text of 1 to ${LONGEST_PASSWORD} characters`;

/** A secret as it was typed: whether it is the right one, or a good one, is looked at elsewhere. */
const SecretFact = (): PropertyDecorator =>
  Fact(SECRET, (value) =>
    typeof value === 'string' && value !== '' && value.length <= LONGEST_PASSWORD
      ? null
      : `Must be ${SECRET}.`,
  );

export class SignInDto {
  @SecretFact()
  signInName: string;

  @SecretFact()
  password: string;
}

export class PasswordChangeDto {
  @SecretFact()
  currentPassword: string;

  /** That it is not made of the person's own name is looked at where that is known. */
  @Fact(NEW_PASSWORD, (value) =>
    typeof value === 'string'
      ? newPasswordFault(value, { name: '', signInName: '' })
      : `Must be ${NEW_PASSWORD}.`,
  )
  newPassword: string;
}

export class PinChangeDto {
  @SecretFact()
  password: string;

  @Fact('a PIN of 4 to 8 digits, as text', pinFault)
  pin: string;
}
