import { useRef } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import type { AskError } from '../ask/ask-error.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import type { Duty } from '../../../shared/determination/determination.js';
import type { DeterminationAnswer, DutiesAnswer, DutyView, IncidentAnswer } from './service-answers.js';

/** Everything that is looked at when somebody decides about the duties of an incident. */
export interface Matter {
  readonly id: string;
  readonly reference: string;
  readonly duties: readonly DutyView[];
  readonly determined: DeterminationAnswer;
  /** Where the facts say more than the record does, by their pointers. */
  readonly assumptions: readonly FieldError[];
  /** Every rule pack; empty until they have arrived. */
  readonly packs: readonly RulePack[];
}

export interface AskedMatter {
  readonly matter: Matter | undefined;
  /** The incident is there and nothing was determined yet. */
  readonly undetermined: boolean;
  readonly reference: string | undefined;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  readonly again: () => void;
}

const EVERY_MINUTE = 60_000;
const NO_PACKS: readonly RulePack[] = [];

/** Asks anew each minute, as a colleague may add a fact while somebody decides. */
export function useMatter(id: string): AskedMatter {
  const path = `/api/incidents/${id}`;
  const incident = useAsk<IncidentAnswer>(path, { keep: true });
  const duties = useAsk<DutiesAnswer>(`${path}/duties`, { keep: true, everyMs: EVERY_MINUTE });
  const undetermined = duties.data?.determination === null;
  const determined = useAsk<DeterminationAnswer>(
    // By its number, so that duties and reasons are never of two different moments.
    duties.data === undefined || undetermined
      ? null
      : `${path}/determinations/${String(duties.data.determination)}`,
    { keep: true },
  );
  const current = useAsk<DeterminationAnswer>(determined.data === undefined ? null : `${path}/determination`);
  const packs = useAsk<readonly RulePack[]>('/api/law/packs');
  const error = incident.error ?? duties.error ?? determined.error;
  const whole = incident.data !== undefined && duties.data !== undefined && determined.data !== undefined;
  const shown = useRef<Matter | undefined>(undefined);
  // While a newer determination is on its way the one before stays, with what is being written on it.
  if (shown.current?.id !== id) shown.current = undefined;
  if (whole) {
    shown.current = {
      id,
      reference: incident.data.reference,
      duties: duties.data.items,
      determined: determined.data,
      assumptions: current.data?.assumptions ?? [],
      packs: packs.data ?? NO_PACKS,
    };
  }
  return {
    matter: shown.current,
    undetermined,
    reference: incident.data?.reference,
    error,
    keptAt: duties.keptAt,
    again: () => {
      incident.again();
      duties.again();
      if (duties.data !== undefined && !undetermined) determined.again();
    },
  };
}

/** The duty of the determination behind a view; a report that is no longer called for has none. */
export function dutyBehind({ determined }: Matter, { duty }: DutyView): Duty | undefined {
  return determined.determination.duties.find(({ id }) => id === duty);
}

/** The law that a duty comes from, that on another matter too. */
export function lawOf(matter: Matter, { pack, jurisdiction }: Duty): RulePack | undefined {
  if (pack === undefined) return packOf(matter, jurisdiction);
  return matter.packs.find((one) => packCode(one) === pack);
}

/** The law of a jurisdiction of the determination, such as `us-tx`. */
export function packOf({ packs }: Matter, jurisdiction: string): RulePack | undefined {
  const code = jurisdiction === 'us' ? 'US' : jurisdiction.slice(-2).toUpperCase();
  return packs.find((pack) => pack.jurisdiction === code && !('subject' in pack));
}
