import type { Truth } from '../kernel/truth.js';

/**
 * Facts that decide whether a task is called for, each true, false or unknown:
 * whether everybody was found; whether somebody died, is missing or needed treatment beyond first aid; whether somebody
 * died or is missing; whether one of our craft was concerned; whether it was rented; whether somebody has claimed in
 * writing; whether an authority asked us not to interview; whether an employee of ours at work was hurt, died or is
 * missing.
 */
export const TASK_FACTS = [
  'everyone-accounted-for',
  'serious',
  'bereaved',
  'own-craft',
  'rented',
  'written-claim',
  'no-interview-asked',
  'employee-hurt',
] as const;
export type TaskFact = (typeof TASK_FACTS)[number];

/** Who sees to it: the shift lead of the day or a manager. */
export const TASK_OWNERS = ['shift-lead', 'manager'] as const;
export type TaskOwner = (typeof TASK_OWNERS)[number];

/**
 * What a task is planned for: once for the incident, or for each of our craft, each notice and each report that is
 * required, each duty to do or keep something, each duty that cannot be told yet, each promise made to somebody, each claims
 * clock, what each state concerned says of rental records; each request that concerns the incident, and those of them that
 * nobody has read, that counsel has to see first, and to which a known time to object runs.
 */
export type TaskReach =
  | 'incident'
  | 'own-craft'
  | 'notice'
  | 'report'
  | 'conduct'
  | 'open-duty'
  | 'promise'
  | 'claims-clock'
  | 'rental-record'
  | 'request'
  | 'unread-request'
  | 'request-for-counsel'
  | 'request-to-object';

export type DueRule =
  /** The moment the business learned of it. */
  | { readonly rule: 'at-once' }
  | { readonly rule: 'hours-after-learning'; readonly hours: number }
  /** 23:59 of the local day on which the business learned of it. */
  | { readonly rule: 'same-day' }
  /** The clock of the duty, and so many hours after it. */
  | { readonly rule: 'duty'; readonly plusHours: number }
  /** When it was promised for; where nobody said when, so many hours after it was promised. */
  | { readonly rule: 'as-promised'; readonly elseHours: number }
  | { readonly rule: 'days-before-clock'; readonly days: number }
  /** When the paper or the law about it says; null where neither does. */
  | { readonly rule: 'as-asked' }
  | { readonly rule: 'hours-after-receipt'; readonly hours: number };

export interface TaskTemplate {
  readonly id: string;
  /** May hold `{craft}`, `{duty}`, `{to}`, `{party}`, `{clock}`, `{state}` and `{request}`; never a name or a medical detail. */
  readonly title: string;
  /** May hold `{law}`, the law that a rental record rests on. */
  readonly why: string;
  /** A law, a publication, or "common practice, no source". */
  readonly source: string;
  readonly for: TaskReach;
  /** All must hold; a fact that is unknown holds only where `unknown` is named. */
  readonly when: readonly { readonly fact: TaskFact; readonly is: readonly Truth[] }[];
  readonly owner: TaskOwner;
  readonly due: DueRule;
  /** What whoever completes it writes down or attaches. */
  readonly evidence: string;
  /** What, when it grows after the work was done, calls for the work again. */
  readonly restsOn: 'nothing' | 'people' | 'harm' | 'duty' | 'request';
  /** Goes to the next person of the roster until somebody acknowledges it. */
  readonly escalates: boolean;
}

export interface TaskForms {
  /** In the order in which the work is done. */
  readonly tasks: readonly TaskTemplate[];
}
