import { Controller, Get, Param, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import { ACCOUNT_ID, INCIDENT_ID } from './follow-up-examples.js';
import { IncidentFollowUp } from './incident-follow-up.service.js';

const READERS = ['staff', 'manager', 'administrator', 'counsel'] as const;
const params = { id: INCIDENT_ID };
const refuses = { 404: 'There is no such incident for you.' };

/** What follows from an incident as it stands; made anew each time, and kept nowhere. */
@ApiTags('follow-up')
@Controller('api/incidents/:id')
export class IncidentFollowUpController {
  constructor(private readonly followUp: IncidentFollowUp) {}

  @Get('call-list')
  @MayUse(...READERS)
  @DescribeRoute({
    operationId: 'readCallList',
    summary: 'Whom to call now, to be tapped, with the urgent tasks that are open',
    params,
    query: { 'station?': ACCOUNT_ID },
    answer: 'CallList',
    refuses: { ...refuses, 422: 'That is no id of a station.' },
  })
  callList(
    @Param('id') id: string,
    @Query('station') station: unknown,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.followUp.callList(id, station, actor);
  }

  @Get('claims-clocks')
  @MayUse(...READERS)
  @DescribeRoute({
    operationId: 'readClaimsClocks',
    summary: 'The claims clocks that run, with their sources and doubts',
    description: 'Not legal advice: counsel says which writing counts and which law runs.',
    params,
    answer: 'ClaimsClockList',
    refuses,
  })
  clocks(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.followUp.clocks(id, actor);
  }

  @Get('closing')
  @MayUse(...READERS)
  @DescribeRoute({
    operationId: 'readClosingWarnings',
    summary: 'What speaks against closing the incident now; it stops nobody',
    params,
    answer: 'ClosingWarnings',
    refuses,
  })
  closing(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.followUp.closing(id, actor);
  }

  @Get('who-may-be-written-to')
  @MayUse(...READERS)
  @DescribeRoute({
    operationId: 'readWhoMayBeWrittenTo',
    summary: 'Whether renter and family may be written to, and by whom',
    params,
    answer: 'WhoMayBeWrittenTo',
    refuses,
  })
  writing(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.followUp.writing(id, actor);
  }

  @Get('house-rule-observations')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'readHouseRuleObservations',
    summary: 'What the record shows beside the house rules of the day; kept nowhere, and in no packet',
    params,
    answer: 'HouseRuleObservations',
    refuses,
  })
  observations(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.followUp.observations(id, actor);
  }
}
