import type { ApiBodyOptions } from '@nestjs/swagger';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';

type InlineBody = Extract<ApiBodyOptions, { schema: unknown }>;

/** How a refusal is described in the API's document. */
export const PROBLEM = {
  'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } },
};

/** The body of a route by its class, with examples. */
export function bodyOf(shape: Shape, examples: Record<string, unknown> = {}): ApiBodyOptions {
  return {
    schema: schemaOf(shape) as InlineBody['schema'],
    examples: Object.fromEntries(Object.entries(examples).map(([name, value]) => [name, { value }])),
  };
}
