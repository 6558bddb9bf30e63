import { Injectable } from '@nestjs/common';
import {
  type CertificateChangeDto,
  type CertificateDto,
  findDayOrderFaults,
} from '../../../shared/wire/accounts-roster.dto.js';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { pageOf, type PageRequest } from '../platform/http/cursor.js';
import { assertFresh, type Versioned } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import type { PersonActor } from './actor.js';
import { type CertificateStanding, standingOn } from './certificate-standing.js';
import { AccountsRepository } from './database/accounts.repository.js';
import type { CertificateRow } from './database/certificate.row.js';
import { CertificatesRepository } from './database/certificates.repository.js';
import { refuse } from '../platform/http/refuse.js';

export interface CertificateView extends Versioned {
  readonly id: string;
  readonly accountId: string;
  readonly title: string;
  readonly number: string | null;
  readonly issuedOn: string | null;
  readonly expiresOn: string | null;
}

export interface CertificateLine extends CertificateView {
  readonly personName: string;
  /** On the day that was asked for. */
  readonly standing: CertificateStanding;
}

@Injectable()
export class CertificatesService {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly certificates: CertificatesRepository,
    private readonly accounts: AccountsRepository,
    private readonly clock: Clock,
  ) {}

  async list(day: string, request: PageRequest): Promise<Page<CertificateLine>> {
    const rows = await this.certificates.page(request);
    const { items, next } = pageOf(
      rows,
      request,
      CertificatesRepository.cursorOf.bind(CertificatesRepository),
    );
    return {
      items: items.map((row) => ({
        ...viewOf(row),
        personName: row.personName,
        standing: standingOn(day, row.expiresOn),
      })),
      next,
    };
  }

  async create(draft: CertificateDto, key: string, by: PersonActor): Promise<CertificateView> {
    const now = this.clock.now();
    const { id } = await this.createOnce.run(
      { operation: 'certificate', key, body: draft },
      async (newId) => {
        const account = await this.accounts.find(draft.accountId);
        if (account?.active !== true) refuse(422, 'There is no open account with this id.', '/accountId');
        await this.certificates.add({
          id: newId,
          accountId: draft.accountId,
          title: draft.title.trim(),
          number: draft.number?.trim() ?? null,
          issuedOn: draft.issuedOn ?? null,
          expiresOn: draft.expiresOn ?? null,
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
    change: CertificateChangeDto,
    ifMatch: string | undefined,
    by: PersonActor,
  ): Promise<CertificateView> {
    return this.edit(id, ifMatch, change, by, (before) => {
      const next = {
        title: change.title?.trim() ?? before.title,
        number: change.number === undefined ? before.number : (change.number?.trim() ?? null),
        issuedOn: change.issuedOn === undefined ? before.issuedOn : change.issuedOn,
        expiresOn: change.expiresOn === undefined ? before.expiresOn : change.expiresOn,
      };
      const pointer = change.expiresOn === undefined ? '/issuedOn' : '/expiresOn';
      const errors = findDayOrderFaults(next.issuedOn, next.expiresOn, pointer);
      return errors.length > 0 ? readInput<never>({ ok: false, errors }) : next;
    });
  }

  /** Takes a certificate away that was entered by mistake; what it said stays in the database. */
  async withdraw(id: string, ifMatch: string | undefined, by: PersonActor): Promise<void> {
    await this.edit(id, ifMatch, {}, by, () => ({ withdrawnAt: this.clock.now() }));
  }

  private edit(
    id: string,
    ifMatch: string | undefined,
    yours: object,
    by: PersonActor,
    nextOf: (before: CertificateRow) => Partial<CertificateRow>,
  ): Promise<CertificateView> {
    return this.unitOfWork.run(async () => {
      const before = await this.found(id);
      assertFresh(ifMatch, viewOf(before), yours);
      const change = {
        ...nextOf(before),
        writtenBy: by.accountId,
        version: before.version + 1,
        updatedAt: this.clock.now(),
      };
      await this.certificates.change(id, change);
      return viewOf({ ...before, ...change });
    });
  }

  private async found(id: string): Promise<CertificateRow> {
    const certificate = await this.certificates.find(id);
    return certificate?.withdrawnAt === null ? certificate : refuse(404, 'There is no such certificate.');
  }
}

function viewOf(certificate: CertificateRow): CertificateView {
  const { id, accountId, title, number, issuedOn, expiresOn, version } = certificate;
  return { id, accountId, title, number, issuedOn, expiresOn, version };
}
