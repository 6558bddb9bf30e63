import { randomInt, randomUUID } from 'node:crypto';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AccountsService } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { DemoPlayer } from './demo-player.js';
import type { DemoPerson } from './demo-story.js';
import type { DemoVisitor } from './demo-visitor.js';
import { readStory } from './read-story.js';

/** How somebody of the demonstration signs in. */
export interface DemoSignIn {
  readonly name: string;
  readonly role: DemoPerson['role'];
  readonly signInName: string;
  readonly password: string;
}

/** The IANA zone in which the invented business lives. */
export const demoTimeZone = (): string => readStory().business.timeZone;

/** The demonstration could not be loaded; what is in the database is a part of it. */
export class DemoError extends Error {}

/** Long before the first incident. */
const OPENED = '200 days ago, 08:00';

/**
 * Fills an empty desk with the invented business of fixtures/demo, through the API and at the times that the story
 * tells. The service is one that listens nowhere, with a clock of its own; nothing of the clock is left afterwards.
 * @param app a service on an empty database; it is not closed
 * @param tell is told after each step how far it has come
 * @returns who can sign in, with passwords that were made now and are kept nowhere
 * @throws DemoError
 */
export async function loadDemo(
  app: NestFastifyApplication,
  { timeZone, tell }: { timeZone: string; tell: (done: number, total: number) => void },
): Promise<DemoSignIn[]> {
  const { business, incidents } = readStory();
  const player = new DemoPlayer(app, clockOf(app), { now: new Date().toISOString(), timeZone });
  try {
    const people = await admitPeople(app, player, business.people);
    const steps = [...business.steps, ...player.inOrder(incidents)];
    for (const [place, step] of steps.entries()) {
      await player.play(step);
      tell(place + 1, steps.length);
    }
    return people;
  } catch (error) {
    throw new DemoError(error instanceof Error ? error.message : String(error), { cause: error });
  }
}

/** From here on the clock of this service says what the story says. */
function clockOf(app: NestFastifyApplication): { set(milliseconds: number): void } {
  let now = Date.now();
  Object.assign(app.get(Clock), { now: () => new Date(now).toISOString() });
  return { set: (milliseconds) => (now = milliseconds) };
}

/** The administrator is made as on the command line, and makes the others; each chooses a password. */
async function admitPeople(
  app: NestFastifyApplication,
  player: DemoPlayer,
  people: readonly DemoPerson[],
): Promise<DemoSignIn[]> {
  const at = player.moveTo(OPENED);
  let administrator: DemoVisitor | undefined;
  const signIns: DemoSignIn[] = [];
  for (const { signInName, name, role } of people) {
    const draft = { signInName, name, role };
    const made = await (administrator?.create('/api/accounts', draft) ??
      app.get(AccountsService).create(draft, randomUUID()));
    const [accountId, oneTimePassword, password] = [made.id, String(made.oneTimePassword), newPassword()];
    const newcomer = player.admit(signInName, accountId, oneTimePassword);
    await newcomer.arrive(at);
    await newcomer.put('/api/session/password', { currentPassword: oneTimePassword, newPassword: password });
    const visitor = player.admit(signInName, accountId, password);
    await visitor.arrive(at);
    administrator ??= visitor;
    signIns.push({ name, role, signInName, password });
  }
  return signIns;
}

/** Without letters that are taken for one another. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';

function newPassword(): string {
  const group = (): string => Array.from({ length: 5 }, () => LETTERS[randomInt(LETTERS.length)]).join('');
  return `${group()}-${group()}-${group()}`;
}
