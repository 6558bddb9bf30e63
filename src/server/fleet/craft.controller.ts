import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CraftWordsDto } from '../../../shared/wire/fleet-requests.dto.js';
import { readFleetInput } from '../../../shared/wire/fleet-values.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { readInput } from '../platform/http/read-input.js';
import { Fleet } from './fleet.js';
import { keptController } from './kept.controller.js';
import { CraftService } from './kept-services.js';
import { StaffMay } from './who-may.js';

const ROUTES = {
  path: 'craft',
  one: 'craft',
  schema: 'FleetCraft',
  readersMay: StaffMay,
  twin: 'Another craft in the fleet goes by that unit name.',
};

@ApiTags('fleet')
@Controller('api/craft')
export class CraftController extends keptController<CraftService>(ROUTES) {
  constructor(
    kept: CraftService,
    private readonly fleet: Fleet,
  ) {
    super(kept);
  }

  @Get('matches')
  @StaffMay()
  @DescribeRoute({
    operationId: 'matchCraft',
    summary: 'The craft that a caller may mean, the likeliest first',
    query: { words: 'help, PWC 7' },
    answer: 'CraftMatches',
    refuses: { 422: 'The query cannot be used.' },
  })
  async match(@Query() query: unknown): Promise<object> {
    const { words } = readInput(readFleetInput(CraftWordsDto, query), 'query');
    return { items: await this.fleet.findCraft(words) };
  }
}
