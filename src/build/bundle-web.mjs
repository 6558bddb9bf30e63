import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'vite';

/**
 * The browser client into dist/web, with the samples it offers. Nothing is inlined as a data: address, so
 * that the page works under `default-src 'self'`.
 */
export async function bundleWeb(root) {
  await build({
    configFile: false,
    root: join(root, 'src', 'web'),
    base: '/',
    logLevel: 'warn',
    publicDir: false,
    build: {
      outDir: join(root, 'dist', 'web'),
      emptyOutDir: true,
      target: 'es2022',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
    },
  });
  await cp(join(root, 'fixtures', 'samples'), join(root, 'dist', 'web', 'samples'), { recursive: true });
}
