import { FirstAdministrator } from './accounts/first-administrator.js';
import { createApp } from './create-app.js';
import { EscalationWatch } from './follow-up/follow-up.api.js';
import { RulePackError } from './law/law.api.js';
import { type Config, ConfigError, readConfig } from './platform/config.js';
import { nameMail } from './platform/mail-config.js';
import { DatabaseUnavailableError } from './platform/database/open-database.js';

/** Starts the service; what stops the start is said in one message, with exit status 1. */
async function start(): Promise<void> {
  const config = readConfig(process.env);
  const app = await createApp(config);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    // What is being answered is answered; nothing new is taken.
    process.once(signal, () => void app.close());
  }
  const hasNoAccount = await app.get(FirstAdministrator).isMissing();
  await app.listen(config.port, config.host);
  app.get(EscalationWatch).start();
  console.log(`Listening on ${await app.getUrl()}`);
  console.log(`Time zone of the business: ${config.timeZone} (BUSINESS_TIME_ZONE)`);
  console.log(`Mail goes ${nameMail(config.mail)}`);
  if (hasNoAccount) console.log(NO_ACCOUNT);
  if (isOpenToListeners(config)) console.error(PLAIN_HTTP);
}

const NO_ACCOUNT = [
  'There is no account yet. Make the first administrator, who makes the others:',
  '  npm run -s account -- create --role administrator --sign-in ana --name "Ana Ruiz"',
  'or start once with FIRST_ADMIN_NAME and FIRST_ADMIN_PASSWORD set.',
].join('\n');

const PLAIN_HTTP = [
  'Others can listen in: this is plain HTTP, and phones give it neither position nor camera.',
  'Set TLS_CERT_FILE and TLS_KEY_FILE, or TRUSTED_PROXY where a proxy of yours speaks HTTPS (README.md).',
].join('\n');

function isOpenToListeners({ host, tls, trustedProxy }: Config): boolean {
  const isOwnMachine = host === 'localhost' || host === '::1' || host.startsWith('127.');
  return tls === undefined && trustedProxy === undefined && !isOwnMachine;
}

function reasonOf(error: unknown): string {
  if (
    error instanceof ConfigError ||
    error instanceof RulePackError ||
    error instanceof DatabaseUnavailableError
  )
    return error.message;
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
