import { Controller, Get } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiTags } from '@nestjs/swagger';
import { packCode } from '../../../shared/law/pack-code.js';
import { MayUse } from '../platform/http/may-use.js';

/** That the service answers, and with which law. */
export class Health {
  constructor(
    private readonly version: string,
    private readonly packs: readonly { jurisdiction: string; subject?: string; readOn: string }[],
  ) {}

  report(): object {
    const readOn = this.packs.map((pack) => pack.readOn).sort();
    return {
      status: 'ok',
      version: this.version,
      rulePacks: {
        count: this.packs.length,
        firstReadOn: readOn[0],
        lastReadOn: readOn.at(-1),
        readOn: Object.fromEntries(this.packs.map((pack) => [packCode(pack), pack.readOn])),
      },
    };
  }
}

@ApiTags('service')
@Controller('api/health')
export class HealthController {
  constructor(private readonly health: Health) {}

  @Get()
  @MayUse('anyone')
  @ApiOperation({ operationId: 'health', summary: 'Whether the service answers, and with which law' })
  @ApiOkResponse({
    description: 'The service answers.',
    schema: {
      type: 'object',
      required: ['status', 'version', 'rulePacks'],
      properties: {
        status: { type: 'string', enum: ['ok'] },
        version: { type: 'string' },
        rulePacks: {
          type: 'object',
          required: ['count', 'firstReadOn', 'lastReadOn', 'readOn'],
          properties: {
            count: { type: 'integer' },
            firstReadOn: { type: 'string', format: 'date' },
            lastReadOn: { type: 'string', format: 'date' },
            readOn: { type: 'object', additionalProperties: { type: 'string', format: 'date' } },
          },
        },
      },
    },
  })
  report(): object {
    return this.health.report();
  }
}
