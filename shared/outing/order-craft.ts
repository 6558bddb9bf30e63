import { type Standing, STANDINGS } from './outing.js';

export interface StandingCraft {
  readonly unitName: string;
  readonly standing: Standing;
  /** RFC 3339. */
  readonly dueBackAt: string | null;
  readonly lastIn: string | null;
}

/**
 * The list of what is out, late and in: late ones first and the longest overdue at the top, then those whose due time
 * nobody knows, those out by due time, those that nobody has accounted for, and those in, the latest first.
 * @example orderCraft([inCraft, lateCraft]) // [lateCraft, inCraft]
 */
export function orderCraft<T extends StandingCraft>(craft: readonly T[]): T[] {
  return [...craft].sort(
    (one, other) =>
      STANDINGS.indexOf(one.standing) - STANDINGS.indexOf(other.standing) ||
      timeOf(one) - timeOf(other) ||
      one.unitName.localeCompare(other.unitName, 'en', { numeric: true }),
  );
}

function timeOf({ standing, dueBackAt, lastIn }: StandingCraft): number {
  if (standing === 'in' && lastIn !== null) return -Date.parse(lastIn);
  return dueBackAt === null ? 0 : Date.parse(dueBackAt);
}
