import { type DynamicModule, Module, type Provider, type Type } from '@nestjs/common';
import { RosterService } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { CallChoices } from './call-choices.js';
import { CallChoicesController } from './call-choices.controller.js';
import { CraftLogController } from './craft-log.controller.js';
import { CraftNotesService } from './craft-notes.service.js';
import { CraftController } from './craft.controller.js';
import { CraftNotes } from './database/craft-notes.js';
import { ReleaseAmounts } from './database/release-amounts.js';
import { ServiceSteps } from './database/service-steps.js';
import { Fleet } from './fleet.js';
import { CRAFT, PLACE, POLICY, STATION } from './kept-kinds.js';
import { CraftService, PlacesService, PoliciesService, StationsService } from './kept-services.js';
import { PlacesController } from './places.controller.js';
import { PoliciesController } from './policies.controller.js';
import { ReleaseAmountsController } from './release-amounts.controller.js';
import { ReleaseAmountsService } from './release-amounts.service.js';
import { ServiceBook } from './service-book.js';
import { type DutyRoster, Standings } from './standings.js';
import { StationsController } from './stations.controller.js';

/** Everything of the fleet, put together from the one door to the database, the clock and the roster. */
class FleetHouse {
  readonly craft: CraftService;
  readonly stations: StationsService;
  readonly places: PlacesService;
  readonly policies: PoliciesService;
  readonly notes: CraftNotesService;
  readonly amounts: ReleaseAmountsService;
  readonly book: ServiceBook;
  readonly fleet: Fleet;
  readonly callChoices: CallChoices;

  constructor(unitOfWork: UnitOfWork, createOnce: CreateOnce, clock: Clock, roster: DutyRoster) {
    const parts = { unitOfWork, createOnce, clock };
    this.craft = new CraftService(CRAFT, parts);
    this.stations = new StationsService(STATION, parts);
    this.places = new PlacesService(PLACE, parts);
    this.policies = new PoliciesService(POLICY, parts);
    const craft = this.craft.things;
    const stations = this.stations.things;
    const steps = new ServiceSteps(unitOfWork);
    const amounts = new ReleaseAmounts(unitOfWork);
    this.notes = new CraftNotesService({ ...parts, craft, notes: new CraftNotes(unitOfWork) });
    this.amounts = new ReleaseAmountsService(amounts, parts);
    const standings = new Standings(roster);
    this.book = new ServiceBook({ ...parts, craft, stations, steps, amounts, standings });
    const policies = this.policies.things;
    this.fleet = new Fleet({ unitOfWork, craft, stations, policies, steps, book: this.book });
    this.callChoices = new CallChoices({ craft, stations, places: this.places.things });
  }
}

const fromHouse = <T>(provide: new (...parts: never[]) => T, pick: (house: FleetHouse) => T): Provider => ({
  provide,
  inject: [FleetHouse],
  useFactory: pick,
});

/** Craft and their service, stations, places and policies. */
@Module({
  controllers: [
    CallChoicesController,
    CraftController,
    CraftLogController,
    StationsController,
    PlacesController,
    PoliciesController,
    ReleaseAmountsController,
  ],
  providers: [
    {
      provide: FleetHouse,
      inject: [UnitOfWork, CreateOnce, Clock, RosterService],
      useFactory: (unitOfWork: UnitOfWork, createOnce: CreateOnce, clock: Clock, roster: RosterService) =>
        new FleetHouse(unitOfWork, createOnce, clock, roster),
    },
    fromHouse(CraftService, ({ craft }) => craft),
    fromHouse(StationsService, ({ stations }) => stations),
    fromHouse(PlacesService, ({ places }) => places),
    fromHouse(PoliciesService, ({ policies }) => policies),
    fromHouse(CraftNotesService, ({ notes }) => notes),
    fromHouse(ReleaseAmountsService, ({ amounts }) => amounts),
    fromHouse(ServiceBook, ({ book }) => book),
    fromHouse(Fleet, ({ fleet }) => fleet),
    fromHouse(CallChoices, ({ callChoices }) => callChoices),
  ],
  exports: [Fleet],
})
export class FleetModule {
  /**
   * @param accounts the module that gives the roster
   */
  static with(accounts: Type): DynamicModule {
    return { module: FleetModule, global: true, imports: [accounts] };
  }
}
