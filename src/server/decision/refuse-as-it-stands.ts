import type { FieldError } from '../../../shared/kernel/field-error.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';

/** A reason with its code and its place in what was sent. */
export interface Reason extends FieldError {
  readonly code: string;
}

/** @throws ProblemException 409 naming every reason, where there is any */
export function refuseAsItStands(reasons: readonly Reason[]): void {
  if (reasons.length === 0) return;
  throw new ProblemException({
    ...problemOfStatus(409),
    type: '/problems/not-as-the-duty-stands',
    title: 'That may not be done as the duty stands',
    source: 'request',
    errors: reasons,
  });
}
