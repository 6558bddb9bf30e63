import type { TaskOwner } from './task-template.js';

/** Somebody on duty on the day. */
export interface OnDuty {
  readonly accountId: string;
  readonly role: 'staff' | 'manager' | 'administrator' | 'counsel';
  /** Duties of the roster, such as `shift-lead` or `dock`. */
  readonly duties: readonly string[];
}

/**
 * The order in which people on duty are asked about an urgent task: the one whom the task belongs to first, then the
 * other who decides, then administrators, then everybody else on duty; by id among equals, so that it never depends on
 * chance. Counsel is told, not asked.
 * @example orderRoster([{ accountId: 'm', role: 'manager', duties: ['office'] }, lead], 'shift-lead') // [lead's id, 'm']
 */
export function orderRoster(onDuty: readonly OnDuty[], owner: TaskOwner): string[] {
  const isLead = ({ duties }: OnDuty): boolean => duties.includes('shift-lead');
  const isManager = ({ role }: OnDuty): boolean => role === 'manager';
  const [mine, other] = owner === 'shift-lead' ? [isLead, isManager] : [isManager, isLead];
  const rank = (person: OnDuty): number => {
    if (mine(person)) return 0;
    if (other(person)) return 1;
    return person.role === 'administrator' ? 2 : 3;
  };
  return onDuty
    .filter(({ role }) => role !== 'counsel')
    .sort((a, b) => rank(a) - rank(b) || compare(a.accountId, b.accountId))
    .map(({ accountId }) => accountId);
}

function compare(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
