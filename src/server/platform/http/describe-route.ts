import { applyDecorators } from '@nestjs/common';
import { ApiBody, ApiHeader, ApiOperation, ApiParam, ApiQuery, ApiResponse } from '@nestjs/swagger';

interface RouteText {
  /** What a client library calls it. */
  readonly operationId: string;
  readonly summary: string;
  readonly description?: string;
  /** Name of the schema of the body. */
  readonly body?: string;
  /** Name of the schema of the answer; without one the answer is empty. */
  readonly answer?: string;
  /** Default 200, or 204 for an empty answer. */
  readonly status?: number;
  /** Members of the query, by name, with an example each; a name that ends in `?` may be left out. */
  readonly query?: Readonly<Record<string, string>>;
  /** What is refused in which case, beside 401 and 403 of the table of access. */
  readonly refuses?: Readonly<Record<number, string>>;
  /** It creates something, and wants a key that its retries share. */
  readonly once?: boolean;
  /** It changes something in the version that If-Match names. */
  readonly versioned?: boolean;
  readonly params?: Readonly<Record<string, string>>;
}

/** The query of a list that is also told as it was at a moment. */
export const AS_OF = { 'at?': '2026-06-13T18:00:00-05:00' };

const schemaOf = (name: string) => ({ $ref: `#/components/schemas/${name}` });
const PROBLEM = { 'application/problem+json': { schema: schemaOf('Problem') } };

const HABITS = {
  once: { 400: 'No Idempotency-Key was sent.' },
  versioned: {
    412: 'Somebody changed it meanwhile: both versions are in the answer.',
    428: 'No If-Match was sent.',
  },
};

/** Describes a route in the API's document, with the habits that it shares with others. */
export function DescribeRoute(text: RouteText): MethodDecorator {
  const { operationId, summary, description, body, answer, once = false, versioned = false } = text;
  const refuses = {
    ...(once ? HABITS.once : {}),
    ...(versioned ? HABITS.versioned : {}),
    ...(body === undefined ? {} : { 422: 'The body cannot be used: each fault is named by its pointer.' }),
    ...text.refuses,
  };
  return applyDecorators(
    ApiOperation({ operationId, summary, ...(description === undefined ? {} : { description }) }),
    ...Object.entries(text.params ?? {}).map(([name, example]) => ApiParam({ name, example })),
    ...Object.entries(text.query ?? {}).map(([name, example]) =>
      ApiQuery({
        name: name.replace('?', ''),
        required: !name.endsWith('?'),
        schema: { type: 'string' },
        example,
      }),
    ),
    ...(once
      ? [ApiHeader({ name: 'Idempotency-Key', required: true, description: 'New for each create.' })]
      : []),
    ...(versioned ? [ApiHeader({ name: 'If-Match', required: true, description: 'The ETag, as "3".' })] : []),
    ...(body === undefined ? [] : [ApiBody({ schema: schemaOf(body) })]),
    ApiResponse({
      status: text.status ?? (answer === undefined ? 204 : 200),
      description: 'Done.',
      ...(answer === undefined ? {} : { content: { 'application/json': { schema: schemaOf(answer) } } }),
    }),
    ...Object.entries(refuses).map(([status, why]) =>
      ApiResponse({ status: Number(status), description: why, content: PROBLEM }),
    ),
  );
}
