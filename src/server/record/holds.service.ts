import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Custodian, HoldsSection, LegalHold } from '../../../shared/record/legal-hold.js';
import { isHeld } from '../../../shared/record/legal-hold.js';
import type {
  AcknowledgeHoldDto,
  NameCustodianDto,
  ReleaseHoldDto,
  StartHoldDto,
} from '../../../shared/wire/record-holds.dto.js';
import { AccountFinder, type Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { refuse } from '../platform/http/refuse.js';
import { Holds } from './holds.js';
import { assertMayWrite, assertRole, IncidentAccess } from './incident-access.js';
import { ServiceSections } from './service-sections.js';

/** What people do about holds. Only counsel, by name and with a reason, lets one end. */
@Injectable()
export class HoldsService {
  constructor(
    private readonly holds: Holds,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  /** As they stand, or as of a moment. */
  async list(incidentId: string, actor: Actor, at?: string) {
    await this.access.read(incidentId, actor);
    const section = await this.holds.of(incidentId, at);
    return { held: isHeld(section), holds: section.holds ?? [], withdrawals: section.withdrawals ?? [] };
  }

  async start(incidentId: string, body: StartHoldDto, key: string, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    const operation = `hold ${incidentId}`;
    await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      await this.createOnce.run({ operation, key, body }, (id) =>
        this.holds.start(incidentId, [{ id, cause: 'by-hand', of: [], reason: body.reason }], actor),
      );
    });
    return this.list(incidentId, actor);
  }

  /** The same again changes nothing. */
  async nameCustodian(incidentId: string, holdId: string, { account, name }: NameCustodianDto, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    if ((account === undefined) === (name === undefined || name.trim() === '')) {
      refuse(422, 'Give an account or, for somebody without one, a name: one of the two.', '/account');
    }
    return this.changeHold(incidentId, holdId, actor, async (hold) => {
      const who = account === undefined ? { name: name ?? '' } : await this.accountOf(account);
      const isThere = (one: Custodian): boolean =>
        account === undefined ? !one.account && one.name === who.name : one.id === account;
      if (hold.custodians.some(isThere)) return hold;
      const added: Custodian = {
        id: account ?? randomUUID(),
        name: who.name,
        account: account !== undefined,
        namedAt: this.clock.now(),
        namedBy: actor.personName,
      };
      return { ...hold, custodians: [...hold.custodians, added] };
    });
  }

  /** Everybody acknowledges for themselves; a manager writes down what somebody without an account signed. */
  async acknowledge(incidentId: string, holdId: string, { custodian }: AcknowledgeHoldDto, actor: Actor) {
    assertMayWrite(actor);
    const own = actor.accountId ?? '';
    const id = custodian ?? own;
    return this.changeHold(incidentId, holdId, actor, (hold) => {
      const found = hold.custodians.find((one) => one.id === id);
      if (found === undefined) refuse(422, 'No custodian of this hold is named so.', '/custodian');
      if (found.acknowledgedAt !== undefined) return hold;
      if (id !== own) {
        assertRole(actor, 'manager', 'administrator');
        if (found.account) refuse(422, 'Who has an account acknowledges by it.', '/custodian');
      }
      const done = {
        acknowledgedAt: this.clock.now(),
        ...(id === own ? {} : { acknowledgedTo: actor.personName }),
      };
      const custodians = hold.custodians.map((one) => (one === found ? { ...one, ...done } : one));
      return { ...hold, custodians };
    });
  }

  async release(incidentId: string, holdId: string, body: ReleaseHoldDto, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    return this.changeHold(incidentId, holdId, actor, (hold) => {
      if (hold.released !== undefined) refuse(409, 'Counsel released this hold already.');
      const { counsel, releasedOn, reason } = body;
      const entered = { enteredBy: actor.personName, enteredAt: this.clock.now() };
      return { ...hold, released: { counsel, releasedOn, reason, ...entered } };
    });
  }

  private async accountOf(id: string): Promise<{ name: string }> {
    const account = await this.accounts.find(id);
    if (account === null || account.role === 'counsel') {
      refuse(422, 'There is no open account of staff with this id.', '/account');
    }
    return account;
  }

  private async changeHold(
    incidentId: string,
    holdId: string,
    actor: Actor,
    change: (hold: LegalHold) => LegalHold | Promise<LegalHold>,
  ) {
    await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      const section = await this.holds.of(incidentId);
      const hold = section.holds?.find(({ id }) => id === holdId) ?? refuse(404, 'There is no such hold.');
      const changed = await change(hold);
      const holds = (section.holds ?? []).map((one) => (one === hold ? changed : one));
      const replace = (before: HoldsSection): HoldsSection => ({ ...before, holds });
      await this.holds.change(incidentId, replace, actor);
    });
    return this.list(incidentId, actor);
  }
}
