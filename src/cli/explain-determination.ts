import type { Determination } from '../../shared/determination/determination.js';
import type { Problem } from '../../shared/wire/problem.js';

/** A page for people. */
export function explainDetermination(answer: Determination | Problem, now: number): string {
  return `${JSON.stringify(answer, null, 1)}${now}\n`;
}
