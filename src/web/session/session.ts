import { useStore } from '../app/store.js';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { queryClient } from '../ask/query-client.js';
import { empty, find, keep, wipe } from '../device/sealed-store.js';
import { pickPerson, takeUpPicked } from './picked-person.js';
import { type EnrolledDevice, type Me, type Session, session } from './session-state.js';

const KEPT_AS = 'session';
const SHUT_OUT = '/problems/device-shut-out';

/** Who is there: `const { me, device } = useSession()`. */
export function useSession(): Session {
  return useStore(session);
}

/** Finds out who is there. Without signal it is whom this device remembers. */
export async function beginSession(): Promise<void> {
  const before = await remembered();
  await takeUpPicked();
  try {
    const [me, device] = await Promise.all([whoIs<Me>('/api/session'), whichDevice()]);
    await settle({ ready: true, me, device, remembered: false });
  } catch (error) {
    if (!(error instanceof AskError)) throw error;
    session.set({ ...before, ready: true, remembered: true });
  }
}

/** @throws AskError when name and password do not go together */
export async function signIn(signInName: string, password: string): Promise<void> {
  const me = await ask<Me>('/api/session', { method: 'POST', body: { signInName, password }, quiet: true });
  if (session.value.me !== null && session.value.me.accountId !== me.accountId) await forgetAnswers();
  // Who signs in writes under their own name, and so does whoever comes after them.
  await pickPerson(null);
  await settle({ ...session.value, ready: true, me, remembered: false });
  await queryClient.invalidateQueries();
}

/** Signs out, and takes what this person was shown off the device. What waits to be sent stays. */
export async function signOut(): Promise<void> {
  await ask('/api/session', { method: 'DELETE', quiet: true });
  await forgetAnswers();
  await settle({ ...session.value, me: null });
}

/** @throws AskError when the code was used, has expired or never was */
export async function enrol(code: string): Promise<EnrolledDevice> {
  const device = await ask<EnrolledDevice>('/api/device', { method: 'POST', body: { code }, quiet: true });
  await settle({ ...session.value, device });
  return device;
}

/** The person chose a password of their own. */
export async function passwordChosen(): Promise<void> {
  const { me } = session.value;
  if (me !== null) await settle({ ...session.value, me: { ...me, passwordDue: false } });
}

/** The person has a PIN now. */
export async function pinChosen(): Promise<void> {
  const { me } = session.value;
  if (me !== null) await settle({ ...session.value, me: { ...me, hasPin: true } });
}

/**
 * Which device this is. Where an administrator shut it out, everything is taken off it; where it only lost its cookie,
 * what it has not sent stays, and goes when somebody signs in or enrols it again.
 */
async function whichDevice(): Promise<EnrolledDevice | null> {
  try {
    return await ask<EnrolledDevice>('/api/device', { quiet: true });
  } catch (error) {
    if (!(error instanceof AskError) || error.trouble === 'unreachable') throw error;
    if (error.problem.type === SHUT_OUT) await wipe();
    if (error.trouble === 'sign-in' || error.trouble === 'not-yours') return null;
    throw error;
  }
}

async function whoIs<Who>(path: string): Promise<Who | null> {
  try {
    return await ask<Who>(path, { quiet: true });
  } catch (error) {
    if (error instanceof AskError && (error.trouble === 'sign-in' || error.trouble === 'not-yours'))
      return null;
    throw error;
  }
}

async function settle(now: Session): Promise<void> {
  session.set(now);
  try {
    await keep('self', KEPT_AS, { me: now.me, device: now.device });
  } catch (error) {
    console.warn('This device cannot remember who is signed in.', error);
  }
}

async function remembered(): Promise<Session> {
  const nobody: Session = { ready: false, me: null, device: null, remembered: false };
  try {
    return { ...nobody, ...(await find<Pick<Session, 'me' | 'device'>>('self', KEPT_AS)) };
  } catch (error) {
    console.warn('This device keeps nothing.', error);
    return nobody;
  }
}

async function forgetAnswers(): Promise<void> {
  queryClient.clear();
  try {
    await empty('answers');
  } catch (error) {
    console.warn('This device keeps nothing.', error);
  }
}
