import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { once } from 'node:events';
import { afterEach, expect, it } from 'vitest';
import { SmtpCarrier } from '../../src/server/platform/mail/smtp-carrier.js';
import { CERTIFICATE, KEY } from '../accounts/self-signed.js';
import { describeEngines } from '../support/databases.js';
import { carrierTo, FROM, MailHouse, MAILS, serverAt } from './mail-house.js';
import { DyingOffice, type Ending, PostOffice } from './post-office.js';

interface Closing {
  close(): Promise<void>;
}

/** A port at which nobody listens. */
async function deadPort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  await once(server, 'close');
  return port;
}

/** A refusal with a code, as the server library takes it. */
const refusal = (responseCode: number, words: string): Error =>
  Object.assign(new Error(words), { responseCode });

describeEngines('mail to an SMTP server', MAILS, (desk) => {
  const open: Closing[] = [];
  afterEach(async () => {
    await Promise.all(open.splice(0).map((office) => office.close()));
    await desk.plainSql('DELETE FROM mail');
  });
  const opened = async <T extends Closing>(office: Promise<T>): Promise<T> => {
    open.push(await office);
    return office;
  };
  const houseTo = (...carrier: Parameters<typeof carrierTo>): MailHouse =>
    new MailHouse(desk.unitOfWork, carrierTo(...carrier));

  it('is a message that says what is due and where to look', async () => {
    const office = await opened(PostOffice.open());
    const house = houseTo(office.port);
    await house.enqueue('a');
    await house.round();
    const [row] = await house.mails();
    expect(row).toMatchObject({ state: 'sent', carrier: 'smtp', words: '250 Taken as number 17' });
    expect(office.taken).toHaveLength(1);
    expect(office.taken[0]?.to).toEqual(['ana@rental.example']);
    const lines = office.taken[0]?.text.split('\r\n') ?? [];
    expect(lines).toContain('From: Incident desk <desk@rental.example>');
    expect(lines).toContain('To: ana@rental.example');
    expect(lines).toContain('Subject: Incident 2026-0042: a decision is open again');
    expect(lines).toContain(`Message-ID: <${row?.messageId}>`);
    expect(lines).toContain('Date: Sat, 13 Jun 2026 16:00:00 +0000');
    expect(lines).toContain('Auto-Submitted: auto-generated');
    expect(lines).toContain('Look it up in the incident desk. Mail passes many hands, so it does not');
  });

  it('is handed over after signing in', async () => {
    const login = { user: 'desk', pass: 'low tide' };
    const office = await opened(
      PostOffice.open({
        authOptional: false,
        onAuth: ({ username, password }, _session, done) =>
          username === login.user && password === login.pass
            ? done(null, { user: username })
            : done(refusal(535, 'Wrong password')),
      }),
    );
    const house = houseTo(office.port, 5_000, login);
    await house.enqueue('a');
    await house.round();
    expect([await house.states(), office.taken.length]).toEqual([['sent'], 1]);

    const wrong = houseTo(office.port, 5_000, { ...login, pass: 'high tide' });
    await wrong.enqueue('b');
    await wrong.round();
    const [, waiting] = await wrong.mails();
    expect(waiting).toMatchObject({ state: 'queued', words: expect.stringContaining('535') as string });
    expect(waiting?.words).not.toContain('high tide');
  });

  it.each([
    ['that does not speak TLS', { secure: false, requireTls: true }, {}],
    [
      'whose certificate nobody vouches for',
      { secure: true, requireTls: false },
      { secure: true, cert: CERTIFICATE, key: KEY },
    ],
  ])('is not handed to a server %s', async (_what, how, options) => {
    const office = await opened(PostOffice.open(options));
    const server = { ...serverAt(office.port), ...how };
    const house = new MailHouse(desk.unitOfWork, new SmtpCarrier(server, FROM));
    await house.enqueue('a');
    await house.round();
    expect([await house.states(), office.taken.length]).toEqual([['queued'], 0]);
  });

  it('waits while nobody listens, and arrives once somebody does', async () => {
    const port = await deadPort();
    const house = houseTo(port);
    for (const name of ['a', 'b', 'c']) await house.enqueue(name, `${name}@rental.example`);
    await house.round();
    await house.round();
    expect(await house.states()).toEqual(['queued', 'queued', 'queued']);
    const office = await opened(PostOffice.open({}, port));
    await house.untilNothingWaits();
    expect(await house.states()).toEqual(['sent', 'sent', 'sent']);
    expect(office.taken.map(({ to }) => to[0])).toEqual(
      ['a', 'b', 'c'].map((name) => `${name}@rental.example`),
    );
  });

  it.each([
    ['the sender', 'onMailFrom'],
    ['the recipient', 'onRcptTo'],
  ] as const)('is sent later when the server refuses %s for now', async (_what, step) => {
    let refusals = 2;
    const office = await opened(
      PostOffice.open({
        [step]: (_address: unknown, _session: unknown, done: (error?: Error) => void) =>
          (refusals -= 1) >= 0 ? done(refusal(450, 'Busy, come back')) : done(),
      }),
    );
    const house = houseTo(office.port);
    await house.enqueue('a');
    await house.round();
    expect(await house.mails()).toMatchObject([
      { state: 'queued', tries: 1, words: expect.stringContaining('450 Busy, come back') as string },
    ]);
    await house.untilNothingWaits();
    expect(await house.mails()).toMatchObject([{ state: 'sent', tries: 3 }]);
    expect(office.taken).toHaveLength(1);
  });

  it('fails with the words of a server that refuses it for good, and holds up no other', async () => {
    const office = await opened(
      PostOffice.open({
        onRcptTo: ({ address }, _session, done) =>
          address.startsWith('gone') ? done(refusal(550, 'No such person here')) : done(),
      }),
    );
    const house = houseTo(office.port);
    await house.enqueue('a', 'gone@rental.example');
    await house.enqueue('b');
    await house.round();
    expect(await house.mails()).toMatchObject([
      { state: 'failed', words: expect.stringContaining('550 No such person here') as string },
      { state: 'sent' },
    ]);
    expect(office.taken.map(({ to }) => to)).toEqual([['ana@rental.example']]);
  });

  it.each([
    [451, 'queued'],
    [421, 'queued'],
    [554, 'failed'],
  ])('knows that a message was not taken when the answer to it is %i', async (code, state) => {
    const dying = await opened(DyingOffice.open({ at: 'message', how: 'is silent' }));
    const house = houseTo(dying.port);
    await house.enqueue('a');
    const round = house.round();
    await dying.hasMessage();
    dying.answer(`${code} not now`);
    await round;
    expect(await house.states()).toEqual([state]);
  });

  it('waits while the server has no service at all', async () => {
    const office = await opened(
      PostOffice.open({ onConnect: (_session, done) => done(refusal(554, 'No service here')) }),
    );
    const house = houseTo(office.port);
    await house.enqueue('a');
    await house.round();
    expect(await house.mails()).toMatchObject([
      { state: 'queued', words: expect.stringContaining('554') as string },
    ]);
  });

  const EARLY: Ending['at'][] = ['greeting', 'EHLO', 'MAIL', 'RCPT', 'DATA'];
  const HOW: Ending['how'][] = ['closes', 'resets', 'is silent'];
  const early = EARLY.flatMap((at) => HOW.map((how) => ({ at, how })));

  it.each(early)('is sent again when the server $how at $at, as it had no message', async (ending) => {
    const dying = await opened(DyingOffice.open(ending));
    const house = houseTo(dying.port, 100);
    await house.enqueue('a');
    await house.round();
    expect([await house.states(), dying.wholeMessages]).toEqual([['queued'], 0]);
    const office = await opened(PostOffice.open());
    const mended = new MailHouse(desk.unitOfWork, carrierTo(office.port), house.clock);
    await mended.untilNothingWaits();
    expect([await mended.states(), office.taken.length]).toEqual([['sent'], 1]);
  });

  it.each(HOW)('is left to a person when the server %s between the message and its answer', async (how) => {
    const dying = await opened(DyingOffice.open({ at: 'message', how }));
    const house = houseTo(dying.port, 300);
    await house.enqueue('a');
    await house.round();
    expect([await house.states(), dying.wholeMessages]).toEqual([['uncertain'], 1]);
    await house.untilNothingWaits();
    const again = new MailHouse(desk.unitOfWork, carrierTo(dying.port), house.clock);
    again.clock.letPass(24 * 60 * 60_000);
    await again.round();
    expect(dying.wholeMessages).toBe(1);
  });

  it('is broken off when the service cannot wait for it, and known for uncertain', async () => {
    const dying = await opened(DyingOffice.open({ at: 'message', how: 'is silent' }));
    const house = houseTo(dying.port);
    await house.enqueue('a');
    const abandon = new AbortController();
    const round = house.round(new AbortController().signal, abandon.signal);
    await dying.hasMessage();
    abandon.abort();
    await round;
    expect(await house.states()).toEqual(['uncertain']);
  });

  it('is not begun when the time for it is over already', async () => {
    const office = await opened(PostOffice.open());
    const house = houseTo(office.port);
    await house.enqueue('a');
    await house.round(new AbortController().signal, AbortSignal.abort());
    expect([await house.states(), office.taken.length]).toEqual([['queued'], 0]);
  });
});
