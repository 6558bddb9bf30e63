import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { OwnDevice } from '../platform/http/may-use.js';
import { CallChoices } from './call-choices.js';

@ApiTags('fleet')
@Controller('api/device/fleet')
export class CallChoicesController {
  constructor(private readonly choices: CallChoices) {}

  @Get()
  @OwnDevice()
  @DescribeRoute({
    operationId: 'readCallChoices',
    summary: 'What a call for help chooses from: craft, places, and stations with the numbers for help',
    answer: 'CallChoices',
  })
  read(): Promise<object> {
    return this.choices.read();
  }
}
