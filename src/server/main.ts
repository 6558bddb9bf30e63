import { createApp } from './create-app.js';
import { RulePackError } from './law/law.api.js';
import { ConfigError, readConfig } from './platform/config.js';

/** Starts the service; what stops the start is said in one message, with exit status 1. */
async function start(): Promise<void> {
  const config = readConfig(process.env);
  const app = await createApp(config);
  await app.listen(config.port, config.host);
  console.log(`Listening on ${await app.getUrl()}`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    // What is being answered is answered; nothing new is taken.
    process.once(signal, () => void app.close());
  }
}

function reasonOf(error: unknown): string {
  if (error instanceof ConfigError || error instanceof RulePackError) return error.message;
  if (!(error instanceof Error)) return String(error);
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE')
    return `${error.message}\nAnother program listens there: set PORT to a free one.`;
  if (code === 'EACCES')
    return `${error.message}\nThat port is not allowed here: set PORT to one above 1023.`;
  return error.stack ?? error.message;
}

start().catch((error: unknown) => {
  console.error(reasonOf(error));
  process.exitCode = 1;
});
