import { Injectable } from '@nestjs/common';
import type { Role } from '../../../shared/kernel/role.js';
import { newPasswordFault } from '../../../shared/wire/accounts-secrets.js';
import type {
  PasswordChangeDto,
  PinChangeDto,
  SignInDto,
} from '../../../shared/wire/accounts-session.dto.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { AttemptLimits, type Subject } from './attempt-limits.js';
import type { PersonActor } from './actor.js';
import { AccountsRepository, type AccountSecrets } from './database/accounts.repository.js';
import { networkOf } from './network-of.js';
import { Passwords } from './passwords.js';
import { refuse } from '../platform/http/refuse.js';
import { type NewSession, SessionsService } from './sessions.service.js';
import { signInKey } from './sign-in-key.js';

const TRIES_A_NAME = 5;
/** A whole dock may stand behind one address. */
const TRIES_AN_ADDRESS = 30;

/** From where somebody signs in. */
export interface From {
  readonly address: string;
  /** The enrolled device, if it is one. */
  readonly deviceId: string | null;
}

/** A person as they see themselves. */
export interface SessionView {
  readonly accountId: string;
  readonly name: string;
  readonly signInName: string;
  readonly role: Role;
  /** The password was given to them: nothing goes before a new one. */
  readonly passwordDue: boolean;
  readonly hasPin: boolean;
}

@Injectable()
export class SignInService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly accounts: AccountsRepository,
    private readonly sessions: SessionsService,
    private readonly passwords: Passwords,
    private readonly limits: AttemptLimits,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 401, the same for a name that is not there and a wrong password; 429 for too many tries */
  async signIn({ signInName, password }: SignInDto, from: From): Promise<NewSession & { accountId: string }> {
    const key = signInKey(signInName);
    const subjects: [Subject, Subject] = [
      // Tries from an enrolled device count apart, so that no stranger can keep the people at the dock out.
      { name: `name ${key} ${from.deviceId ?? 'elsewhere'}`, most: TRIES_A_NAME },
      { name: `address ${networkOf(from.address)}`, most: TRIES_AN_ADDRESS },
    ];
    const account = await this.limits.limit(subjects, async () => {
      const known = await this.accounts.findSecrets({ signInKey: key });
      const fits = await this.passwords.fits(password, known?.passwordHash);
      return fits && this.mayBeUsed(known) ? known : null;
    });
    const session = account && (await this.beginUnlessChanged(account, from.deviceId));
    if (account === null || session === null) return refuseSignIn();
    return { ...session, accountId: account.id };
  }

  /** Who is signed in, as they see it. */
  async describe(accountId: string): Promise<SessionView> {
    const account = await this.accounts.findSecrets({ id: accountId });
    if (account === null) return refuse(404, 'There is no such account.');
    const { name, signInName, role, passwordDue, pinHash } = account;
    return { accountId, name, signInName, role, passwordDue, hasPin: pinHash !== null };
  }

  /** Takes a new password; every other session of the person ends. */
  async changePassword(
    person: PersonActor,
    { currentPassword, newPassword }: PasswordChangeDto,
  ): Promise<void> {
    const account = await this.confirm(person, currentPassword, '/currentPassword');
    const fault =
      newPassword === currentPassword
        ? 'Must not be the present one.'
        : newPasswordFault(newPassword, account);
    if (fault !== null) refuse(422, fault, '/newPassword');
    const passwordHash = await this.passwords.hash(newPassword);
    await this.unitOfWork.run(async () => {
      await this.accounts.change(account.id, { passwordHash, passwordDue: false, passwordExpiresAt: null });
      await this.sessions.endAllOf(account.id, person.sessionId);
    });
  }

  /** Takes a new PIN; asks for the password, as a phone may have been left lying open. */
  async changePin(person: PersonActor, { password, pin }: PinChangeDto): Promise<void> {
    const account = await this.confirm(person, password, '/password');
    const pinHash = await this.passwords.hash(pin);
    await this.unitOfWork.run(() => this.accounts.change(account.id, { pinHash }));
  }

  private async confirm(person: PersonActor, password: string, pointer: string): Promise<AccountSecrets> {
    const subject = { name: `password of ${person.accountId}`, most: TRIES_A_NAME };
    const account = await this.limits.limit([subject], async () => {
      const known = await this.accounts.findSecrets({ id: person.accountId });
      return (await this.passwords.fits(password, known?.passwordHash)) ? known : null;
    });
    return account ?? refuse(422, 'Is not your present password.', pointer);
  }

  private mayBeUsed(account: AccountSecrets | null): account is AccountSecrets {
    if (account === null || !account.active) return false;
    return account.passwordExpiresAt === null || account.passwordExpiresAt > this.clock.now();
  }

  /** While the password was looked at, it may have been taken away. */
  private beginUnlessChanged(account: AccountSecrets, deviceId: string | null): Promise<NewSession | null> {
    return this.unitOfWork.run(async () => {
      const now = await this.accounts.findSecrets({ id: account.id });
      if (!this.mayBeUsed(now) || now.passwordHash !== account.passwordHash) return null;
      return this.sessions.begin(account.id, deviceId);
    });
  }
}

function refuseSignIn(): never {
  throw new ProblemException({
    ...problemOfStatus(401, 'Look at both again. An administrator can give you a new password.'),
    type: '/problems/sign-in-refused',
    title: 'Sign-in name and password do not go together',
  });
}
