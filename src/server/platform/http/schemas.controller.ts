import { Controller, Get, Param } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import { MayUse } from './may-use.js';
import { ProblemException, problemOfStatus } from './problem.js';
import type { JsonDocument, Published } from './read-published.js';

/** The published schemas, by name. */
export class Schemas {
  constructor(private readonly schemas: Published['schemas']) {}

  /** @throws ProblemException naming those that there are */
  read(name: string): JsonDocument {
    const schema = this.schemas.get(name.replace(/\.schema\.json$/, ''));
    if (schema !== undefined) return schema;
    const known = [...this.schemas.keys()].map((key) => `${key}.schema.json`).join(', ');
    throw new ProblemException(problemOfStatus(404, `The schemas are ${known}.`));
  }
}

@ApiTags('service')
@Controller('api/schemas')
export class SchemasController {
  constructor(private readonly schemas: Schemas) {}

  @Get(':name')
  @MayUse('anyone')
  @ApiOperation({ operationId: 'readSchema', summary: 'A published JSON Schema' })
  @ApiParam({ name: 'name', example: 'incident-facts.schema.json' })
  @ApiOkResponse({ description: 'JSON Schema 2020-12.' })
  read(@Param('name') name: string): JsonDocument {
    return this.schemas.read(name);
  }
}
