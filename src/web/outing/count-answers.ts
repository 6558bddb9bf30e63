import type { CountAnswer } from './service-answers.js';

export interface Counted {
  readonly craftId?: string;
  readonly unitName: string;
  readonly answer: CountAnswer;
  readonly where: string | null;
  readonly person?: string;
  readonly at?: string;
}

/** What a device is told of a count: what is still to be asked for. */
export interface CountReceipt {
  readonly id: string;
  readonly version: number;
  readonly day: string;
  readonly unanswered: readonly string[];
}

/** The whole of it, for those who work here. */
export interface CountView extends CountReceipt {
  readonly stationId: string | null;
  readonly answers: readonly Counted[];
  readonly openedBy: string;
  readonly openedAt: string;
  readonly closedBy: string | null;
  readonly closedAt: string | null;
  readonly outcome: {
    readonly opened: readonly string[];
    readonly markedBack: readonly string[];
    readonly stillToEnd: readonly string[];
  } | null;
}

/** A craft of a count as the page shows it. */
export interface CountedCraft {
  readonly unitName: string;
  readonly colours: readonly string[];
  /** While it is out: when it is due back. */
  readonly dueBackAt: string | null;
  /** Null while nobody has answered; `answered` where this device may not know what was said. */
  readonly answer: CountAnswer | 'answered' | null;
  readonly where: string | null;
  /** It was answered and has moved since. */
  readonly askedAgain: boolean;
  readonly onlyHere: boolean;
}
