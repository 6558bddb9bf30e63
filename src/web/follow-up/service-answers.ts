import type { CallLine } from '../../../shared/follow-up/build-call-list.js';
import type { ClaimsClock } from '../../../shared/follow-up/claims-clocks.js';
import type { HouseRuleId, Observation } from '../../../shared/follow-up/house-rule.js';
import type { Writing } from '../../../shared/follow-up/may-write-to.js';
import type { TaskOwner } from '../../../shared/follow-up/task-template.js';
import type { ClosingWarning } from '../../../shared/follow-up/warn-on-closing.js';
import type { Role } from '../../../shared/kernel/role.js';

/** What the service says about the work, at the addresses beside each. */
export interface Listed<Item> {
  readonly items: readonly Item[];
}

export interface TaskAnswer {
  readonly id: string;
  readonly incident: string;
  /** From 2 on: work that was done and is due again. */
  readonly round: number;
  readonly title: string;
  readonly why: string;
  readonly source: string;
  readonly owner: TaskOwner;
  readonly assignee: string | null;
  readonly state: 'open' | 'done' | 'superseded';
  /** RFC 3339; null where nobody knows. */
  readonly dueAt: string | null;
  readonly dueWhy: string;
  readonly overdue: boolean;
  readonly evidenceAsked: string;
  readonly escalates: boolean;
  readonly restsOn: readonly string[];
  readonly duty: string | null;
  readonly acknowledgedAt: string | null;
  readonly acknowledgedBy: string | null;
  readonly version: number;
}

/** `GET /api/tasks` and `GET /api/incidents/:id/tasks` */
export interface TaskLine extends TaskAnswer {
  readonly reference: string;
  readonly assigneeName: string | null;
}

/** `GET /api/incidents/:id/tasks/:task` */
export interface TaskWithEvents extends TaskAnswer {
  readonly events: readonly {
    readonly sequence: number;
    readonly kind: string;
    readonly at: string;
    readonly words: string | null;
    readonly dueBefore: string | null;
    readonly dueAfter: string | null;
    readonly person: string;
  }[];
}

/** `GET /api/escalations` */
export interface EscalationAnswer {
  readonly reference: string;
  readonly task: TaskAnswer;
  readonly asked: readonly {
    readonly accountId: string;
    readonly name: string;
    readonly at: string;
    readonly phone: string | null;
  }[];
}

/** `GET /api/incidents/:id/call-list` */
export interface CallListAnswer {
  readonly lines: readonly CallLine[];
}

export type ClaimsClocksAnswer = Listed<ClaimsClock>;
export type ClosingAnswer = Listed<ClosingWarning>;

/** `GET /api/incidents/:id/who-may-be-written-to` */
export interface WritingAnswer {
  readonly renter: Writing;
  readonly family: Writing;
}

/** `GET /api/incidents/:id/house-rule-observations` */
export interface ObservationsAnswer extends Listed<Observation> {
  readonly rules: {
    readonly adoptedOn: string;
    readonly document: string;
    readonly rules: readonly { readonly id: HouseRuleId; readonly value: number | null }[];
  } | null;
}

/** `GET /api/calendar-feeds` */
export interface FeedAnswer {
  readonly id: string;
  readonly createdAt: string;
}

/** `POST /api/calendar-feeds`; the address is told once. */
export interface NewFeedAnswer extends FeedAnswer {
  readonly path: string | null;
}

/** `GET /api/accounts` */
export interface AccountAnswer {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly active: boolean;
}
