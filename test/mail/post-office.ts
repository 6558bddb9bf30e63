import { once } from 'node:events';
import { type AddressInfo, createServer, type Server, type Socket } from 'node:net';
import { SMTPServer, type SMTPServerOptions } from 'smtp-server';

/** A mail as a real SMTP server took it. */
export interface Taken {
  readonly to: string[];
  readonly text: string;
}

/** A real SMTP server on this machine. */
export class PostOffice {
  private constructor(
    private readonly server: SMTPServer,
    readonly port: number,
    readonly taken: readonly Taken[],
  ) {}

  static async open(options: SMTPServerOptions = {}, port = 0): Promise<PostOffice> {
    const taken: Taken[] = [];
    const server = new SMTPServer({
      authOptional: true,
      disabledCommands: ['STARTTLS'],
      allowInsecureAuth: true,
      disableReverseLookup: true,
      onData: (stream, session, done) => {
        const parts: Buffer[] = [];
        stream.on('data', (part: Buffer) => parts.push(part));
        stream.on('end', () => {
          const to = session.envelope.rcptTo.map(({ address }) => address);
          taken.push({ to, text: Buffer.concat(parts).toString() });
          done(null, 'Taken as number 17');
        });
      },
      ...options,
    });
    server.on('error', () => undefined);
    const listening = server.listen(port, '127.0.0.1');
    await once(listening, 'listening');
    return new PostOffice(server, (listening.address() as AddressInfo).port, taken);
  }

  close(): Promise<void> {
    return new Promise((resolve) => {
      this.server.close(() => resolve());
    });
  }
}

/** Where a server of the test stops to speak. */
export type Stop = 'greeting' | 'EHLO' | 'MAIL' | 'RCPT' | 'DATA' | 'message';

export interface Ending {
  readonly at: Stop;
  /** It hangs up, breaks the connection off, or says nothing any more. */
  readonly how: 'closes' | 'resets' | 'is silent';
}

const REPLIES: [said: RegExp, stop: Stop, reply: string][] = [
  [/^(EHLO|HELO) /i, 'EHLO', '250 here'],
  [/^MAIL FROM:/i, 'MAIL', '250 ok'],
  [/^RCPT TO:/i, 'RCPT', '250 ok'],
  [/^DATA$/i, 'DATA', '354 go on'],
  [/^QUIT$/i, 'greeting', '221 bye'],
];

/**
 * A server that speaks just enough SMTP to end a conversation at any point, and counts the messages that it had to the
 * last byte: those may have been delivered.
 */
export class DyingOffice {
  wholeMessages = 0;
  private readonly sockets = new Set<Socket>();
  private readonly held: (() => void)[] = [];
  private readonly called: Promise<void>;

  private constructor(
    private readonly server: Server,
    private readonly ending: Ending,
  ) {
    this.called = once(server, 'connection').then(() => undefined);
  }

  static async open(ending: Ending): Promise<DyingOffice> {
    const server = createServer();
    const office = new DyingOffice(server, ending);
    server.on('connection', (socket) => office.converse(socket));
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    return office;
  }

  get port(): number {
    return (this.server.address() as AddressInfo).port;
  }

  /** Resolves when the server has a whole message. */
  hasMessage(): Promise<void> {
    return new Promise((resolve) => {
      if (this.wholeMessages > 0) resolve();
      else this.held.push(resolve);
    });
  }

  /** Resolves when somebody has called. */
  hasCaller(): Promise<void> {
    return this.called;
  }

  /** Says what it had not said, to everyone who still waits. */
  answer(reply: string): void {
    for (const socket of this.sockets) socket.write(`${reply}\r\n`);
  }

  async close(): Promise<void> {
    for (const socket of this.sockets) socket.destroy();
    this.server.close();
    await once(this.server, 'close');
  }

  private converse(socket: Socket): void {
    this.sockets.add(socket);
    socket.on('close', () => this.sockets.delete(socket)).on('error', () => undefined);
    let text = '';
    let inMessage = false;
    this.say(socket, 'greeting', '220 ready');
    socket.on('data', (data: Buffer) => {
      text += data.toString();
      const end = inMessage ? '\r\n.\r\n' : '\r\n';
      for (let at = text.indexOf(end); at >= 0; at = text.indexOf(end)) {
        const said = text.slice(0, at);
        text = text.slice(at + end.length);
        if (inMessage) {
          inMessage = false;
          this.wholeMessages += 1;
          for (const tell of this.held) tell();
          this.say(socket, 'message', '250 taken');
          return;
        }
        const [, stop = 'greeting', reply = '500 what?'] = REPLIES.find(([words]) => words.test(said)) ?? [];
        inMessage = stop === 'DATA';
        this.say(socket, stop, reply);
        if (inMessage) return;
      }
    });
  }

  private say(socket: Socket, stop: Stop, reply: string): void {
    if (stop !== this.ending.at) socket.write(`${reply}\r\n`);
    else if (this.ending.how === 'closes') socket.end();
    else if (this.ending.how === 'resets') socket.resetAndDestroy();
  }
}
