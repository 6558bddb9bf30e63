import { HOUSE_RULE_IDS, type HouseRuleId } from '../follow-up/house-rule.js';
import { type TaskOwner, TASK_OWNERS } from '../follow-up/task-template.js';
import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import { account, mail, phone, readFleetInput, words } from './fleet-values.js';
import { Items, Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { day, instant, listOf, number, oneOf } from './record-values.js';

const SIDES = ['outgoing', 'incoming'] as const;

/** A task that somebody adds to those that were planned. */
export class OwnTaskDto {
  @Needed(words('what is to be done', 160))
  title: string;

  @Value(account('why', 600))
  why?: string;

  @Needed(instant)
  dueAt: string;

  @Value(oneOf(TASK_OWNERS))
  owner?: TaskOwner;

  @Value(uuid)
  assigneeId?: string;
}

/** That a task is done, and what shows it. */
export class TaskCompletionDto {
  @Needed(account('what shows that it was done', 4000))
  evidence: string;

  /** Evidence, filings or entries of the record by their ids. */
  @Value(listOf(words('an id', 100), 'ids'))
  evidenceIds?: string[];
}

/** That a task is not done after all. */
export class TaskUndoingDto {
  @Needed(account('why it is not done', 600))
  why: string;
}

/** Who has a task now; without anybody it is free again. */
export class TaskAssigneeDto {
  @Value(uuid)
  accountId?: string;
}

/** Whom a call reached. */
export class TaskReachedDto {
  @Needed(words('who was reached'))
  whom: string;

  @Value(words('the number or channel', 60))
  on?: string;

  /** When, where that is not now. */
  @Value(instant)
  at?: string;

  @Value(words('their reference', 100))
  theirReference?: string;
}

export class ShiftHandOverDto {
  @Value(account('what the next shift should know', 2000))
  remarks?: string;
}

export class ShiftSignatureDto {
  @Needed(oneOf(SIDES))
  side: (typeof SIDES)[number];
}

/** One rule of the house as the owner wrote it. */
export class HouseRuleDto {
  @Needed(oneOf(HOUSE_RULE_IDS))
  id: HouseRuleId;

  @Value(number(0.5, 1000, 'the figure of the rule'))
  value?: number;
}

/** Dated written rules that the owner adopts; an empty list takes those before out of force from the day on. */
export class HouseRulesDto {
  @Needed(day)
  adoptedOn: string;

  @Needed(words('the written document that says so'))
  document: string;

  @Items(() => HouseRuleDto)
  rules?: HouseRuleDto[];
}

/** Where somebody is told of their tasks. What is left out is taken away. */
export class NoticeAddressDto {
  @Value(mail)
  mail?: string;

  @Value(phone)
  phone?: string;
}

/**
 * Reads an input of follow-up by its class; every fault at its pointer.
 * @example readFollowUpInput(TaskUndoingDto, {}) // { ok: false, errors: [{ pointer: '/why', … }] }
 */
export function readFollowUpInput<T extends object>(shape: new () => T, input: unknown): Reading<T> {
  return readFleetInput(shape, input);
}

const NUMBERED: ReadonlySet<HouseRuleId> = new Set([
  'distance-from-craft',
  'distance-from-boats-and-docks',
  'least-depth',
  'anchoring-depth',
  'minors-not-alone',
]);

/**
 * Reads adopted rules: a rule with a figure needs it, and a rule without has none.
 * @example readHouseRules({ adoptedOn: '2026-05-01', document: 'Dock rules', rules: [{ id: 'least-depth' }] })
 * // { ok: false, errors: [{ pointer: '/rules/0/value', detail: 'Give the figure that the written rule names.' }] }
 */
export function readHouseRules(input: unknown): Reading<HouseRulesDto> {
  return readFleetInput(HouseRulesDto, input, ({ rules = [] }) =>
    rules.flatMap(({ id, value }, place): FieldError[] => {
      const pointer = `/rules/${place}/value`;
      if (NUMBERED.has(id)) {
        return value === undefined
          ? [{ pointer, detail: 'Give the figure that the written rule names.' }]
          : [];
      }
      return value === undefined ? [] : [{ pointer, detail: 'This rule has no figure: leave it out.' }];
    }),
  );
}
