import type { PreviewAnswer } from './hand-over-answers.js';
import type { PacketDraft } from './packet-draft.js';

/** What every part of a preview is given: what would leave, what the sender wants, and how that is changed. */
export interface PreviewProps {
  readonly id: string;
  readonly preview: PreviewAnswer;
  readonly draft: PacketDraft;
  readonly onChange: (draft: PacketDraft) => void;
}

/** Full where it leaves, half where it is masked, empty where it stays. */
export const SIGNS = { goes: 'yes', masked: 'unknown', stays: 'no' } as const;
