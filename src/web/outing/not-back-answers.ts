import type { Stamp } from '../../../shared/call/stamp.js';
import type { Rung, SearchSheet } from '../../../shared/outing/not-back.js';
import type { LadderRung, NightLimit } from '../../../shared/outing/plan-ladder.js';
import type { Outing } from './service-answers.js';

export interface Climbed {
  readonly id: string;
  readonly rung: Rung;
  readonly stamp: Stamp;
  readonly words?: string | null;
  readonly person?: string;
}

/** What everybody is told of a search, a device among them. */
export interface NotBackReceipt {
  readonly id: string;
  readonly unit: string;
  readonly openedAt: string;
  readonly ended: string | null;
  readonly incidentId: string | null;
  readonly climbed: readonly Climbed[];
}

export interface SearchedCraft {
  readonly unitName: string;
  readonly colours: readonly string[] | null;
  readonly type: string;
  readonly registrationNumber: string | null;
  readonly make: string | null;
  readonly model: string | null;
}

/** The whole of it, for those who work here. */
export interface NotBackView extends NotBackReceipt {
  readonly version: number;
  readonly timeZone: string;
  readonly openedBy: string;
  readonly craft: SearchedCraft;
  readonly outing: Outing | null;
  readonly sheet: SearchSheet;
  readonly nightLimit: NightLimit;
  readonly ladder: readonly (LadderRung & { readonly climbed: readonly Climbed[] })[];
  readonly endedAt: string | null;
  readonly endedBy: string | null;
  readonly endedHow: string | null;
  readonly notIncident: string | null;
  readonly notIncidentBy: string | null;
  readonly proposesIncident: string | null;
}
