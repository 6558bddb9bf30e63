import type { Decision, LegalCall, Reopening } from '../../../shared/decision/decision.js';
import { type Filing, standingFilings } from '../../../shared/decision/filing.js';
import type { OperatorNotice } from '../../../shared/decision/operator-notice.js';

/** One thing that was signed or done, with its moment. */
export type Done =
  | { readonly kind: 'decision'; readonly at: string; readonly item: Decision }
  | { readonly kind: 'reopening'; readonly at: string; readonly item: Reopening }
  | { readonly kind: 'filing'; readonly at: string; readonly item: Filing; readonly stands: boolean }
  | { readonly kind: 'notice'; readonly at: string; readonly item: OperatorNotice }
  | { readonly kind: 'call'; readonly at: string; readonly item: LegalCall };

interface Book {
  readonly decisions: readonly Decision[];
  readonly reopenings: readonly Reopening[];
  readonly filings: readonly Filing[];
  readonly notices: readonly OperatorNotice[];
  readonly calls: readonly LegalCall[];
}

/** Everything, the latest first. */
export function listDone({ decisions, reopenings, filings, notices, calls }: Book): Done[] {
  const standing = new Set(standingFilings(filings).map(({ id }) => id));
  const all: Done[] = [
    ...decisions.map((item) => ({ kind: 'decision', at: item.signedAt, item }) as const),
    ...reopenings.map((item) => ({ kind: 'reopening', at: item.at, item }) as const),
    ...filings.map(
      (item) => ({ kind: 'filing', at: item.recordedAt, item, stands: standing.has(item.id) }) as const,
    ),
    ...notices.map((item) => ({ kind: 'notice', at: item.recordedAt, item }) as const),
    ...calls.map((item) => ({ kind: 'call', at: item.recordedAt, item }) as const),
  ];
  return all.sort((one, other) => Date.parse(other.at) - Date.parse(one.at));
}
