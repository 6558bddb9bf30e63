import { Global, Module } from '@nestjs/common';
import { AccessGate } from './access-gate.js';
import { AccountFinder } from './account-finder.js';
import { AccountsController } from './accounts.controller.js';
import { AccountsService } from './accounts.service.js';
import { AttemptLimits } from './attempt-limits.js';
import { CertificatesController } from './certificates.controller.js';
import { CertificatesService } from './certificates.service.js';
import { AccountsRepository } from './database/accounts.repository.js';
import { AttemptsRepository } from './database/attempts.repository.js';
import { CertificatesRepository } from './database/certificates.repository.js';
import { DevicesRepository } from './database/devices.repository.js';
import { PinConfirmationsRepository } from './database/pin-confirmations.repository.js';
import { RosterRepository } from './database/roster.repository.js';
import { SessionsRepository } from './database/sessions.repository.js';
import { DeviceController } from './device.controller.js';
import { DevicesController } from './devices.controller.js';
import { DevicesService } from './devices.service.js';
import { FirstAdministrator } from './first-administrator.js';
import { Passwords } from './passwords.js';
import { PickList } from './pick-list.js';
import { PinConfirmations } from './pin-confirmations.service.js';
import { RosterController } from './roster.controller.js';
import { RosterService } from './roster.service.js';
import { SessionController } from './session.controller.js';
import { SessionsService } from './sessions.service.js';
import { SignInService } from './sign-in.service.js';

/** Who people are, what they may do, and which devices they share. */
@Global()
@Module({
  controllers: [
    SessionController,
    AccountsController,
    DevicesController,
    DeviceController,
    RosterController,
    CertificatesController,
  ],
  providers: [
    AccountsRepository,
    AttemptsRepository,
    CertificatesRepository,
    DevicesRepository,
    PinConfirmationsRepository,
    RosterRepository,
    SessionsRepository,
    AccessGate,
    AccountFinder,
    AccountsService,
    AttemptLimits,
    CertificatesService,
    DevicesService,
    FirstAdministrator,
    Passwords,
    PickList,
    PinConfirmations,
    RosterService,
    SessionsService,
    SignInService,
  ],
  exports: [AccountFinder, Passwords, RosterService, PinConfirmations],
})
export class AccountsModule {}
