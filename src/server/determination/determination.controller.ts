import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiBody, ApiOkResponse, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { Determination } from '../../../shared/determination/determination.js';
import { MayUse } from '../platform/http/may-use.js';
import { DeterminationService } from './determination.service.js';

const PROBLEM = { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } };

@ApiTags('determination')
@Controller('api/determinations')
export class DeterminationController {
  constructor(private readonly service: DeterminationService) {}

  @Post()
  @MayUse('anyone')
  @HttpCode(200)
  @ApiOperation({
    operationId: 'determine',
    summary: 'Which reports and notices the law calls for',
    description:
      'Facts of one occurrence in, its determination out: duties with reasons, questions, clocks and who must ' +
      'report. Nothing is kept. Not legal advice: confirm with the state agency and counsel.',
  })
  @ApiBody({ schema: { $ref: '#/components/schemas/IncidentFacts' } })
  @ApiOkResponse({
    description: 'The determination; its `source` is `request`.',
    content: { 'application/json': { schema: { $ref: '#/components/schemas/Determination' } } },
  })
  @ApiResponse({ status: 400, description: 'The body is not JSON.', content: PROBLEM })
  @ApiResponse({ status: 413, description: 'The body is larger than 1 MiB.', content: PROBLEM })
  @ApiResponse({ status: 415, description: 'The body is not sent as application/json.', content: PROBLEM })
  @ApiResponse({ status: 422, description: 'Facts that cannot be used, each fault named.', content: PROBLEM })
  determine(@Body() body: unknown): Determination {
    return this.service.determine(body);
  }
}
