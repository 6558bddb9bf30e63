import type { Role } from '../../../shared/kernel/role.js';
import { Store } from '../app/store.js';

/** A person as the service describes them to themselves. */
export interface Me {
  readonly accountId: string;
  readonly name: string;
  readonly signInName: string;
  readonly role: Role;
  /** The password was given to them: a new one comes first. */
  readonly passwordDue: boolean;
  readonly hasPin: boolean;
}

export interface EnrolledDevice {
  readonly id: string;
  readonly name: string;
}

export interface Session {
  /** False until it is known who is there. */
  readonly ready: boolean;
  readonly me: Me | null;
  readonly device: EnrolledDevice | null;
  /** The service could not be reached: who is there is what this device remembers. */
  readonly remembered: boolean;
}

export const session = new Store<Session>({ ready: false, me: null, device: null, remembered: false });
