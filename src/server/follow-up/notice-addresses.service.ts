import { Injectable } from '@nestjs/common';
import { NoticeAddressDto, readFollowUpInput } from '../../../shared/wire/follow-up-requests.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { readInput } from '../platform/http/read-input.js';
import { HouseRepository } from './database/house.repository.js';

/** Where somebody is told of their tasks; null while they have not said. */
export interface NoticeAddress {
  readonly mail: string | null;
  readonly phone: string | null;
}

const NOWHERE: NoticeAddress = { mail: null, phone: null };

/** Where people are told. Everybody says so for themselves, and the last word counts. */
@Injectable()
export class NoticeAddresses {
  constructor(
    private readonly house: HouseRepository,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  async of(accountId: string): Promise<NoticeAddress> {
    const row = await this.house.address(accountId);
    return row === null ? NOWHERE : { mail: row.mail, phone: row.phone };
  }

  async keep(body: unknown, { accountId }: PersonActor): Promise<NoticeAddress> {
    const { mail = null, phone = null } = readInput(readFollowUpInput(NoticeAddressDto, body));
    const updatedAt = this.clock.now();
    await this.unitOfWork.run(() => this.house.keepAddress({ id: accountId, mail, phone, updatedAt }));
    return { mail, phone };
  }
}
