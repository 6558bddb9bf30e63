import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packStateLines } from '../../shared/place/pack-state-lines.js';
import { stateLinesFromTopology } from '../../shared/place/state-lines-from-topology.js';
import { readRulePacks } from '../../src/server/law/law.api.js';
import { launchBrowser } from '../support/browser.js';
import { collectFacts } from './collect-facts.js';
import { answerAll } from './determine-entry.js';

/** The entry as one module for a browser, built as the browser client is. */
async function bundle(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: 'es2022',
      lib: { entry: join(import.meta.dirname, 'determine-entry.ts'), formats: ['es'] },
    },
  });
  const [output] = [built].flat();
  if (output === undefined || !('output' in output)) throw new Error('The entry was not built.');
  const chunks = output.output.filter((file) => file.type === 'chunk');
  if (chunks.length !== 1) throw new Error(`The entry came out in ${chunks.length} files.`);
  return chunks[0]?.code ?? '';
}

describe('the same facts in Node and in a browser', () => {
  const cases = collectFacts();
  let browser: Browser;
  let server: Server;
  let files: Map<string, { type: string; body: string | Uint8Array }>;
  let packs: Awaited<ReturnType<typeof readRulePacks>>;
  let stateLines: Uint8Array;

  beforeAll(async () => {
    packs = await readRulePacks();
    const atlas = await readFile(
      join(import.meta.dirname, '../../node_modules/us-atlas/states-10m.json'),
      'utf8',
    );
    stateLines = packStateLines(stateLinesFromTopology(JSON.parse(atlas) as never));
    files = new Map([
      ['/', { type: 'text/html', body: '<!doctype html><title>Determine</title>' }],
      ['/entry.js', { type: 'text/javascript', body: await bundle() }],
      ['/cases.json', { type: 'application/json', body: JSON.stringify(cases) }],
      ['/packs.json', { type: 'application/json', body: JSON.stringify(packs) }],
      ['/state-lines.bin', { type: 'application/octet-stream', body: stateLines }],
    ]);
    server = createServer((request, response) => {
      const file = files.get(request.url ?? '');
      response.writeHead(file === undefined ? 404 : 200, {
        'content-type': file?.type ?? 'text/plain',
        'content-security-policy': "default-src 'self'",
      });
      response.end(file?.body);
    }).listen(0, '127.0.0.1');
    await once(server, 'listening');
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser.close();
    server.close();
  });

  it('give the same answer, to the letter, on every case', { timeout: 120_000 }, async () => {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const inBrowser = await page.evaluate<string[]>(`(async () => {
      const [{ answerAll }, cases, packs, lines] = await Promise.all([
        import('/entry.js'),
        fetch('/cases.json').then((got) => got.json()),
        fetch('/packs.json').then((got) => got.json()),
        fetch('/state-lines.bin').then((got) => got.arrayBuffer()),
      ]);
      return answerAll(cases, packs, new Uint8Array(lines));
    })()`);
    const inNode = answerAll(cases, packs, stateLines);
    expect(inNode.length).toBeGreaterThan(150);
    expect(cases.filter((_, place) => inBrowser[place] !== inNode[place]).map(({ name }) => name)).toEqual(
      [],
    );
    expect(inBrowser).toEqual(inNode);
  });
});
