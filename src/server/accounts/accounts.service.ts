import { Injectable } from '@nestjs/common';
import type { AccountChangeDto, AccountCreationDto } from '../../../shared/wire/accounts-account.dto.js';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { DatabaseError } from '../platform/database/database-errors.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, type PageRequest } from '../platform/http/cursor.js';
import { assertFresh, type Versioned } from '../platform/http/entity-tag.js';
import { AccountsRepository } from './database/accounts.repository.js';
import type { AccountRow } from './database/account.row.js';
import { Passwords } from './passwords.js';
import { refuse } from '../platform/http/refuse.js';
import { newCode } from './secrets.js';
import { SessionsService } from './sessions.service.js';
import { signInKey } from './sign-in-key.js';

const DAY_MS = 24 * 60 * 60_000;

/** A password that somebody else has seen does for the first sign-in and for no longer than a week. */
const ONE_TIME_LIFE_MS = 7 * DAY_MS;

/** An account as administrators and managers see it. */
export type AccountView = Omit<AccountRow, 'signInKey' | 'passwordHash' | 'pinHash'> & Versioned;

/** The one-time password is told once; a retry of the create is not told it again. */
export type NewAccount = AccountView & { readonly oneTimePassword: string | null };

@Injectable()
export class AccountsService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly accounts: AccountsRepository,
    private readonly sessions: SessionsService,
    private readonly passwords: Passwords,
    private readonly clock: Clock,
  ) {}

  async list(request: PageRequest): Promise<Page<AccountView>> {
    const { items, next } = pageOf(
      await this.accounts.page(request),
      request,
      AccountsRepository.cursorOf.bind(AccountsRepository),
    );
    return { items: items.map(viewOf), next };
  }

  async read(id: string): Promise<AccountView> {
    return viewOf(await this.found(id));
  }

  /** Makes an account with a password by chance, to be changed at the first sign-in. */
  async create(draft: AccountCreationDto, key: string): Promise<NewAccount> {
    const { password, ...secrets } = await this.oneTimePassword();
    const now = this.clock.now();
    const created = await this.namingOnce(() =>
      this.createOnce.run({ operation: 'account', key, body: draft }, (id) =>
        this.accounts.add({
          id,
          name: draft.name.trim(),
          signInName: draft.signInName.trim(),
          signInKey: signInKey(draft.signInName),
          role: draft.role,
          address: draft.address ?? null,
          active: true,
          pinHash: null,
          ...secrets,
          version: 1,
          createdAt: now,
          updatedAt: now,
        }),
      ),
    );
    return { ...(await this.read(created.id)), oneTimePassword: created.again ? null : password };
  }

  /** Changes what is given; an account that is closed is signed out everywhere. */
  change(id: string, change: AccountChangeDto, ifMatch: string | undefined): Promise<AccountView> {
    return this.namingOnce(() =>
      this.unitOfWork.run(async () => {
        const account = await this.found(id);
        assertFresh(ifMatch, viewOf(account), change);
        const next = {
          ...account,
          ...changed(change),
          version: account.version + 1,
          updatedAt: this.clock.now(),
        };
        await this.keepAnAdministrator(account, next);
        await this.accounts.change(id, next);
        if (!next.active) await this.sessions.endAllOf(id);
        return viewOf(next);
      }),
    );
  }

  /** Gives a new one-time password for a person who lost theirs, and signs them out everywhere. */
  async resetPassword(id: string): Promise<NewAccount> {
    const { password, ...secrets } = await this.oneTimePassword();
    const account = await this.unitOfWork.run(async () => {
      const before = await this.found(id);
      const change = { ...secrets, version: before.version + 1, updatedAt: this.clock.now() };
      await this.accounts.change(id, change);
      await this.sessions.endAllOf(id);
      return viewOf({ ...before, ...change });
    });
    return { ...account, oneTimePassword: password };
  }

  private async oneTimePassword() {
    const password = newCode(20, 5);
    return {
      password,
      passwordHash: await this.passwords.hash(password),
      passwordDue: true,
      passwordExpiresAt: new Date(Date.parse(this.clock.now()) + ONE_TIME_LIFE_MS).toISOString(),
    };
  }

  /** Nobody could give anybody a password any more. */
  private async keepAnAdministrator(before: AccountRow, next: AccountRow): Promise<void> {
    const was = before.role === 'administrator' && before.active;
    if (!was || (next.role === 'administrator' && next.active)) return;
    if (await this.accounts.otherAdministratorExists(before.id)) return;
    const detail = 'This is the only administrator: make another one first.';
    refuse(409, detail, next.active ? '/role' : '/active');
  }

  private async namingOnce<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof DatabaseError && error.constraint === 'uq_account_sign_in_key')) throw error;
      return refuse(409, 'Another account has that sign-in name.', '/signInName');
    }
  }

  private async found(id: string): Promise<AccountRow> {
    return (await this.accounts.find(id)) ?? refuse(404, 'There is no such account.');
  }
}

function changed({ name, signInName, role, address, active }: AccountChangeDto): Partial<AccountRow> {
  return {
    ...(name === undefined ? {} : { name: name.trim() }),
    ...(signInName === undefined ? {} : { signInName: signInName.trim(), signInKey: signInKey(signInName) }),
    ...(role === undefined ? {} : { role }),
    ...(address === undefined ? {} : { address }),
    ...(active === undefined ? {} : { active }),
  };
}

function viewOf(account: AccountRow): AccountView {
  const { id, name, signInName, role, address, active, passwordDue, passwordExpiresAt } = account;
  const { version, createdAt, updatedAt } = account;
  return {
    id,
    name,
    signInName,
    role,
    address,
    active,
    passwordDue,
    passwordExpiresAt,
    version,
    createdAt,
    updatedAt,
  };
}
