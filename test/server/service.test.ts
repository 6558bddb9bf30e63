import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { ConsoleLogger, Controller, Get, Logger, Module } from '@nestjs/common';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { NestFactory } from '@nestjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { ProblemFilter } from '../../src/server/platform/http/problem.filter.js';
import { projectRoot } from '../../src/server/platform/project-root.js';
import { RouteTable } from '../../src/server/platform/http/route-table.js';
import { openApp } from '../support/app.js';

let app: NestFastifyApplication;
let close: () => Promise<void>;
beforeAll(async () => {
  ({ app, close } = await openApp());
});
afterAll(() => close());

describe('the service', () => {
  it('says that it answers, and with which law', async () => {
    const packs = await loadRulePacks();
    const health = await app.inject('/api/health');
    expect(health.json()).toMatchObject({
      status: 'ok',
      version: expect.stringMatching(/^\d+\.\d+\.\d+$/) as string,
      rulePacks: {
        count: packs.length,
        readOn: Object.fromEntries(packs.map(({ jurisdiction, readOn }) => [jurisdiction, readOn])),
      },
    });
  });

  it.each([
    ['GET', '/api/nothing', 404, 'not-found'],
    ['GET', '/%zz', 404, 'not-found'],
    ['GET', '/api/law/ZZ', 404, 'not-found'],
    ['GET', '/api/schemas/nothing', 404, 'not-found'],
  ] as const)('answers %s %s with a problem', async (method, url, status, kind) => {
    const answer = await app.inject({ method, url });
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.json()).toMatchObject({ type: `/problems/${kind}`, status, errors: [{ pointer: '' }] });
    expect(answer.statusCode).toBe(status);
  });

  it.each([
    ['GET', '/api/determinations', 'POST'],
    ['DELETE', '/api/law/TX', 'GET, HEAD'],
    ['PUT', '/api/health', 'GET, HEAD'],
    ['POST', '/', 'GET, HEAD'],
  ] as const)('answers %s %s with the methods that it takes', async (method, url, allow) => {
    const answer = await app.inject({ method, url });
    expect([answer.statusCode, answer.headers['allow']]).toEqual([405, allow]);
    expect(answer.json()).toMatchObject({ type: '/problems/method-not-allowed', status: 405 });
  });

  it.each(['/', '/api/health', '/api/nothing'])('guards %s with headers', async (url) => {
    const { headers } = await app.inject(url);
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'referrer-policy': 'no-referrer',
    });
    expect(headers['content-security-policy']).toMatch(/^default-src 'self';/);
    expect(headers['content-security-policy']).not.toContain('unsafe');
  });
});

describe('the files of the browser client', () => {
  it('go out compressed to whoever takes that, and as they are to others', async () => {
    const folder = join(projectRoot(), 'dist', 'web', 'assets');
    const script = readdirSync(folder).find((file) => file.endsWith('.js')) ?? '';
    const url = `/assets/${script}`;
    const plain = await app.inject(url);
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.rawPayload).toEqual(readFileSync(join(folder, script)));
    for (const [accepted, open] of [
      ['gzip, deflate, br', brotliDecompressSync],
      ['gzip', gunzipSync],
    ] as const) {
      const { headers, rawPayload } = await app.inject({ url, headers: { 'accept-encoding': accepted } });
      expect(headers).toMatchObject({
        'content-encoding': accepted === 'gzip' ? 'gzip' : 'br',
        'content-type': plain.headers['content-type'],
        vary: 'accept-encoding',
      });
      expect(open(rawPayload)).toEqual(plain.rawPayload);
    }
  });
});

