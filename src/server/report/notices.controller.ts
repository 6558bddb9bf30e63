import { Controller, Get, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import { NoticesService } from './notices.service.js';

const params = { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03', report: 'c1.operator' };
const refuses = {
  404: 'There is no such incident for you, or no such report in it.',
  409:
    'No notice is given, for the reason of the code: BEREAVED, NOT_RULED_OUT (that somebody died or is missing), ' +
    'NO_CUSTOMER, NO_CRAFT or NOTHING_DUE.',
};

/** What a customer who drove is told about the duty to report, on paper, by a person. */
@ApiTags('report')
@Controller('api/incidents/:id/reports/:report/notice')
export class NoticesController {
  constructor(private readonly notices: NoticesService) {}

  @Get()
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'readRenterNotice',
    summary: 'The notice in English and Spanish, to whom it is given and what to mind',
    description: 'Given by a person, and then recorded at `recordAt`. The service sends none.',
    params,
    answer: 'RenterNotices',
    refuses,
  })
  read(
    @Param('id') id: string,
    @Param('report') report: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.notices.read(id, report, actor);
  }

  @Get('page')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiProduces('application/pdf')
  @DescribeRoute({
    operationId: 'printRenterNotice',
    summary: 'The notice as one page, tagged PDF',
    params,
    query: { 'language?': 'es' },
    status: 200,
    refuses: { ...refuses, 422: 'There is no such language.' },
  })
  async page(
    @Param('id') id: string,
    @Param('report') report: string,
    @Query('language') language: unknown,
    @CurrentPerson() actor: PersonActor,
  ): Promise<StreamableFile> {
    const { name, content } = await this.notices.page(id, report, language, actor);
    return new StreamableFile(content, {
      type: 'application/pdf',
      disposition: `inline; filename="${name}"`,
    });
  }
}
