import { Controller } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { keptController } from './kept.controller.js';
import { PlacesService } from './kept-services.js';
import { StaffMay } from './who-may.js';

const ROUTES = { path: 'places', one: 'place', schema: 'FleetPlace', readersMay: StaffMay };

@ApiTags('fleet')
@Controller('api/places')
export class PlacesController extends keptController<PlacesService>(ROUTES) {
  constructor(kept: PlacesService) {
    super(kept);
  }
}
