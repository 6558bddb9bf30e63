import { type ApiBodyOptions, ApiHeader, type ApiResponseOptions } from '@nestjs/swagger';
import type { JsonSchema } from '../../../shared/wire/record-members.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';

type InlineBody = Extract<ApiBodyOptions, { schema: unknown }>;

/** How a refusal is described in the API's document. */
export const PROBLEM = {
  'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } },
};

/** On a route that creates: the same key never makes a second one. */
export const WithKey = (): MethodDecorator =>
  ApiHeader({
    name: 'Idempotency-Key',
    required: true,
    description: 'New for each create, kept for its retries.',
  });

/** On a route that changes something in the version that was seen. */
export const WithVersion = (): MethodDecorator =>
  ApiHeader({ name: 'If-Match', required: true, description: 'The ETag of that version, such as "3".' });

/** The body of a route by its class, with examples. */
export function bodyOf(shape: Shape, examples: Record<string, unknown> = {}): ApiBodyOptions {
  return {
    schema: schemaOf(shape) as InlineBody['schema'],
    examples: Object.fromEntries(Object.entries(examples).map(([name, value]) => [name, { value }])),
  };
}

/** The answer of a route by its schema. */
export function answerOf(schema: JsonSchema, status = 200): ApiResponseOptions {
  return {
    status,
    description: 'Done.',
    content: { 'application/json': { schema } },
  };
}
