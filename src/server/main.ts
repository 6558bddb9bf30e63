import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { FirstAdministrator } from './accounts/first-administrator.js';
import { createApp } from './create-app.js';
import { DemoError, type DemoSignIn, demoTimeZone, loadDemo } from './demo/demo.api.js';
import { Fleet } from './fleet/fleet.api.js';
import { EscalationWatch } from './follow-up/follow-up.api.js';
import { RulePackError } from './law/law.api.js';
import { type Config, ConfigError, readConfig } from './platform/config.js';
import { nameMail } from './platform/mail-config.js';
import { DatabaseUnavailableError } from './platform/database/open-database.js';

/** Starts the service; what stops the start is said in one message, with exit status 1. */
async function start(): Promise<void> {
  let config = readConfig(process.env);
  let app = await createApp(config);
  const demo = config.demo ? await fillIfEmpty(app, config) : undefined;
  // The clock of the one that was filled stands where the story ends.
  if (demo !== undefined) app = await createApp(config);
  const timeZone = await zoneOfBusiness(app, config);
  if (timeZone !== config.timeZone) {
    await app.close();
    config = { ...config, timeZone };
    app = await createApp(config);
  }
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
  if (demo !== undefined) console.log(tellDemo(demo));
  if (hasNoAccount) console.log(NO_ACCOUNT);
  if (isOpenToListeners(config)) console.error(PLAIN_HTTP);
}

/** Loads the demonstration where there is no account yet, and closes the service that it was loaded through. */
async function fillIfEmpty(app: NestFastifyApplication, config: Config): Promise<DemoSignIn[] | undefined> {
  if (!(await app.get(FirstAdministrator).isMissing())) return undefined;
  await app.close();
  console.log('This desk is empty: loading the demonstration. DEMO=no begins without.');
  const timeZone = hasZoneSet ? config.timeZone : demoTimeZone();
  const filled = await createApp({ ...config, timeZone });
  try {
    return await loadDemo(filled, { timeZone, tell: tellProgress });
  } finally {
    await filled.close();
  }
}

const hasZoneSet = process.env['BUSINESS_TIME_ZONE'] !== undefined;

/** As it is set, else that of the stations: a machine at a host is mostly in none where anybody rents craft. */
async function zoneOfBusiness(app: NestFastifyApplication, { timeZone }: Config): Promise<string> {
  return hasZoneSet ? timeZone : ((await app.get(Fleet).commonTimeZone()) ?? timeZone);
}

/** Written over itself on a terminal; a log has no use for it. */
function tellProgress(done: number, total: number): void {
  if (process.stdout.isTTY) process.stdout.write(`\r${done} of ${total} steps${done === total ? '\n' : ''}`);
}

function tellDemo(people: readonly DemoSignIn[]): string {
  return [
    'Demonstration: an invented rental business on Lake Texoma, invented people. Never record a real incident in it.',
    'Sign in as one of these; the passwords were made now and are shown only here:',
    ...people.map(
      ({ role, signInName, password, name }) =>
        `  ${role.padEnd(14)} ${signInName.padEnd(8)} ${password}   ${name}`,
    ),
  ].join('\n');
}

const HALF_A_DEMO =
  'The demonstration could not be loaded to its end. Delete the database and start again, or begin without it by DEMO=no.';

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
  if (error instanceof DemoError) return `${HALF_A_DEMO}\n${error.message}`;
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
