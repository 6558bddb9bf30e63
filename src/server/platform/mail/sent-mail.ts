import type { MailRow } from '../database/mail.row.js';

/** A mail that a server took: what it was sent for, when, and in which words. */
export type SentMailLine = Pick<MailRow, 'causeKey' | 'purpose' | 'incidentId' | 'toAddress'> & {
  /** RFC 3339. */
  readonly at: string;
  readonly words: string;
};

/**
 * Who wants to know that a server took a mail. They are told after that is written down, and what goes wrong with them is
 * reported: a mail that is out stays out, whatever somebody else makes of it.
 */
export class SentMail {
  private readonly listeners: ((mail: SentMailLine) => Promise<void>)[] = [];

  constructor(private readonly report: (error: unknown) => void) {}

  listen(listener: (mail: SentMailLine) => Promise<void>): void {
    this.listeners.push(listener);
  }

  async tell(mail: SentMailLine): Promise<void> {
    for (const listener of this.listeners) {
      try {
        await listener(mail);
      } catch (error) {
        this.report(error);
      }
    }
  }
}
