import { LONGEST_PASSWORD, pinFault } from './accounts-secrets.js';
import { Fact } from './declare-fact.js';

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

  @SecretFact()
  newPassword: string;
}

export class PinChangeDto {
  @SecretFact()
  password: string;

  @Fact('a PIN of 4 to 8 digits, as text', pinFault)
  pin: string;
}
