import type { Determination } from '../../../shared/determination/determination.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { law as say } from '../words/law.js';

/** Why there is no determination: each fault with the place in the facts where it is. */
export interface Failure {
  readonly title: string;
  readonly errors: readonly FieldError[];
}

/** Sends the text as it stands; the service says what is wrong with it. */
export async function determineText(facts: string): Promise<Determination | Failure> {
  let response: Response;
  try {
    response = await fetch('/api/determinations', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: facts,
    });
  } catch {
    return failure(say.unreachable, say.checkConnection);
  }
  try {
    return (await response.json()) as Determination | Failure;
  } catch {
    return failure(say.unreadable, say.tryAgain);
  }
}

function failure(title: string, detail: string): Failure {
  return { title, errors: [{ pointer: '', detail: `${detail} ${say.nothingDetermined}` }] };
}
