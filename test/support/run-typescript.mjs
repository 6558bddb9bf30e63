import { join } from 'node:path';
import { createServer, createServerModuleRunner } from 'vite';

/** Runs a TypeScript file of the project in a process of its own: node run-typescript.mjs FILE ARGUMENTS. */
const server = await createServer({
  root: join(import.meta.dirname, '..', '..'),
  configFile: false,
  logLevel: 'error',
  server: { middlewareMode: true, ws: false, watch: null },
});
await createServerModuleRunner(server.environments.ssr).import(process.argv[2]);
