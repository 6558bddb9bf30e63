import { parseArgs } from 'node:util';
import { type NewAccount, openAccountDesk, reasonOfRefusal } from '../server/accounts/accounts.api.js';

/** `npm run -s account -- create …` makes an account; `… reset …` gives a person a new one-time password. */
const USAGE = [
  'npm run -s account -- create --sign-in NAME --name "FULL NAME" --role ROLE   makes an account',
  'npm run -s account -- reset --sign-in NAME                                   gives a new one-time password',
  'ROLE is staff, manager, administrator or counsel. DATABASE_URL names the database, as for the service.',
  '',
].join('\n');

interface Asked {
  action: string | undefined;
  signInName: string | undefined;
  name: string | undefined;
  role: string | undefined;
}

function read(words: string[]): Asked {
  const { values, positionals } = parseArgs({
    args: words,
    allowPositionals: true,
    options: { 'sign-in': { type: 'string' }, name: { type: 'string' }, role: { type: 'string' } },
  });
  const [action, more] = positionals;
  const known = more === undefined && (action === 'create' || action === 'reset');
  return {
    action: known ? action : undefined,
    signInName: values['sign-in'],
    name: values.name,
    role: values.role,
  };
}

async function answer({ action, signInName, name, role }: Asked): Promise<NewAccount> {
  const desk = await openAccountDesk(process.env);
  try {
    return action === 'create'
      ? await desk.create({ signInName, name, role })
      : await desk.resetPassword(signInName ?? '');
  } finally {
    await desk.close();
  }
}

function told(account: NewAccount): string {
  return [
    `${account.name} signs in as: ${account.signInName}`,
    `One-time password:  ${account.oneTimePassword ?? ''}`,
    `It is shown only now, does until ${account.passwordExpiresAt ?? ''}, and is changed at the first sign-in.`,
    '',
  ].join('\n');
}

try {
  const asked = read(process.argv.slice(2));
  if (asked.action === undefined) {
    process.stderr.write(USAGE);
    process.exitCode = 2;
  } else {
    process.stdout.write(told(await answer(asked)));
  }
} catch (error) {
  process.stderr.write(`${reasonOfRefusal(error)}\n\n${USAGE}`);
  process.exitCode = 2;
}
