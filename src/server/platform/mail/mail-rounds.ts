import type { Clock } from '../clock.js';
import type { MailSender } from './mail-sender.js';

/** One looks at least this often, whatever happened meanwhile: another process may have queued something. */
const LONGEST_REST_MS = 60_000;

/** How long the current mail has when the service ends; after that the try is broken off. */
const GRACE_MS = 20_000;

/** Starts something after a time, and gives what calls it off. */
export type Later = (ms: number, work: () => void) => () => void;

export const later: Later = (ms, work) => {
  const timer = setTimeout(work, ms).unref();
  return () => clearTimeout(timer);
};

export interface MailRoundsParts {
  readonly sender: MailSender;
  readonly clock: Clock;
  readonly later: Later;
  readonly report: (error: unknown) => void;
}

/** When mail is sent: as soon as it is queued, and when its next try is due; one round at a time. */
export class MailRounds {
  private current: Promise<void> | undefined;
  private again = false;
  private callOff: () => void = () => undefined;
  private readonly stopping = new AbortController();
  private readonly abandoning = new AbortController();

  constructor(private readonly parts: MailRoundsParts) {}

  /** Sends what is due; nobody waits for it. */
  wake(): void {
    if (this.stopping.signal.aborted) return;
    this.again = true;
    this.current ??= this.go().finally(() => {
      this.current = undefined;
      // Somebody may have called while the round was ending.
      if (this.again) this.wake();
    });
  }

  /** Resolves when the round under way has ended. */
  async settled(): Promise<void> {
    await this.current;
  }

  /** Lets the current mail come to its end, and begins no other. */
  async stop(): Promise<void> {
    this.stopping.abort();
    this.callOff();
    const callOff = this.parts.later(GRACE_MS, () => this.abandoning.abort());
    await this.current;
    callOff();
  }

  private async go(): Promise<void> {
    const { sender, report } = this.parts;
    let rest = LONGEST_REST_MS;
    while (this.again) {
      this.again = false;
      try {
        await sender.sendDue(this.stopping.signal, this.abandoning.signal);
        rest = restUntil(await sender.nextAt(), this.parts.clock.now());
      } catch (error) {
        report(error);
        rest = LONGEST_REST_MS;
      }
    }
    this.callOff();
    if (!this.stopping.signal.aborted) this.callOff = this.parts.later(rest, () => this.wake());
  }
}

function restUntil(next: string | null, now: string): number {
  if (next === null) return LONGEST_REST_MS;
  return Math.min(LONGEST_REST_MS, Math.max(0, Date.parse(next) - Date.parse(now)));
}
