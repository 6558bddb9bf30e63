import { Injectable } from '@nestjs/common';
import type { RequestKind } from '../../../../shared/record/legal-request.js';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { LegalRequestIncidentRow, LegalRequestRow, LegalRequestVersionRow } from './legal-request.row.js';

export interface RequestFilter {
  readonly isOpen: boolean;
  readonly kind?: RequestKind;
  /** Only those that concern one of these incidents. */
  readonly incidents?: readonly string[];
}

const CONCERNS = 'SELECT 1 FROM "legal_request_incident" l WHERE l."request_id" = request.id';
const CONCERNS_ONE = `EXISTS (${CONCERNS} AND l."incident_id" IN (:...incidents))`;

@Injectable()
export class LegalRequestsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Null for an id that cannot be one. */
  async find(id: string): Promise<LegalRequestRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(LegalRequestRow, { id });
  }

  /** One more than the page holds: open ones by when they are due, closed ones the latest first. */
  page(
    { isOpen, kind, incidents }: RequestFilter,
    { limit, after }: PageRequest,
  ): Promise<LegalRequestRow[]> {
    const direction = isOpen ? 'ASC' : 'DESC';
    const query = this.unitOfWork.manager
      .createQueryBuilder(LegalRequestRow, 'request')
      .where('request.isOpen = :isOpen', { isOpen })
      .orderBy('request.listOrder', direction)
      .addOrderBy('request.id', direction)
      .limit(limit + 1);
    if (kind !== undefined) query.andWhere('request.kind = :kind', { kind });
    if (incidents !== undefined) query.andWhere(CONCERNS_ONE, { incidents: ['', ...incidents] });
    if (after !== null) {
      const beyond = isOpen ? '>' : '<';
      query.andWhere(
        `(request.listOrder ${beyond} :sort OR (request.listOrder = :sort AND request.id ${beyond} :id))`,
        { ...after },
      );
    }
    return query.getMany();
  }

  /** Those that are thought to concern an incident, the first that was logged first. */
  ofIncident(incidentId: string): Promise<LegalRequestRow[]> {
    return this.unitOfWork.manager
      .createQueryBuilder(LegalRequestRow, 'request')
      .where(CONCERNS_ONE, { incidents: [incidentId] })
      .orderBy('request.number')
      .getMany();
  }

  open(): Promise<LegalRequestRow[]> {
    return this.unitOfWork.manager.find(LegalRequestRow, {
      where: { isOpen: true },
      order: { number: 'ASC' },
    });
  }

  async versions(requestId: string): Promise<LegalRequestVersionRow[]> {
    return this.unitOfWork.manager.find(LegalRequestVersionRow, {
      where: { requestId },
      order: { version: 'DESC' },
    });
  }

  /** How many were numbered in a year: `R-2026-`. Only within `ServiceSections.run`, which no two are in at a time. */
  countNumbered(prefix: string): Promise<number> {
    return this.unitOfWork.manager
      .createQueryBuilder(LegalRequestRow, 'request')
      .where('request.number LIKE :like', { like: `${prefix}%` })
      .getCount();
  }

  /** Writes what stands now with the version that it is, and the incidents that it is found by. */
  async write(
    row: LegalRequestRow,
    version: LegalRequestVersionRow,
    incidents: readonly string[],
  ): Promise<void> {
    const { manager } = this.unitOfWork;
    const { id, ...columns } = row;
    if (row.version === 1) await manager.insert(LegalRequestRow, row);
    else await manager.update(LegalRequestRow, { id }, columns);
    await manager.insert(LegalRequestVersionRow, version);
    await manager.delete(LegalRequestIncidentRow, { requestId: id });
    if (incidents.length > 0) {
      await manager.insert(
        LegalRequestIncidentRow,
        incidents.map((incidentId) => ({ requestId: id, incidentId })),
      );
    }
  }
}
