import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import {
  assignedAccounts,
  type AssignmentsSection,
  type CounselAssignment,
} from '../../../shared/record/assignments-section.js';
import type { AssignCounselDto } from '../../../shared/wire/record-holds.dto.js';
import { AccountFinder, type Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { refuse } from '../platform/http/refuse.js';
import { AssignmentsRepository } from './database/assignments.repository.js';
import { assertRole, IncidentAccess } from './incident-access.js';
import { ServiceSections } from './service-sections.js';

/** Which counsel reads an incident. The log keeps who did, from when to when. */
@Injectable()
export class AssignmentsService {
  constructor(
    private readonly sections: ServiceSections,
    private readonly assignments: AssignmentsRepository,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly clock: Clock,
  ) {}

  async list(incidentId: string, actor: Actor): Promise<{ items: CounselAssignment[] }> {
    assertRole(actor, 'manager', 'administrator', 'counsel');
    await this.access.read(incidentId, actor);
    return { items: (await this.section(incidentId)).counsel ?? [] };
  }

  /** The same again changes nothing. */
  async assign(incidentId: string, { account }: AssignCounselDto, actor: Actor) {
    assertRole(actor, 'manager', 'administrator');
    await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      await this.add(incidentId, account, '/account', actor);
    });
    return this.list(incidentId, actor);
  }

  async unassign(incidentId: string, account: string, actor: Actor): Promise<void> {
    assertRole(actor, 'manager', 'administrator');
    await this.sections.run(async () => {
      await this.access.find(incidentId, actor);
      const section = await this.section(incidentId);
      if (!assignedAccounts(section).includes(account)) refuse(404, 'This account is not assigned.');
      const ended = { endedAt: this.clock.now(), endedBy: actor.personName };
      const counsel = (section.counsel ?? []).map((one) =>
        one.account === account && one.endedAt === undefined ? { ...one, ...ended } : one,
      );
      await this.assignments.remove({ incidentId, accountId: account });
      await this.sections.write(incidentId, 'assignments', { counsel }, actor);
    });
  }

  /**
   * Assigns within a unit of work that has begun.
   * @param pointer where the account stands in what was sent
   */
  async add(incidentId: string, account: string, pointer: string, actor: Actor): Promise<void> {
    const found = await this.accounts.find(account);
    if (found?.role !== 'counsel') refuse(422, 'There is no open account of counsel with this id.', pointer);
    const section = await this.section(incidentId);
    if (assignedAccounts(section).includes(account)) return;
    const one: CounselAssignment = {
      id: randomUUID(),
      account,
      name: found.name,
      assignedAt: this.clock.now(),
      assignedBy: actor.personName,
    };
    await this.assignments.add({ incidentId, accountId: account });
    await this.sections.write(
      incidentId,
      'assignments',
      { counsel: [...(section.counsel ?? []), one] },
      actor,
    );
  }

  private section(incidentId: string): Promise<AssignmentsSection> {
    return this.sections.read<AssignmentsSection>(incidentId, 'assignments');
  }
}
