import { Module } from '@nestjs/common';
import { ClosingCountsController } from './closing-counts.controller.js';
import { ClosingCounts } from './closing-counts.service.js';
import { ClosingCountsRepository } from './database/closing-counts.repository.js';
import { NotBackRepository } from './database/not-back.repository.js';
import { OutingsRepository } from './database/outings.repository.js';
import { NotBackIncidents } from './not-back-incident.service.js';
import { NotBackReader } from './not-back-reader.js';
import { NotBackController } from './not-back.controller.js';
import { NotBacks } from './not-back.service.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingImports } from './outing-imports.service.js';
import { OutingSteps } from './outing-steps.js';
import { OutingsController } from './outings.controller.js';
import { Outings } from './outings.service.js';
import { RentalData } from './rental-data.js';
import { WhereCraftAre } from './whereabouts.service.js';

/** Craft that go out and come back, those that do not, and the count at closing. */
@Module({
  controllers: [OutingsController, NotBackController, ClosingCountsController],
  providers: [
    OutingsRepository,
    NotBackRepository,
    ClosingCountsRepository,
    OutingFleet,
    OutingSteps,
    Outings,
    OutingImports,
    WhereCraftAre,
    NotBackReader,
    NotBacks,
    NotBackIncidents,
    ClosingCounts,
    RentalData,
  ],
  exports: [NotBackReader, RentalData],
})
export class OutingModule {}
