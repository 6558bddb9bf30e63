import { Injectable } from '@nestjs/common';
import type { PinConfirmationDto } from '../../../shared/wire/accounts-device.dto.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { AttemptLimits } from './attempt-limits.js';
import type { DeviceActor } from './actor.js';
import { AccountsRepository } from './database/accounts.repository.js';
import type { PinConfirmationRow } from './database/pin-confirmation.row.js';
import { PinConfirmationsRepository } from './database/pin-confirmations.repository.js';
import { Passwords } from './passwords.js';
import { refuse } from '../platform/http/refuse.js';

const TRIES_A_PERSON = 5;
const TRIES_A_DEVICE = 10;

/** Nobody stands by more than a day of entries at once: whoever forgot signs in instead. */
const FARTHEST_BACK_MS = 24 * 60 * 60_000;

/** That a person stands by the entries made in their name on a device. */
export type PinConfirmationView = Omit<PinConfirmationRow, 'id' | 'deviceId'>;

@Injectable()
export class PinConfirmations {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly accounts: AccountsRepository,
    private readonly confirmations: PinConfirmationsRepository,
    private readonly passwords: Passwords,
    private readonly limits: AttemptLimits,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 422, the same for a wrong PIN and for somebody who has none; 429 for too many tries */
  async confirm(
    { accountId, pin, since }: PinConfirmationDto,
    device: DeviceActor,
  ): Promise<PinConfirmationView> {
    const confirmedAt = this.clock.now();
    const from = new Date(since).toISOString();
    if (from > confirmedAt) refuse(422, 'Must not be after now.', '/since');
    if (Date.parse(confirmedAt) - Date.parse(from) > FARTHEST_BACK_MS) {
      refuse(422, 'Must not be more than a day ago: sign in and look at those entries instead.', '/since');
    }
    const person = { name: `pin of ${accountId}`, most: TRIES_A_PERSON };
    const onDevice = { name: `pins on ${device.deviceId}`, most: TRIES_A_DEVICE };
    const right = await this.limits.limit([person, onDevice], async () => {
      const account = await this.accounts.findSecrets({ id: accountId });
      const fits = await this.passwords.fits(pin, account?.pinHash);
      return fits && account?.active === true ? account : null;
    });
    if (right === null) refuse(422, 'Is not the PIN of that person.', '/pin');
    await this.unitOfWork.run(() =>
      this.confirmations.add({ deviceId: device.deviceId, accountId, since: from, confirmedAt }),
    );
    return { accountId, since: from, confirmedAt };
  }

  /** Whether the person confirmed what was entered in their name on the device at that instant (UTC). */
  isConfirmed(deviceId: string, accountId: string, instant: string): Promise<boolean> {
    return this.confirmations.covers(deviceId, accountId, instant);
  }
}
