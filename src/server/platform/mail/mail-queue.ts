import type { Clock } from '../clock.js';
import type { MailRows } from '../database/mail-rows.js';
import type { UnitOfWork } from '../database/unit-of-work.js';
import { isMailAddress } from '../mail-config.js';
import type { MailMessage } from './mail-message.js';
import { newMailId } from './new-mail-id.js';

export interface NewMail {
  /** One mail address; for two people queue two mails. */
  readonly to: string;
  readonly message: MailMessage;
  readonly incidentId?: string;
  /** What it is sent for, the same whenever the same is found again: `digest/2026-06-13/<account>`. */
  readonly key: string;
}

export interface MailQueueParts {
  readonly unitOfWork: UnitOfWork;
  readonly rows: MailRows;
  readonly clock: Clock;
  /** Behind the @ of every Message-ID. */
  readonly domain: string;
  /** Begins to send what is queued, without anybody waiting for it. */
  readonly wake: () => void;
}

/** Where mail begins: written down together with its cause, and sent once that is committed. */
export class MailQueue {
  constructor(private readonly parts: MailQueueParts) {}

  /**
   * Queues a mail as a part of the unit of work that runs now, unless one with this key was queued before. An address
   * that cannot be one does not undo the cause: the mail is kept as failed, where an administrator sees it.
   * @returns whether it was queued now
   */
  enqueue({ to, message, incidentId, key }: NewMail): Promise<boolean> {
    const { unitOfWork, rows, clock, domain, wake } = this.parts;
    return unitOfWork.run(async () => {
      if (await rows.existsFor(key)) return false;
      const now = clock.now();
      const id = newMailId(now);
      const { purpose, subject, body } = message;
      const fits = isMailAddress(to);
      await rows.add({
        id,
        causeKey: key,
        messageId: `${id}@${domain}`,
        purpose,
        incidentId: incidentId ?? null,
        toAddress: to,
        subject,
        body,
        state: fits ? 'queued' : 'failed',
        version: 1,
        tries: 0,
        nextTryAt: now,
        carrier: null,
        claimedUntil: null,
        words: fits ? null : 'That is no mail address.',
        queuedAt: now,
        changedAt: now,
      });
      unitOfWork.afterCommit(wake);
      return true;
    });
  }
}
