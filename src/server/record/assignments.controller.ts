import { Body, Controller, Delete, Get, HttpCode, Param, Post } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { AssignCounselDto } from '../../../shared/wire/record-holds.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { answerOf, bodyOf, PROBLEM } from './api-words.js';
import { AssignmentsService } from './assignments.service.js';
import { ASSIGNMENTS } from './holds-answers.js';

@ApiTags('record')
@Controller('api/incidents/:id/counsel')
export class AssignmentsController {
  constructor(private readonly assignments: AssignmentsService) {}

  @Get()
  @MayUse('manager', 'administrator', 'counsel')
  @ApiOperation({ operationId: 'listCounsel', summary: 'Which counsel reads this incident, and which did' })
  @ApiResponse(answerOf(ASSIGNMENTS))
  list(@Param('id') id: string, @CurrentActor() actor: Actor) {
    return this.assignments.list(id, actor);
  }

  @Post()
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @ApiOperation({
    operationId: 'assignCounsel',
    summary: 'Lets an account of counsel read this incident and its notes for counsel',
    description: 'The same again changes nothing.',
  })
  @ApiBody(bodyOf(AssignCounselDto, { counsel: { account: '5f0c7a3e-2b1d-4c59-9d0e-2f4f6a1c7b10' } }))
  @ApiResponse(answerOf(ASSIGNMENTS))
  @ApiResponse({ status: 422, description: 'It is no account of counsel.', content: PROBLEM })
  assign(@Param('id') id: string, @Body() body: unknown, @CurrentActor() actor: Actor) {
    return this.assignments.assign(id, readInput(readRecordInput(AssignCounselDto, body)), actor);
  }

  @Delete(':account')
  @HttpCode(204)
  @MayUse('manager', 'administrator')
  @ApiOperation({ operationId: 'unassignCounsel', summary: 'Ends that; who read it until now stays listed' })
  @ApiResponse({ status: 404, description: 'This account is not assigned.', content: PROBLEM })
  unassign(@Param('id') id: string, @Param('account') account: string, @CurrentActor() actor: Actor) {
    return this.assignments.unassign(id, account, actor);
  }
}
