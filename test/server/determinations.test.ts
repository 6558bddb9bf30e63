import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { determine } from '../../shared/determination/determine.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { problemOf } from '../../shared/wire/problem.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';
import { openApp } from '../support/app.js';

const FIXTURES = join(import.meta.dirname, '..', '..', 'fixtures');
const JSON_TYPE = { 'content-type': 'application/json' };

const textOf = (...path: string[]): string => readFileSync(join(FIXTURES, ...path), 'utf8');
const samples = readdirSync(join(FIXTURES, 'samples')).filter((file) => file !== 'samples.json');
const bad = readdirSync(join(FIXTURES, 'facts', 'bad'));

let app: NestFastifyApplication;
let close: () => Promise<void>;
beforeAll(async () => {
  ({ app, close } = await openApp());
});
afterAll(() => close());

const post = (payload: string, headers: Record<string, string> = JSON_TYPE) =>
  app.inject({ method: 'POST', url: '/api/determinations', headers, payload });

describe('POST /api/determinations', () => {
  it.each(samples)('answers %s as the core does, with source "request"', async (file) => {
    const text = textOf('samples', file);
    const context = { packs: await loadRulePacks(), geography: loadGeography(), source: 'request' };
    const answer = await post(text);
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['content-type']).toBe('application/json; charset=utf-8');
    expect(answer.headers['cache-control']).toBe('no-store');
    expect(answer.json()).toEqual(determine(JSON.parse(text) as IncidentFacts, context));
  });

  it.each(bad)('refuses %s with the problem that the reader of facts names', async (file) => {
    const text = textOf('facts', 'bad', file);
    const reading = readIncidentFacts(JSON.parse(text));
    const answer = await post(text);
    expect(answer.statusCode).toBe(422);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.json()).toEqual(problemOf(422, reading.ok ? [] : reading.errors, 'request'));
  });

  it.each([
    ['nothing', ''],
    ['half a document', '{"schemaVersion": 1'],
    ['a byte order mark', '\uFEFF{}'],
  ])('answers 400 to %s', async (_name, payload) => {
    const answer = await post(payload);
    const detail = expect.stringMatching(/^Not JSON: ./) as string;
    expect(answer.json()).toEqual(problemOf(400, [{ pointer: '', detail }], 'request'));
  });

  it.each([
    ['a body larger than a mebibyte', `"${'x'.repeat(1024 * 1024)}"`, JSON_TYPE, 413, 'too-large'],
    ['plain text', '{}', { 'content-type': 'text/plain' }, 415, 'unsupported-media-type'],
    ['a form', 'a=b', { 'content-type': 'application/x-www-form-urlencoded' }, 415, 'unsupported-media-type'],
  ])('refuses %s', async (_name, payload, headers, status, kind) => {
    const answer = await post(payload, headers);
    expect(answer.statusCode).toBe(status);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.json()).toMatchObject({ type: `/problems/${kind}`, status });
  });
});
