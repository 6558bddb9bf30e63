import type { DutyRule } from './rule-pack.js';
import { tellDutyRule, type ToldPoint } from './tell-duty-rule.js';
import { wrapText } from './wrap-text.js';

/**
 * One duty for people, as lines of at most 80 columns: what calls for it, by when, who owes it and to whom.
 * @example describeDutyRule(texas.report)[1] // '   1. A person dies.'
 */
export function describeDutyRule(duty: DutyRule): string[] {
  const { triggers, limits, who, to } = tellDutyRule(duty);
  return [
    '  Due when any one of these happens:',
    ...triggers.flatMap((point, i) => describePoint(`  ${String(i + 1).padStart(2)}. `, point, 6)),
    '  By when:',
    ...limits.flatMap((point) => describePoint('   - ', point, 5)),
    ...describePoint('  Who: ', who, 7),
    ...wrapText('  To whom: ', to),
  ];
}

function describePoint(mark: string, { text, below, sources }: ToldPoint, indent: number): string[] {
  const space = ' '.repeat(indent);
  return [
    ...wrapText(mark, text),
    ...below.flatMap((words) => wrapText(space, words)),
    ...sources.flatMap((words) => wrapText(`${space}- `, words)),
  ];
}
