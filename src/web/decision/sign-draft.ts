import type { DecisionKind } from '../../../shared/decision/decision.js';
import { readWallClock } from '../../../shared/time/read-wall-clock.js';
import { decision as say } from '../words/decision.js';

/** What somebody is about to sign, while it is written. */
export interface SignDraft {
  readonly kind: DecisionKind | undefined;
  readonly until: string;
  readonly waitedFor: ReadonlySet<string>;
  readonly other: string;
  readonly reason: string;
  readonly counsel: string;
}

export type SignReading =
  | { readonly body: Readonly<Record<string, unknown>> }
  | { readonly at: 'kind' | 'until'; readonly fault: string };

/** What is sent, or what is missing before anything can be. Whether it may be signed, the service judges. */
export function readSignDraft(draft: SignDraft, zone: string): SignReading {
  const reason = draft.reason.trim() === '' ? {} : { reason: draft.reason.trim() };
  switch (draft.kind) {
    case undefined:
      return { at: 'kind', fault: say.sign.choose };
    case 'report':
      return { body: { kind: 'report', ...reason } };
    case 'no-report': {
      const counsel = draft.counsel.trim();
      return { body: { kind: 'no-report', ...reason, ...(counsel !== '' && { counsel }) } };
    }
    case 'wait': {
      const until = draft.until === '' ? null : readWallClock(draft.until, zone);
      if (until === null) return { at: 'until', fault: say.sign.chooseTime };
      const other = draft.other.trim();
      return {
        body: { kind: 'wait', until, questions: [...draft.waitedFor, ...(other === '' ? [] : [other])] },
      };
    }
  }
}
