import type { Truth } from '../kernel/truth.js';
import { allOf, anyOf } from '../kernel/truth.js';
import type { Deadline, TriggerFinding } from '../law/finding.js';
import type { Question } from './determination.js';
import type { ScopePart } from './scope-part.js';

/** A question with what puts it in its place. */
interface RankedQuestion extends Question {
  /** One answer alone settles the duty. */
  settles: boolean;
  /** Epoch milliseconds of the earliest deadline that it could bring. */
  soonest: number;
  /** Place of its trigger in the pack; the conditions of reach come first. */
  order: number;
}

/**
 * The questions of a duty that is not decided: every unknown of its reach, and of its triggers all that
 * could make one true (once one is true, only what could bring an earlier deadline).
 */
export function rankOpenQuestions(
  scope: readonly ScopePart[],
  triggers: readonly TriggerFinding[],
  deadline: Deadline | null,
  soonest: number,
): Question[] {
  const reach = allOf(scope.map(({ value }) => value));
  const some = anyOf(triggers.map(({ value }) => value));
  const questions: RankedQuestion[] = [];
  scope.forEach((part, index) => {
    const others = allOf(scope.filter((_, at) => at !== index).map(({ value }) => value));
    for (const { fact, text, proves, denies } of part.open) {
      const settles = denies || (proves && others === 'true' && some === 'true');
      questions.push({ fact, text, settles, soonest, order: -1 });
    }
  });
  questions.push(
    ...triggerQuestions(triggers, deadline, (key) => settlesTriggers(key, triggers, reach, some)),
  );
  return inOrder(questions);
}

/** The questions of a required duty: only what could bring its deadline forward. */
export function rankSoonerQuestions(triggers: readonly TriggerFinding[], deadline: Deadline): Question[] {
  return inOrder(triggerQuestions(triggers, deadline, () => true));
}

function triggerQuestions(
  triggers: readonly TriggerFinding[],
  deadline: Deadline | null,
  settles: (key: string) => boolean,
): RankedQuestion[] {
  return triggers.flatMap(({ open }, order) =>
    open
      .filter((point) => deadline === null || point.soonest.at < deadline.at)
      .map(({ fact, text, soonest }) => ({
        fact,
        text,
        settles: settles(keyOf({ fact, text })),
        soonest: soonest.at,
        order,
      })),
  );
}

/** One answer settles when it makes a trigger of an applying duty true, or all that are open false. */
function settlesTriggers(
  key: string,
  triggers: readonly TriggerFinding[],
  reach: Truth,
  some: Truth,
): boolean {
  if (some !== 'unknown') return false;
  const mine = (trigger: TriggerFinding) => trigger.open.filter((point) => keyOf(point) === key);
  if (reach === 'true' && triggers.some((trigger) => mine(trigger).some(({ proves }) => proves))) return true;
  return triggers
    .filter(({ value }) => value === 'unknown')
    .every((trigger) => {
      const points = mine(trigger);
      return (
        points.some(({ denies }) => denies) || (points.length > 0 && points.length === trigger.open.length)
      );
    });
}

/** Each unknown once, in its best place. */
function inOrder(questions: readonly RankedQuestion[]): Question[] {
  const merged = new Map<string, RankedQuestion>();
  for (const question of questions) {
    const known = merged.get(keyOf(question));
    if (known === undefined) {
      merged.set(keyOf(question), { ...question });
    } else {
      known.settles ||= question.settles;
      known.soonest = Math.min(known.soonest, question.soonest);
      known.order = Math.min(known.order, question.order);
    }
  }
  return [...merged.values()].sort(byRank).map(({ fact, text }) => ({ fact, text }));
}

/** Points of law have no pointer; their words tell them apart. */
function keyOf({ fact, text }: Question): string {
  return fact ?? ` ${text}`;
}

function byRank(a: RankedQuestion, b: RankedQuestion): number {
  return (
    Number(b.settles) - Number(a.settles) ||
    a.soonest - b.soonest ||
    a.order - b.order ||
    Number(a.fact === null) - Number(b.fact === null) ||
    comparePointers(a.fact ?? '', b.fact ?? '')
  );
}

/** Array indices by number, so that `/people/2` comes before `/people/10`; plain code-unit order otherwise. */
function comparePointers(a: string, b: string): number {
  const left = a.split('/');
  const right = b.split('/');
  for (let at = 0; at < Math.min(left.length, right.length); at += 1) {
    const [one = '', other = ''] = [left[at], right[at]];
    if (one === other) continue;
    const numbers = /^\d+$/.test(one) && /^\d+$/.test(other);
    return numbers ? Number(one) - Number(other) : one < other ? -1 : 1;
  }
  return left.length - right.length;
}
