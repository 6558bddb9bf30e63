import { Controller } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { keptController } from './kept.controller.js';
import { PoliciesService } from './kept-services.js';
import { ManagersMay } from './who-may.js';

const ROUTES = { path: 'policies', one: 'policy', schema: 'Policy', readersMay: ManagersMay };

@ApiTags('fleet')
@Controller('api/policies')
export class PoliciesController extends keptController<PoliciesService>(ROUTES) {
  constructor(kept: PoliciesService) {
    super(kept);
  }
}
