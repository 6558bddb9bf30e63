import { Clock } from '../../src/server/platform/clock.js';
import { MailRows } from '../../src/server/platform/database/mail-rows.js';
import { MailDecisionRow, MailRow } from '../../src/server/platform/database/mail.row.js';
import type { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import type { SmtpServer } from '../../src/server/platform/mail-config.js';
import type { MailCarrier } from '../../src/server/platform/mail/mail-carrier.js';
import { MailMessage } from '../../src/server/platform/mail/mail-message.js';
import { MailQueue } from '../../src/server/platform/mail/mail-queue.js';
import { MailSender } from '../../src/server/platform/mail/mail-sender.js';
import { SentMail } from '../../src/server/platform/mail/sent-mail.js';
import { SmtpCarrier } from '../../src/server/platform/mail/smtp-carrier.js';
import type { DeskParts } from '../support/databases.js';

export const MAILS: DeskParts = { rows: [MailRow, MailDecisionRow] };

export const FROM = { name: 'Incident desk', address: 'desk@rental.example' };

export const REOPENED = MailMessage.about('decision-reopened', '2026-0042');

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;

/** A clock that stands still until it is moved. */
export class TestClock extends Clock {
  constructor(private instant = Date.parse('2026-06-13T16:00:00.000Z')) {
    super();
  }

  override now(): string {
    return new Date(this.instant).toISOString();
  }

  letPass(ms: number): void {
    this.instant += ms;
  }
}

/** Queue and sender over a database of the test, as the service puts them together, without its timers. */
export class MailHouse {
  readonly rows: MailRows;
  readonly queue: MailQueue;
  readonly sender: MailSender;
  readonly reported: string[] = [];
  readonly sent = new SentMail((error) => this.reported.push(String(error)));
  /** How often the queue has called for a round. */
  wakes = 0;

  constructor(
    readonly unitOfWork: UnitOfWork,
    carrier: MailCarrier,
    readonly clock = new TestClock(),
  ) {
    this.rows = new MailRows(unitOfWork);
    const parts = { unitOfWork, rows: this.rows, clock };
    this.queue = new MailQueue({ ...parts, domain: 'rental.example', wake: () => (this.wakes += 1) });
    const report = (message: string): unknown => this.reported.push(message);
    this.sender = new MailSender({ ...parts, carrier, sent: this.sent, chance: () => 0, report });
  }

  enqueue(key: string, to = 'ana@rental.example'): Promise<boolean> {
    return this.queue.enqueue({ to, message: REOPENED, key });
  }

  /** One round, as a timer or a commit would begin it. */
  round(stop = new AbortController().signal, abandon = new AbortController().signal): Promise<void> {
    return this.sender.sendDue(stop, abandon);
  }

  /** Rounds at every time at which something is due, until nothing waits any more. */
  async untilNothingWaits(): Promise<void> {
    for (let next = await this.sender.nextAt(); next !== null; next = await this.sender.nextAt()) {
      this.clock.letPass(Math.max(0, Date.parse(next) - Date.parse(this.clock.now())));
      await this.round();
    }
  }

  async mails(): Promise<MailRow[]> {
    const rows = await this.rows.page({ limit: 99, after: null }, undefined);
    return rows.reverse();
  }

  async states(): Promise<string[]> {
    return (await this.mails()).map(({ state }) => state);
  }
}

export function serverAt(port: number, login?: { user: string; pass: string }): SmtpServer {
  return { host: '127.0.0.1', port, secure: false, requireTls: false, login };
}

/** Waits for answers only so long that a test of silence is short. */
export function carrierTo(
  port: number,
  silenceMs = 5_000,
  login?: { user: string; pass: string },
): SmtpCarrier {
  return new SmtpCarrier(serverAt(port, login), FROM, { connectMs: silenceMs, silenceMs });
}
