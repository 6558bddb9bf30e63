import type { Clock } from '../clock.js';
import type { MailRows } from '../database/mail-rows.js';
import type { MailRow } from '../database/mail.row.js';
import type { UnitOfWork } from '../database/unit-of-work.js';
import type { MailCarrier, Outcome } from './mail-carrier.js';
import { withoutLinks } from './mail-message.js';
import { MOST_TRIES, retryDelayMs } from './retry-delay.js';
import type { SentMail } from './sent-mail.js';

/** However slow the server: after this a try is over. */
const LONGEST_TRY_MS = 10 * 60_000;

/** A try that was begun longer ago than this was left behind by a process that died. */
const CLAIM_MS = LONGEST_TRY_MS + 60_000;

/** While the server cannot be reached nothing is tried for so long: each mail would cost a try, and the server a call. */
const LONGEST_PAUSE_MS = 5 * 60_000;

const LONGEST_WORDS = 1000;

const LEFT_BEHIND =
  'The service ended while this was being handed over: it may have been delivered. Ask, then send it again or not.';
const HANDED_OVER = 'It was handed over and no answer came: it may have been delivered.';

export interface MailSenderParts {
  readonly unitOfWork: UnitOfWork;
  readonly rows: MailRows;
  readonly clock: Clock;
  readonly carrier: MailCarrier;
  /** Told of what a server took; a file in a folder is with nobody yet. */
  readonly sent: SentMail;
  /** From 0 to below 1. */
  readonly chance: () => number;
  /** Told when what came of a mail could not be written down. */
  readonly report: (message: string) => void;
}

/**
 * Sends what is due, one after the other. A mail is claimed in a unit of work of its own before anything is said to the
 * server, and what came of it is written down behind it; between the two nothing holds the database. Whoever finds a
 * claim that nobody can be working on any more knows that the mail may have gone out.
 */
export class MailSender {
  private pausedUntil = '';

  constructor(private readonly parts: MailSenderParts) {}

  /** Sends until nothing is due any more, or the signal says that the service ends. */
  async sendDue(stop: AbortSignal, abandon: AbortSignal): Promise<void> {
    const { clock, rows } = this.parts;
    await this.takeBackAbandoned();
    while (!stop.aborted && clock.now() >= this.pausedUntil) {
      // Most of the time there is nothing: looking does not stand in line with those who write.
      if ((await rows.nextDue(clock.now())) === null) return;
      const mail = await this.claim();
      if (mail === null) return;
      const signal = AbortSignal.any([abandon, AbortSignal.timeout(LONGEST_TRY_MS)]);
      await this.settle(mail, await this.parts.carrier.carry(letterOf(mail), signal));
    }
  }

  /** When there is something to do next; null when nothing waits. */
  async nextAt(): Promise<string | null> {
    const next = await this.parts.rows.nextTryAt();
    return next !== null && next < this.pausedUntil ? this.pausedUntil : next;
  }

  private claim(): Promise<MailRow | null> {
    const { unitOfWork, rows, clock, carrier } = this.parts;
    return unitOfWork.run(async () => {
      const now = clock.now();
      const mail = await rows.nextDue(now);
      if (mail === null) return null;
      const change = {
        state: 'sending',
        tries: mail.tries + 1,
        carrier: carrier.kind,
        claimedUntil: later(now, CLAIM_MS),
        changedAt: now,
      } as const;
      await rows.change(mail, change);
      return { ...mail, ...change, version: mail.version + 1 };
    });
  }

  private async settle(mail: MailRow, outcome: Outcome): Promise<void> {
    const { unitOfWork, rows, clock, carrier, sent, chance, report } = this.parts;
    const now = clock.now();
    const delayMs = retryDelayMs(mail.tries, chance());
    if (outcome.kind === 'unreachable') this.pausedUntil = later(now, Math.min(delayMs, LONGEST_PAUSE_MS));
    const nextTryAt = later(now, delayMs);
    const change = { ...changeAfter(outcome, mail, nextTryAt), claimedUntil: null, changedAt: now };
    const isWritten = await unitOfWork.run(() => rows.change(mail, change));
    if (!isWritten)
      report(`Mail ${mail.id} was given up as left behind, and then came to its end: ${outcome.kind}`);
    else if (outcome.kind === 'sent' && carrier.kind === 'smtp')
      await sent.tell({ ...mail, at: now, words: change.words ?? '' });
  }

  /** Files are written again under the same name; whether a server has it, nobody can tell. */
  private async takeBackAbandoned(): Promise<void> {
    const { unitOfWork, rows, clock } = this.parts;
    if ((await rows.abandoned(clock.now())).length === 0) return;
    await unitOfWork.run(async () => {
      const now = clock.now();
      for (const mail of await rows.abandoned(now)) {
        const change =
          mail.carrier === 'folder'
            ? { state: 'queued' as const, nextTryAt: now }
            : { state: 'uncertain' as const, words: LEFT_BEHIND };
        await rows.change(mail, { ...change, claimedUntil: null, changedAt: now });
      }
    });
  }
}

function changeAfter(
  { kind, words }: Outcome,
  { tries, body }: MailRow,
  nextTryAt: string,
): Pick<MailRow, 'state' | 'words'> & Partial<MailRow> {
  const said = words.replaceAll('\0', '').slice(0, LONGEST_WORDS);
  switch (kind) {
    case 'sent':
      return { state: 'sent', words: said, body: withoutLinks(body) };
    case 'refused':
      return { state: 'failed', words: said };
    case 'uncertain':
      return { state: 'uncertain', words: `${HANDED_OVER} ${said}` };
    case 'deferred':
    case 'unreachable':
      return tries < MOST_TRIES
        ? { state: 'queued', words: said, nextTryAt }
        : { state: 'failed', words: `Given up after ${tries} tries: ${said}` };
  }
}

function letterOf({ messageId, toAddress: to, subject, body: text, queuedAt }: MailRow) {
  return { messageId, to, subject, text, queuedAt };
}

function later(instant: string, ms: number): string {
  return new Date(Date.parse(instant) + ms).toISOString();
}
