import { Injectable } from '@nestjs/common';

/** What somebody is about to delete for good. */
export interface DeletionTarget {
  /** Null for what belongs to no incident, such as rental data of outings without one. */
  readonly incidentId: string | null;
  /** A kind of `forms/retention`, such as `medical`. */
  readonly kind: string;
  /** Days of the calendar that it is of, both included; null where it is of one incident. */
  readonly days: { readonly from: string; readonly through: string } | null;
}

/** Why nothing of it may go now. */
export interface DeletionStop {
  readonly by: 'hold' | 'request' | 'claim' | 'task' | 'report';
  /** Id of the hold, the request or the task. */
  readonly id: string;
  /** A sentence for whoever wanted to delete. */
  readonly words: string;
}

export type StopFinder = (target: DeletionTarget) => Promise<readonly DeletionStop[]>;

/**
 * What stops a deletion. Each module that has a reason says so here; they are all asked again in the unit of work that
 * deletes, so that a hold which began a moment before still counts.
 */
@Injectable()
export class DeletionStops {
  private readonly finders: StopFinder[] = [];

  onAsked(finder: StopFinder): void {
    this.finders.push(finder);
  }

  async of(target: DeletionTarget): Promise<DeletionStop[]> {
    const found: DeletionStop[] = [];
    for (const finder of this.finders) found.push(...(await finder(target)));
    return found;
  }
}