describe('GET /api/law', () => {
  it('lists every pack, the federal one first, and links to it', async () => {
    const packs = await loadRulePacks();
    const list = await app.inject('/api/law');
    const entries = list.json<{ jurisdiction: string; href: string }[]>();
    expect(entries.map(({ jurisdiction }) => jurisdiction)).toEqual(packs.map((pack) => pack.jurisdiction));
    expect(entries[0]).toMatchObject({ jurisdiction: 'US', href: '/api/law/US' });
  });

  it.each(['TX', 'tx'])('hands out the pack of %s as it is applied', async (code) => {
    const packs = await loadRulePacks();
    const answer = await app.inject(`/api/law/${code}`);
    expect(answer.json()).toEqual(packs.find(({ jurisdiction }) => jurisdiction === 'TX'));
  });

  it.each(['/api/law', '/api/law/TX'])('sends %s once to a client that keeps it', async (url) => {
    const etag = String((await app.inject(url)).headers['etag']);
    for (const known of [etag, `W/${etag}`, `"other", ${etag}`, '*']) {
      const again = await app.inject({ url, headers: { 'if-none-match': known } });
      expect([again.statusCode, again.body, again.headers['etag']]).toEqual([304, '', etag]);
    }
    expect((await app.inject({ url, headers: { 'if-none-match': '"other"' } })).statusCode).toBe(200);
  });
});

describe('the description of the API', () => {
  interface OpenApi {
    openapi: string;
    paths: Record<string, { post?: { requestBody: { content: Record<string, { examples: object }> } } }>;
    components: { schemas: Record<string, { required?: string[] }> };
  }

  it('documents its addresses, with the published schemas and the samples as examples', async () => {
    const document = (await app.inject('/api/openapi.json')).json<OpenApi>();
    expect(document.openapi).toBe('3.1.0');
    expect(Object.keys(document.paths)).toEqual(
      expect.arrayContaining([
        '/api/determinations',
        '/api/health',
        '/api/law',
        '/api/law/{code}',
        '/api/schemas/{name}',
      ]),
    );
    const body = document.paths['/api/determinations']?.post?.requestBody.content['application/json'];
    expect(Object.keys(body?.examples ?? {})).toHaveLength(3);
    expect(document.components.schemas['IncidentFacts']?.required).toContain('occurredAt');
  });

  it('refers to nothing that it does not hold', async () => {
    const text = (await app.inject('/api/openapi.json')).body;
    const { components } = JSON.parse(text) as OpenApi;
    const references = [...text.matchAll(/"\$ref":"([^"]+)"/g)].map((match) => match[1]);
    expect(references.length).toBeGreaterThan(0);
    const held = new Set(Object.keys(components.schemas).map((name) => `#/components/schemas/${name}`));
    expect(references.filter((reference) => !held.has(reference ?? ''))).toEqual([]);
  });

  it('is there as a page for people', async () => {
    const page = await app.inject('/api/docs');
    expect([page.statusCode, page.headers['content-type']]).toEqual([200, 'text/html']);
  });

  it('hands out the published schemas', async () => {
    const file = join(
      import.meta.dirname,
      '..',
      '..',
      'forms',
      'determination',
      'incident-facts.schema.json',
    );
    const schema = await app.inject('/api/schemas/incident-facts.schema.json');
    expect(schema.json()).toEqual(JSON.parse(readFileSync(file, 'utf8')));
  });
});

describe('a fault of ours', () => {
  @Controller('broken')
  class BrokenController {
    @Get()
    read(): never {
      throw new Error('the renter broke an arm');
    }
  }

  @Module({ controllers: [BrokenController] })
  class BrokenModule {}

  // A logger is one for all services of a process, and other files listen to theirs.
  afterAll(() => Logger.overrideLogger(new ConsoleLogger()));

  it('is answered without the inside, under the number that stands in the log', async () => {
    const logged: string[] = [];
    const adapter = new FastifyAdapter({ genReqId: () => '3f6c2f1e-0000-4000-8000-000000000000' });
    const routes = new RouteTable(adapter.getInstance());
    const logger = {
      log: () => undefined,
      warn: () => undefined,
      error: (...said: string[]) => logged.push(said.join(' ')),
    };
    const broken = await NestFactory.create<NestFastifyApplication>(BrokenModule, adapter, { logger });
    broken.useGlobalFilters(new ProblemFilter(routes));
    await broken.init();
    const answer = await broken.inject('/broken');
    await broken.close();
    expect(answer.json()).toMatchObject({
      type: '/problems/internal-error',
      status: 500,
      instance: 'urn:uuid:3f6c2f1e-0000-4000-8000-000000000000',
    });
    expect(answer.body).not.toContain('arm');
    expect(logged.join('\n')).toContain('3f6c2f1e-0000-4000-8000-000000000000 GET /broken');
  });
});
