import { Readable } from 'node:stream';
import SMTPConnection from 'nodemailer/lib/smtp-connection';
import type { Sender, SmtpServer } from '../mail-config.js';
import { composeLetter } from './compose-letter.js';
import { type Letter, type MailCarrier, type Outcome, wordsOf } from './mail-carrier.js';

/** How long one waits for the server. Mail is not held up for others: they are sent by the same lane. */
export interface Patience {
  /** For the connection, and then for the greeting. */
  readonly connectMs: number;
  /** For the answer to anything said. */
  readonly silenceMs: number;
}

export const PATIENCE: Patience = { connectMs: 30_000, silenceMs: 5 * 60_000 };

/**
 * Hands mail to an SMTP server (RFC 5321), one connection for each, as there are few. nodemailer speaks the protocol;
 * its connection is used rather than its transporter, as that does not tell whether the message had been handed over
 * when a connection died.
 */
export class SmtpCarrier implements MailCarrier {
  readonly kind = 'smtp';

  constructor(
    private readonly server: SmtpServer,
    private readonly from: Sender,
    private readonly patience: Patience = PATIENCE,
  ) {}

  async carry(letter: Letter, signal: AbortSignal): Promise<Outcome> {
    const connection = this.newConnection();
    const over = new Promise<never>((_resolve, reject) => {
      connection.on('error', reject);
      const abort = (): void => reject(new Error('The time for it was over.'));
      if (signal.aborted) abort();
      signal.addEventListener('abort', abort, { once: true });
    });
    // It may end at a moment when nobody waits for it.
    over.catch(() => undefined);
    let handedOver = false;
    let envelopeSent = false;
    try {
      const message = await composeLetter(letter, this.from);
      await Promise.race([over, this.greet(connection)]);
      envelopeSent = true;
      const stream = Readable.from([message]);
      // Read to the end, the message and the dot behind it may be with the server, whatever happens now.
      stream.once('end', () => (handedOver = true));
      const words = await Promise.race([over, this.send(connection, letter, stream)]);
      connection.quit();
      return { kind: 'sent', words };
    } catch (error) {
      return outcomeOf(error, { envelopeSent, handedOver });
    } finally {
      connection.close();
    }
  }

  private newConnection(): SMTPConnection {
    const { host, port, secure, requireTls } = this.server;
    const { connectMs, silenceMs } = this.patience;
    return new SMTPConnection({
      host,
      port,
      secure,
      requireTLS: requireTls,
      connectionTimeout: connectMs,
      greetingTimeout: connectMs,
      dnsTimeout: connectMs,
      socketTimeout: silenceMs,
    });
  }

  private greet(connection: SMTPConnection): Promise<void> {
    const { login } = this.server;
    return new Promise((resolve, reject) => {
      const settle = (error?: Error | null): void => (error ? reject(error) : resolve());
      connection.connect((error) => {
        if (error || login === undefined) settle(error);
        else connection.login({ credentials: login }, settle);
      });
    });
  }

  private send(connection: SMTPConnection, letter: Letter, message: Readable): Promise<string> {
    return new Promise((resolve, reject) => {
      connection.send({ from: this.from.address, to: [letter.to] }, message, (error, info) =>
        error ? reject(error) : resolve(info?.response ?? ''),
      );
    });
  }
}

/**
 * What a failure means. Refusals before the envelope, a wrong password among them, are about the server and would meet
 * every mail: they wait until somebody has set it right. A code of 4xx asks to come back, 5xx is final (RFC 5321,
 * 4.2.1). RFC 5321, 3.8, has a client take a lost connection for a 451 and send again, which can deliver twice; here a
 * person decides.
 */
function outcomeOf(error: unknown, { envelopeSent, handedOver }: Record<string, boolean>): Outcome {
  const words = wordsOf(error);
  const { responseCode = 0 } = error as { responseCode?: number };
  if (envelopeSent && responseCode >= 500) return { kind: 'refused', words };
  // 421: the server closes (RFC 5321, 3.8).
  if (envelopeSent && responseCode >= 400 && responseCode !== 421) return { kind: 'deferred', words };
  return { kind: handedOver && responseCode !== 421 ? 'uncertain' : 'unreachable', words };
}
