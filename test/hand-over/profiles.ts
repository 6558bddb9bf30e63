import { readHandOverForms } from '../../src/server/hand-over/hand-over.api.js';
import type { Profile, Recipient } from '../../shared/hand-over/hand-over-profile.js';

export const FORMS = readHandOverForms();

export function profileOf(recipient: Recipient): Profile {
  const found = FORMS.profiles.find((one) => one.recipient === recipient);
  if (found === undefined) throw new Error(`There is no profile for ${recipient}.`);
  return found;
}
