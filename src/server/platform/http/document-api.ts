import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';

export const DOCUMENTATION_PATH = '/api/docs';
const DOCUMENT_PATH = '/api/openapi.json';

/** Whether an address is one of the description's own: the document, the page and the files that draw it. */
export function isApiDescription(path: string): boolean {
  return path === DOCUMENT_PATH || path === DOCUMENTATION_PATH || path.startsWith(`${DOCUMENTATION_PATH}/`);
}

type Schema = Record<string, unknown>;

export interface ApiParts {
  version: string;
  /** Published schemas by the name they have in the document. */
  schemas: Record<string, Schema>;
  /** Bodies to send and what comes back, by address. */
  examples: {
    path: string;
    request: Record<string, { summary: string; value: unknown }>;
    response: unknown;
  }[];
}

/**
 * Publishes the API as OpenAPI at /api/openapi.json and as a page for people at /api/docs. The description is made when
 * somebody first asks for it, as hardly anybody does, and not at each start.
 */
export function documentApi(app: NestFastifyApplication, parts: () => ApiParts): void {
  SwaggerModule.setup(DOCUMENTATION_PATH, app, () => describeApi(app, parts()), {
    jsonDocumentUrl: DOCUMENT_PATH,
    raw: ['json'],
    customSiteTitle: 'The API of the watercraft incident desk',
    customCss: '.swagger-ui .topbar { display: none }',
  });
}

function describeApi(app: NestFastifyApplication, parts: ApiParts): OpenAPIObject {
  const config = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Watercraft incident desk')
    .setDescription(
      'Anyone hurt, missing or in danger: emergency services first. Determinations are not legal advice: ' +
        'confirm with the state agency and counsel.',
    )
    .setVersion(parts.version)
    .addTag('determination')
    .addTag('decision')
    .addTag('law')
    .addTag('vocabulary')
    .addTag('place')
    .addTag('accounts')
    .addTag('fleet')
    .addTag('record')
    .addTag('outing')
    .addTag('evidence')
    .addTag('follow-up')
    .addTag('report')
    .addTag('hand-over')
    .addTag('requests')
    .addTag('mail')
    .addTag('register')
    .addTag('service')
    .build();
  const document = SwaggerModule.createDocument(app, config);
  document.components = {
    ...document.components,
    schemas: Object.assign(
      {},
      ...Object.entries(parts.schemas).map(([name, schema]) => componentsOf(name, schema)),
      { Problem: PROBLEM },
    ) as NonNullable<NonNullable<OpenAPIObject['components']>['schemas']>,
  };
  for (const { path, request, response } of parts.examples) addExamples(document, path, request, response);
  return document;
}

/** A schema with its `$defs` lifted to components, where readers of OpenAPI look for them. */
function componentsOf(name: string, schema: Schema): Record<string, Schema> {
  const text = JSON.stringify(schema).replaceAll('"#/$defs/', `"#/components/schemas/${name}-`);
  const { $defs, $schema, $id, ...rest } = JSON.parse(text) as Schema & { $defs?: Record<string, Schema> };
  void [$schema, $id];
  const lifted = Object.entries($defs ?? {}).map(([part, definition]) => [`${name}-${part}`, definition]);
  return { [name]: rest, ...(Object.fromEntries(lifted) as Record<string, Schema>) };
}

function addExamples(document: OpenAPIObject, path: string, request: object, response: unknown): void {
  const operation = document.paths[path]?.post;
  const body = operation?.requestBody as { content: Record<string, object> } | undefined;
  const answer = operation?.responses['200'] as { content: Record<string, object> } | undefined;
  Object.assign(body?.content['application/json'] ?? {}, { examples: request });
  Object.assign(answer?.content['application/json'] ?? {}, { example: response });
}

const PROBLEM: Schema = {
  title: 'Problem',
  description: 'RFC 9457: what is wrong, and where (RFC 6901 pointers).',
  type: 'object',
  required: ['type', 'title', 'status', 'errors'],
  properties: {
    type: { type: 'string', format: 'uri-reference' },
    title: { type: 'string' },
    status: { type: 'integer' },
    source: { type: 'string', description: '`request` where a document was read.' },
    instance: { type: 'string', description: 'For a fault of the service: its number in the log.' },
    errors: {
      type: 'array',
      items: {
        type: 'object',
        required: ['pointer', 'detail'],
        properties: { pointer: { type: 'string' }, detail: { type: 'string' } },
      },
    },
  },
};
