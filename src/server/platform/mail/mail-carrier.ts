import type { CarrierKind } from './mail-words.js';

/** A mail as it leaves the house. */
export interface Letter {
  /** Without the angle brackets; stable over every try, so that a receiver can tell a repetition. */
  readonly messageId: string;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  readonly queuedAt: string;
}

/**
 * What came of one try, with the words of the server or the folder.
 *
 *     sent         it was taken
 *     refused      this mail will never be taken
 *     deferred     this mail was not taken now
 *     unreachable  nothing can be handed over now, this mail no more than another
 *     uncertain    it was handed over, and no answer came
 */
export interface Outcome {
  readonly kind: 'sent' | 'refused' | 'deferred' | 'unreachable' | 'uncertain';
  readonly words: string;
}

export interface MailCarrier {
  readonly kind: CarrierKind;
  /** Never throws for a mail that did not go through; comes to an end soon after the signal. */
  carry(letter: Letter, signal: AbortSignal): Promise<Outcome>;
}

export function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
