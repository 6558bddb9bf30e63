import { join } from 'node:path';
import { build } from 'vite';

/**
 * One command of src/cli as dist/cli/NAME.js with all it imports, packages included: one file to read makes
 * the start quick. What a command imports only when it needs it (`await import`) stays a file beside it.
 */
export async function bundleCommand(root, name) {
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: true,
      target: 'node20',
      outDir: join(root, 'dist', 'cli'),
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        input: { [name]: join(root, 'src', 'cli', `${name}.ts`) },
        output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: `${name}-[name].js` },
      },
    },
  });
}
