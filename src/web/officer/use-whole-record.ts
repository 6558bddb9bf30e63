import type { RecordSections } from '../../../shared/record/incident-record.js';
import type { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { useOutbox } from '../device/outbox.js';
import { nowByService } from '../look/use-now.js';
import { withWaiting } from './with-waiting.js';
import { type FleetCraft, type RecordAnswer, sectionsOf, zoneOf } from './read-record.js';
import { useMemo } from 'preact/hooks';

/** The record of an incident and the fleet, as this phone has them: kept, since an officer asks where there is no signal. */
export interface WholeRecord {
  readonly record: RecordAnswer;
  /** With what waits on this device. */
  readonly sections: Partial<RecordSections>;
  readonly fleet: readonly FleetCraft[];
  readonly timeZone: string | undefined;
  /** As of when it is shown (RFC 3339). */
  readonly asOf: string;
}

export interface AskedRecord {
  readonly whole: WholeRecord | undefined;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  readonly again: () => void;
}

export function useWholeRecord(id: string): AskedRecord {
  const {
    data: record,
    error,
    keptAt,
    again,
  } = useAsk<RecordAnswer>(`/api/incidents/${id}/record`, { keep: true });
  const waiting = useOutbox(id);
  const { data: fleet } = useAskAll<FleetCraft>('/api/craft', { keep: true });
  const whole = useMemo(
    () =>
      record === undefined
        ? undefined
        : {
            record,
            sections: withWaiting(sectionsOf(record), waiting),
            fleet: fleet ?? [],
            timeZone: zoneOf(record),
            asOf: keptAt ?? new Date(nowByService()).toISOString(),
          },
    [record, fleet, keptAt, waiting.map(({ id, state }) => id + state).join()],
  );
  return { whole, error, keptAt, again };
}
