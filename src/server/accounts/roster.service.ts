import { Injectable } from '@nestjs/common';
import {
  findDayOrderFaults,
  type Duty,
  type RosterEntryChangeDto,
  type RosterEntryDto,
  type RosterQueryDto,
} from '../../../shared/wire/accounts-roster.dto.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh, type Versioned } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import type { PersonActor } from './actor.js';
import { AccountsRepository } from './database/accounts.repository.js';
import { CertificatesRepository } from './database/certificates.repository.js';
import type { RosterEntryRow } from './database/roster-entry.row.js';
import { RosterRepository } from './database/roster.repository.js';
import { refuse } from '../platform/http/refuse.js';

export interface RosterEntryView extends Versioned {
  readonly id: string;
  readonly accountId: string;
  readonly duty: Duty;
  readonly from: string;
  readonly to: string;
}

/** A line of the roster: who is on, as what, and what they are no longer certified for. */
export interface RosterLine extends RosterEntryView {
  readonly personName: string;
  /** Certificates that end before the last of the days that were asked for, or of the entry if that comes first. */
  readonly outOfDate: readonly { readonly title: string; readonly expiresOn: string }[];
}

/** Somebody to pick on a shared device. */
export interface PersonOnDuty {
  readonly accountId: string;
  readonly personName: string;
  readonly duties: readonly Duty[];
}

@Injectable()
export class RosterService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly roster: RosterRepository,
    private readonly certificates: CertificatesRepository,
    private readonly accounts: AccountsRepository,
    private readonly clock: Clock,
  ) {}

  async list({ from, to }: RosterQueryDto): Promise<RosterLine[]> {
    const entries = await this.roster.between(from, to);
    const people = [...new Set(entries.map(({ accountId }) => accountId))];
    const ended = people.length === 0 ? [] : await this.certificates.outOfDate(people, to);
    return entries.map((entry) => {
      const lastDay = entry.lastDay < to ? entry.lastDay : to;
      const outOfDate = ended.flatMap(({ accountId, title, expiresOn }) =>
        accountId === entry.accountId && expiresOn !== null && expiresOn < lastDay
          ? [{ title, expiresOn }]
          : [],
      );
      return { ...viewOf(entry), personName: entry.personName, outOfDate };
    });
  }

  /** Who is on that day, by name, each person once. */
  async onDuty(day: string): Promise<PersonOnDuty[]> {
    const people = new Map<string, { accountId: string; personName: string; duties: Duty[] }>();
    for (const { accountId, personName, duty } of await this.roster.between(day, day)) {
      const person = people.get(accountId) ?? { accountId, personName, duties: [] };
      if (!person.duties.includes(duty)) person.duties.push(duty);
      people.set(accountId, person);
    }
    return [...people.values()];
  }

  async create(draft: RosterEntryDto, key: string, by: PersonActor): Promise<RosterEntryView> {
    const now = this.clock.now();
    const { id } = await this.createOnce.run(
      { operation: 'roster-entry', key, body: draft },
      async (newId) => {
        const account = await this.accounts.find(draft.accountId);
        if (account?.active !== true) refuse(422, 'There is no open account with this id.', '/accountId');
        await this.roster.add({
          id: newId,
          accountId: draft.accountId,
          duty: draft.duty,
          firstDay: draft.from,
          lastDay: draft.to,
          writtenBy: by.accountId,
          version: 1,
          createdAt: now,
          updatedAt: now,
          withdrawnAt: null,
        });
      },
    );
    return viewOf(await this.found(id));
  }

  change(
    id: string,
    change: RosterEntryChangeDto,
    ifMatch: string | undefined,
    by: PersonActor,
  ): Promise<RosterEntryView> {
    return this.edit(id, ifMatch, change, by, (entry) => {
      const next = {
        duty: change.duty ?? entry.duty,
        firstDay: change.from ?? entry.firstDay,
        lastDay: change.to ?? entry.lastDay,
      };
      const pointer = change.to === undefined ? '/from' : '/to';
      const errors = findDayOrderFaults(next.firstDay, next.lastDay, pointer);
      return errors.length > 0 ? readInput<never>({ ok: false, errors }) : next;
    });
  }

  /** Takes an entry off the roster; what it said stays in the database. */
  async withdraw(id: string, ifMatch: string | undefined, by: PersonActor): Promise<void> {
    await this.edit(id, ifMatch, {}, by, () => ({ withdrawnAt: this.clock.now() }));
  }

  private edit(
    id: string,
    ifMatch: string | undefined,
    yours: object,
    by: PersonActor,
    nextOf: (entry: RosterEntryRow) => Partial<RosterEntryRow>,
  ): Promise<RosterEntryView> {
    return this.unitOfWork.run(async () => {
      const entry = await this.found(id);
      assertFresh(ifMatch, viewOf(entry), yours);
      const change = {
        ...nextOf(entry),
        writtenBy: by.accountId,
        version: entry.version + 1,
        updatedAt: this.clock.now(),
      };
      await this.roster.change(id, change);
      return viewOf({ ...entry, ...change });
    });
  }

  private async found(id: string): Promise<RosterEntryRow> {
    const entry = await this.roster.find(id);
    return entry?.withdrawnAt === null ? entry : refuse(404, 'There is no such entry on the roster.');
  }
}

function viewOf({ id, accountId, duty, firstDay, lastDay, version }: RosterEntryRow): RosterEntryView {
  return { id, accountId, duty, from: firstDay, to: lastDay, version };
}
