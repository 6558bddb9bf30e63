import { Injectable } from '@nestjs/common';
import { In, IsNull, LessThan } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { Cursor, PageRequest } from '../../platform/http/cursor.js';
import { AccountRow } from './account.row.js';
import { CertificateRow } from './certificate.row.js';

export type NamedCertificate = CertificateRow & { readonly personName: string };

/** Sorts what has no end behind every day. */
const NO_END = '9999-12-31';
const ENDS = `COALESCE(certificate.expiresOn, '${NO_END}')`;

@Injectable()
export class CertificatesRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** One more than the page holds, of people whose account is open; what ends first comes first. */
  async page({ limit, after }: PageRequest): Promise<NamedCertificate[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(CertificateRow, 'certificate')
      .innerJoin(AccountRow, 'account', 'account.id = certificate.accountId AND account.active')
      .addSelect('account.name', 'person_name')
      .addSelect(ENDS, 'ends')
      .where('certificate.withdrawnAt IS NULL')
      .orderBy('ends')
      .addOrderBy('certificate.id')
      .limit(limit + 1);
    if (after !== null) {
      query.andWhere(`(${ENDS} > :sort OR (${ENDS} = :sort AND certificate.id > :id))`, { ...after });
    }
    const { entities, raw } = await query.getRawAndEntities<{ person_name: string }>();
    return entities.map((certificate, place) => ({
      ...certificate,
      personName: raw[place]?.person_name ?? '',
    }));
  }

  static cursorOf({ expiresOn, id }: CertificateRow): Cursor {
    return { sort: expiresOn ?? NO_END, id };
  }

  /** Those of the people that have ended before the day. */
  outOfDate(accountIds: readonly string[], day: string): Promise<CertificateRow[]> {
    return this.unitOfWork.manager.find(CertificateRow, {
      where: { accountId: In([...accountIds]), withdrawnAt: IsNull(), expiresOn: LessThan(day) },
      order: { expiresOn: 'ASC', id: 'ASC' },
    });
  }

  find(id: string): Promise<CertificateRow | null> {
    return this.unitOfWork.manager.findOneBy(CertificateRow, { id });
  }

  async add(certificate: CertificateRow): Promise<void> {
    await this.unitOfWork.manager.insert(CertificateRow, certificate);
  }

  async change(id: string, change: Partial<CertificateRow>): Promise<void> {
    await this.unitOfWork.manager.update(CertificateRow, { id }, change);
  }
}
