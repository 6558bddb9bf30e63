import type { Determination } from '../../../shared/determination/determination.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';

/** What came back: a determination, what is wrong with the facts, or nothing that can be used. */
export type Answer =
  | { kind: 'determination'; determination: Determination }
  | { kind: 'problem'; title: string; errors: readonly FieldError[] };

const NOTHING_DETERMINED = 'Nothing was determined. Until it is, treat a report as due.';

/** Sends the text as it stands; the service says what is wrong with it. */
export async function askDetermination(document: string): Promise<Answer> {
  let response: Response;
  try {
    response = await fetch('/api/determinations', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: document,
    });
  } catch {
    return failure(
      'The service could not be reached',
      `Check the connection and try again. ${NOTHING_DETERMINED}`,
    );
  }
  let body: unknown;
  try {
    body = await response.json();
  } catch {
    return failure('The answer could not be read', `Try again. ${NOTHING_DETERMINED}`);
  }
  if (response.ok) return { kind: 'determination', determination: body as Determination };
  const { title, errors } = body as { title: string; errors: FieldError[] };
  return { kind: 'problem', title, errors };
}

function failure(title: string, detail: string): Answer {
  return { kind: 'problem', title, errors: [{ pointer: '', detail }] };
}
