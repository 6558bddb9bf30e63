import { allOf, anyOf, type Truth } from '../kernel/truth.js';
import { citePack } from '../law/cite-pack.js';
import { earlier } from '../law/evaluate-limits.js';
import { evaluateTrigger, isRemark, type TriggerContext } from '../law/evaluate-trigger.js';
import type { Deadline, TriggerFinding } from '../law/finding.js';
import type { Correction, DutyRule, RulePack, Trigger } from '../law/rule-pack.js';
import { isOutside } from './apply-scope.js';
import type { Duty, Outcome, Reason, Reporter } from './determination.js';
import { nameReporters } from './name-reporters.js';
import { rankOpenQuestions, rankSoonerQuestions } from './rank-questions.js';
import type { ScopePart } from './scope-part.js';

/** One duty of a pack, ready to be determined. */
export interface DutyInput {
  readonly id: string;
  readonly kind: string;
  readonly pack: RulePack;
  readonly rule: DutyRule;
  readonly scope: readonly ScopePart[];
  readonly context: TriggerContext;
}

/** What decides a duty, before anything is said of it. */
interface WeighedDuty extends Clocks {
  readonly outcome: Outcome;
  readonly triggers: readonly TriggerFinding[];
}

/**
 * Outcome and clocks of one duty over the facts. It applies when every part of its reach holds and any trigger is true,
 * all three-valued; every trigger is evaluated, whatever the others say, because the trace is the product.
 */
export function weighDuty({ rule, scope, context }: DutyInput): WeighedDuty {
  const triggers = rule.triggers
    .filter(({ test }) => !isRemark(test))
    .map((trigger) => evaluateTrigger(trigger, rule, context));
  const reach = allOf(scope.map(({ value }) => value));
  const outcome = outcomeOf(allOf([reach, anyOf(triggers.map(({ value }) => value))]));
  return { outcome, triggers, ...clocksOf(outcome, triggers) };
}

/** One duty over the facts, with its trace. */
export function determineDuty(input: DutyInput): Duty {
  const { pack, rule, scope, context } = input;
  const { outcome, triggers, due, ifRequired, questions } = weighDuty(input);
  const { facts } = context.occurrence;
  const reporters = nameReporters(
    rule,
    facts,
    facts.vessels.filter((vessel) => !isOutside(pack, vessel)),
  );
  const shown = due ?? ifRequired;
  const format = (deadline: Deadline | null) =>
    deadline === null ? null : context.occurrence.clock.format(deadline.at);
  return {
    id: input.id,
    jurisdiction: input.id.slice(0, input.id.indexOf('/')),
    kind: input.kind,
    outcome,
    reasons: [
      ...scope.map(scopeReason),
      ...triggers.map((finding) => triggerReason(finding, context.limits.citation)),
      ...rule.triggers.filter(({ test }) => isRemark(test)).map(remarkReason),
      ...(pack.corrections ?? []).map(correctionReason),
    ],
    questions: questions(scope),
    immediate: shown?.immediate ?? false,
    dueAt: format(due),
    dueAtIfRequired: format(ifRequired),
    dueBasis: shown?.basis ?? null,
    authority: rule.to,
    reporters,
    citations: citationsOf(input, triggers, shown, outcome, reporters),
    packBasis: pack.basis,
  };
}

function outcomeOf(value: Truth): Outcome {
  if (value === 'true') return 'required';
  return value === 'false' ? 'not-required' : 'undetermined';
}

interface Clocks {
  readonly due: Deadline | null;
  readonly ifRequired: Deadline | null;
  readonly questions: (scope: readonly ScopePart[]) => Duty['questions'];
}

/**
 * The duty's deadline is the earliest of its true triggers; beside it stands the earliest that could still
 * come, for an undetermined duty from everything that is open, for a required one only when it is sooner.
 */
function clocksOf(outcome: Outcome, triggers: readonly TriggerFinding[]): Clocks {
  const certain = triggers.flatMap(({ deadline }) => deadline ?? []);
  const possible = triggers.flatMap(({ open }) => open.map(({ soonest }) => soonest));
  const due = certain.length > 0 ? certain.reduce(earlier) : null;
  switch (outcome) {
    case 'not-required':
      return { due: null, ifRequired: null, questions: () => [] };
    case 'undetermined': {
      const all = [...certain, ...possible];
      const soonest = all.length > 0 ? all.reduce(earlier) : null;
      return {
        due: null,
        ifRequired: soonest,
        questions: (scope) => rankOpenQuestions(scope, triggers, due, soonest?.at ?? Infinity),
      };
    }
    case 'required': {
      if (due === null) throw new Error('a required duty has a true trigger');
      const sooner = possible.filter(({ at }) => at < due.at);
      return {
        due,
        ifRequired: sooner.length > 0 ? sooner.reduce(earlier) : null,
        questions: () => rankSoonerQuestions(triggers, due),
      };
    }
  }
}

function scopeReason({ name, value, text, citation }: ScopePart): Reason {
  return { trigger: `applies/${name}`, value, text, ...(citation !== null && { citation }) };
}

function triggerReason({ test, value, text, citation }: TriggerFinding, law: string): Reason {
  return { trigger: test, value, text, citation: citation ?? law };
}

/** That the text used is not the shipped one; it is no trigger, and holds whatever the facts are. */
function correctionReason({ on, by, citation, note }: Correction): Reason {
  return {
    trigger: 'law/correction',
    value: 'true',
    text: `Corrected here on ${on} by ${by}: ${note}`,
    citation,
  };
}

function remarkReason({ test, note }: Trigger): Reason {
  return {
    trigger: `remark/${test}`,
    value: 'unknown',
    text:
      test === 'ask-counsel'
        ? `Ask counsel: ${note}`
        : `The law also names this; no fact here can answer it: ${note}`,
  };
}

/** Exact places: the triggers that are not ruled out (all of them when none is left), the limit shown, the owner's duty. */
function citationsOf(
  { pack, rule, scope }: DutyInput,
  triggers: readonly TriggerFinding[],
  shown: Deadline | null,
  outcome: Outcome,
  reporters: readonly Reporter[],
): string[] {
  const live = triggers.filter(({ value }) => outcome === 'not-required' || value !== 'false');
  const exact = live.flatMap(({ citation }) => citation ?? []);
  const limit = shown?.citation ?? null;
  const others = reporters.some(({ who }) => who !== 'operator') ? rule.whoCitation : undefined;
  return [
    ...new Set([
      ...exact,
      ...(limit === null ? [] : [limit]),
      ...(others === undefined || outcome === 'not-required' ? [] : [others]),
      ...(outcome === 'not-required' ? scope.flatMap(({ citation }) => citation ?? []) : []),
      ...(exact.length > 0 ? [] : citePack(pack)),
    ]),
  ];
}
