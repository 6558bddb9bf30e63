import { describeDetermination } from '../../shared/determination/describe-determination.js';
import type { Determination } from '../../shared/determination/determination.js';
import { wrapText } from '../../shared/law/wrap-text.js';
import type { Problem } from '../../shared/wire/problem.js';

/** One file's answer as a page for people; `now` is epoch milliseconds. */
export function explainAnswer(answer: Determination | Problem, now: number): string {
  return 'errors' in answer ? explainProblem(answer) : describeDetermination(answer, now);
}

function explainProblem({ source, title, errors }: Problem): string {
  return [
    `NOT DETERMINED: ${source}`,
    `${title}. Until it is determined, treat a report as due.`,
    ...errors.flatMap(({ pointer, detail }) =>
      wrapText(pointer === '' ? '  - ' : `  - ${pointer}: `, detail),
    ),
    '',
  ].join('\n');
}
