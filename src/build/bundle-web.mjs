import { createHash } from 'node:crypto';
import { cp, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'vite';
import { compressFiles } from './compress-files.mjs';

const COMMON = {
  configFile: false,
  base: '/',
  logLevel: 'warn',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
};

/**
 * The browser client into dist/web, a file for each page, with the samples it offers and the worker that keeps it on
 * the device. Nothing is inlined as a data: address, so that the page works under `default-src 'self'`.
 */
export async function bundleWeb(root) {
  const outDir = join(root, 'dist', 'web');
  await rm(join(outDir, 'assets'), { recursive: true, force: true });
  await build({
    ...COMMON,
    root: join(root, 'src', 'web'),
    build: {
      outDir,
      emptyOutDir: false,
      target: 'es2022',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
    },
  });
  await bundleWorker(root, outDir);
  await compressFiles(join(outDir, 'assets'));
  await cp(join(root, 'fixtures', 'samples'), join(outDir, 'samples'), { recursive: true });
}

/** The worker knows every file of this version by name, so that a page never opens before it is there whole. */
async function bundleWorker(root, outDir) {
  const assets = (await readdir(join(outDir, 'assets'))).sort().map((file) => `/assets/${file}`);
  const page = await readFile(join(outDir, 'index.html'));
  const version = createHash('sha256').update(page).update(assets.join()).digest('hex').slice(0, 16);
  await build({
    ...COMMON,
    root: join(root, 'src', 'web', 'worker'),
    define: {
      DESK_FILES: JSON.stringify(['/', ...assets, '/data/state-lines.bin']),
      DESK_VERSION: JSON.stringify(version),
    },
    build: {
      outDir,
      emptyOutDir: false,
      target: 'es2022',
      rolldownOptions: {
        input: join(root, 'src', 'web', 'worker', 'worker.ts'),
        output: { format: 'iife', entryFileNames: 'worker.js' },
      },
    },
  });
}
