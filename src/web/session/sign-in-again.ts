import { Store } from '../app/store.js';
import { session } from './session-state.js';

type Waiting = (signedIn: boolean) => void;

/** Those who wait for the person to sign in again; the dialog is open while there are any. */
export const waitingForSignIn = new Store<readonly Waiting[]>([]);

/**
 * Asks the person, over the page as it stands, to sign in again. Gives false at once where nobody was signed in: then
 * there is nothing to lose, and the page shows the sign-in.
 */
export function askToSignInAgain(): Promise<boolean> {
  if (session.value.me === null) return Promise.resolve(false);
  return new Promise((resolve) => waitingForSignIn.set([...waitingForSignIn.value, resolve]));
}

/** Tells all who wait how it ended. */
export function answerWaiting(signedIn: boolean): void {
  const waiting = waitingForSignIn.value;
  waitingForSignIn.set([]);
  for (const resolve of waiting) resolve(signedIn);
}
