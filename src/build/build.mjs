import { spawn } from 'node:child_process';
import { cp, mkdir, readdir, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundleCommand } from './bundle-command.mjs';
import { bundleWeb } from './bundle-web.mjs';
import { compressFiles } from './compress-files.mjs';

/**
 * The build: TypeScript to dist/, then the data that the compiled code prepares (rule packs, state lines),
 * and beside them the bundles: one start-up file a command, and the browser client. `npm ci` runs it.
 */
const ROOT = join(import.meta.dirname, '..', '..');
const DIST = join(ROOT, 'dist');
const COMMANDS = ['determine', 'law'];

/** Runs one step and says on standard error how long it took; whatever fails names its step. */
async function step(name, work) {
  const begun = performance.now();
  try {
    await work();
  } catch (error) {
    throw new Error(`The build failed at: ${name}`, { cause: error });
  }
  console.error(`  ${name} (${((performance.now() - begun) / 1000).toFixed(1)} s)`);
}

/** Types are checked by `npm run check`; without that the same files come out in half the time. */
function compile() {
  const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
  return new Promise((resolve, reject) => {
    spawn(process.execPath, [tsc, '-p', join(ROOT, 'tsconfig.build.json'), '--noCheck'], {
      stdio: 'inherit',
      cwd: ROOT,
    })
      .once('error', reject)
      .once('exit', (code) =>
        code === 0 ? resolve() : reject(new Error('TypeScript found the faults above.')),
      );
  });
}

/** A module that the first step has just compiled. */
function built(path) {
  return import(pathToFileURL(join(DIST, 'src', path)).href);
}

async function compileForms() {
  const { compileRulePacks } = await built('server/law/law.api.js');
  await compileRulePacks();
}

async function prepareStateLines() {
  const { prepareStateLines: prepare } = await built('build/prepare-state-lines.js');
  prepare(ROOT);
  // The browser determines without signal too, and finds the states by the same lines.
  await mkdir(join(DIST, 'web', 'data'), { recursive: true });
  await cp(join(DIST, 'data', 'state-lines.bin'), join(DIST, 'web', 'data', 'state-lines.bin'));
  await compressFiles(join(DIST, 'web', 'data'));
}

/** A file a pack, so that a browser loads the cases of the law that it shows and no others. */
async function prepareCases() {
  const { prepareLawCases } = await built('build/prepare-law-cases.js');
  prepareLawCases(ROOT);
}

/** The published schemas, one folder, so that the service hands out exactly what lies in forms/. */
async function copySchemas() {
  await mkdir(join(DIST, 'forms', 'schemas'), { recursive: true });
  for (const form of await readdir(join(ROOT, 'forms'), { recursive: true })) {
    if (!form.endsWith('.schema.json')) continue;
    await cp(
      join(ROOT, 'forms', form),
      join(DIST, 'forms', 'schemas', form.slice(form.lastIndexOf('/') + 1)),
    );
  }
}

async function build() {
  await rm(DIST, { recursive: true, force: true });
  await Promise.all([
    step('server and domain: dist/src, dist/shared', compile),
    step('commands: dist/cli', async () => {
      for (const command of COMMANDS) await bundleCommand(ROOT, command);
    }),
    step('browser client: dist/web', () => bundleWeb(ROOT)),
  ]);
  await step('rule packs: dist/forms', compileForms);
  await step('state lines: dist/data', prepareStateLines);
  await step('cases of the law: dist/web/data/cases', prepareCases);
  await step('schemas: dist/forms/schemas', copySchemas);
}

console.error('Building into dist/');
const begun = performance.now();
try {
  await build();
  console.error(`Built in ${((performance.now() - begun) / 1000).toFixed(1)} s`);
} catch (error) {
  console.error(error.message);
  for (let cause = error.cause; cause !== undefined; cause = cause.cause)
    console.error(cause.message ?? cause);
  process.exitCode = 1;
}
