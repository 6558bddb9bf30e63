import type { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import type { AmendmentsAnswer, IncidentAnswer, LacksAnswer, RecordAnswer } from './record-answers.js';

export interface AskedRecord {
  readonly incident: IncidentAnswer | undefined;
  readonly record: RecordAnswer | undefined;
  /** Undefined where they could not be had: the page is no worse without. */
  readonly lacks: LacksAnswer | undefined;
  readonly amendments: AmendmentsAnswer | undefined;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  readonly again: () => void;
}

const EVERY_MINUTE = 60_000;

/** Everything that is said of an incident, kept on the device; anew each minute, as others write too. */
export function useRecord(id: string): AskedRecord {
  const path = `/api/incidents/${id}`;
  const incident = useAsk<IncidentAnswer>(path, { keep: true });
  const record = useAsk<RecordAnswer>(`${path}/record`, { keep: true, everyMs: EVERY_MINUTE });
  const lacks = useAsk<LacksAnswer>(`${path}/report-lacks`, { keep: true });
  const amendments = useAsk<AmendmentsAnswer>(`${path}/amendments?limit=100`, { keep: true });
  return {
    incident: incident.data,
    record: record.data,
    lacks: lacks.data,
    amendments: amendments.data,
    error: incident.error ?? record.error,
    keptAt: record.keptAt,
    again: () => {
      incident.again();
      record.again();
      lacks.again();
      amendments.again();
    },
  };
}
