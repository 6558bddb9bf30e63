import { Injectable } from '@nestjs/common';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { Actor } from '../accounts/accounts.api.js';

/** Something that was written into the record of an incident. */
export interface RecordChange {
  readonly incidentId: string;
  /** Sections that were written, those of the service itself among them. */
  readonly sections: readonly string[];
  readonly actor: Actor;
  /** Fields of the section that were taken out for good, by their paths. */
  readonly withdrawn: readonly string[];
  /** Its time was over: nobody learned anything, so nothing is determined, planned or reopened by it. */
  readonly deletion: boolean;
  /** The record as it then is. */
  readonly record: () => Promise<IncidentRecord>;
}

export type RecordListener = (change: RecordChange) => Promise<void>;

/**
 * Whom to tell when the record of an incident changes. Listeners run in the order in which they came, within the unit
 * of work of the change: what they write is kept or lost together with it, and what they refuse is not written.
 */
@Injectable()
export class RecordChanges {
  private readonly listeners: RecordListener[] = [];

  onChange(listener: RecordListener): void {
    this.listeners.push(listener);
  }

  async tell(change: RecordChange): Promise<void> {
    for (const listener of this.listeners) await listener(change);
  }
}
