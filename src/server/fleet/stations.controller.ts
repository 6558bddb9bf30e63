import { Controller } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { keptController } from './kept.controller.js';
import { StationsService } from './kept-services.js';
import { StaffMay } from './who-may.js';

const ROUTES = { path: 'stations', one: 'station', schema: 'Station', readersMay: StaffMay };

@ApiTags('fleet')
@Controller('api/stations')
export class StationsController extends keptController<StationsService>(ROUTES) {
  constructor(kept: StationsService) {
    super(kept);
  }
}
