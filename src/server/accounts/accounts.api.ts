import { ProblemException } from '../platform/http/problem.js';

export {
  type Actor,
  CurrentActor,
  CurrentPerson,
  type DeviceActor,
  type PersonActor,
  type ServiceActor,
} from './actor.js';
export { type AccountDesk, openAccountDesk } from './account-desk.js';
export { readCookie, writeCookie } from './cookies.js';
export { Passwords } from './passwords.js';
export { hashOf, newCode, newToken, readCode } from './secrets.js';
export { AccountFinder, type FoundAccount } from './account-finder.js';
export { AccountsService, type NewAccount } from './accounts.service.js';
export { PinConfirmations } from './pin-confirmations.service.js';
export { RosterService } from './roster.service.js';

/** Why something was refused, a line for each fault, for a command to print. */
export function reasonOfRefusal(error: unknown): string {
  if (error instanceof ProblemException) {
    return error.problem.errors.map(({ pointer, detail }) => `${pointer} ${detail}`.trimStart()).join('\n');
  }
  return error instanceof Error ? error.message : String(error);
}
