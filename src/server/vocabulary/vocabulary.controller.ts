import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { chooseVocabulary } from '../../../shared/vocabulary/choose-vocabulary.js';
import { stateLabels } from '../../../shared/vocabulary/state-labels.js';
import { day as dayRule } from '../../../shared/wire/record-values.js';
import { Clock } from '../platform/clock.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';

@ApiTags('vocabulary')
@Controller('api/vocabulary')
export class VocabularyController {
  constructor(private readonly clock: Clock) {}

  @Get()
  @MayUse('anyone')
  @DescribeRoute({
    operationId: 'readVocabulary',
    summary: 'The words offered for an occurrence of a day, each with its source and how surely it is known',
    description: 'Also the labels of states’ forms, each with the federal words that it may mean.',
    query: { 'day?': '2026-06-13' },
    answer: 'Vocabulary',
    refuses: { 422: 'That is no day of the calendar.' },
  })
  read(@Query('day') asked: unknown): object {
    const day = asked === undefined ? this.clock.now().slice(0, 10) : readDay(asked);
    return { day, ...chooseVocabulary(day), stateLabels };
  }
}

function readDay(asked: unknown): string {
  const fault = dayRule.faultOf(asked);
  if (fault === null && typeof asked === 'string') return asked;
  const errors = [{ pointer: '/day', detail: fault ?? `Must be ${dayRule.expected}.` }];
  return readInput<string>({ ok: false, errors }, 'query');
}
