import type { OutingDetails, Standing } from '../../../shared/outing/outing.js';

/** An outing as the service tells it; towards a device that nobody signed in on, without `details`. */
export interface Outing {
  readonly id: string;
  readonly version: number;
  readonly craftId: string;
  readonly unit: string;
  readonly outAt: string | null;
  readonly dueBackAt: string | null;
  readonly backAt: string | null;
  readonly details?: OutingDetails;
}

export type CountAnswer = 'in' | 'out' | 'elsewhere';

/** One craft of the fleet and where it is, as far as somebody wrote it down. */
export interface CraftWhere {
  readonly craftId: string;
  readonly unitName: string;
  readonly colours: readonly string[];
  readonly stationId: string | null;
  readonly inService: boolean;
  readonly standing: Standing;
  readonly dueBackAt: string | null;
  readonly lastIn: string | null;
  readonly outing: Outing | null;
  readonly notBack: string | null;
  readonly counted: { readonly answer: CountAnswer; readonly where: string | null } | null;
}

export interface WhereAnswer {
  readonly asOf: string;
  readonly items: readonly CraftWhere[];
}
