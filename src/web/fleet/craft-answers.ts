import type { Hold, ServiceState } from '../../../shared/record/follow-service.js';
import type { Refusal, ReleaseRule } from '../../../shared/record/may-release.js';
import type { ServiceStep } from '../../../shared/record/service-step.js';
import type { Gravity } from '../../../shared/record/weigh-consequence.js';

/** What a number says, and what is odd about it. */
export interface NumberReading {
  readonly explanation: readonly string[];
  readonly remarks: readonly string[];
}

/** A craft as the service shows it; what was not entered is absent. */
export interface Craft {
  readonly id: string;
  readonly version: number;
  readonly unitName: string;
  readonly type: string;
  readonly colours?: readonly string[];
  readonly hullNumber?: string;
  readonly registrationNumber?: string;
  readonly hullNumberReading?: NumberReading;
  readonly registrationNumberReading?: NumberReading;
  readonly retiredOn?: string;
  /** In lists alone. */
  readonly inService?: boolean;
}

export interface ShownHold extends Hold {
  readonly gravity: Gravity | null;
  readonly needs: ReleaseRule;
  /** Why whoever asks may not release it now; empty where they may. */
  readonly against: readonly Refusal[];
}

export interface CraftService extends Omit<ServiceState, 'holds'> {
  readonly craft: string;
  readonly holds: readonly ShownHold[];
  readonly custodyGaps: readonly string[];
}

interface By {
  readonly person: string;
  readonly device: string | null;
  readonly recordedAt: string;
}

export interface LoggedStep extends By {
  readonly id: string;
  readonly at: string;
  readonly step: ServiceStep;
}

export interface CraftNote extends By {
  readonly id: string;
  readonly about: 'maintenance' | 'prior-trip' | 'inspection';
  readonly text: string;
  readonly day: string | null;
  readonly hourMeter: number | null;
}

/** Who entered something, and on which device. */
export const whoOf = ({ person, device }: By): string => (device === null ? person : `${person}, ${device}`);
