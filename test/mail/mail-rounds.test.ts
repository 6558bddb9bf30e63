import { describe, expect, it } from 'vitest';
import { type Later, MailRounds } from '../../src/server/platform/mail/mail-rounds.js';
import type { MailSender } from '../../src/server/platform/mail/mail-sender.js';
import { MINUTE, TestClock } from './mail-house.js';

/** Rounds that a test lets begin and end, and timers that it lets run out. */
function setUp() {
  const clock = new TestClock();
  const timers: { ms: number; work: () => void; off: boolean }[] = [];
  const later: Later = (ms, work) => {
    const timer = { ms, work, off: false };
    timers.push(timer);
    return () => (timer.off = true);
  };
  const rounds: { stop: AbortSignal; abandon: AbortSignal; end: (error?: Error) => void }[] = [];
  const state = { nextAt: null as string | null };
  const sender: Pick<MailSender, 'sendDue' | 'nextAt'> = {
    sendDue: (stop, abandon) =>
      new Promise((resolve, reject) => {
        rounds.push({ stop, abandon, end: (error) => (error ? reject(error) : resolve()) });
      }),
    nextAt: () => Promise.resolve(state.nextAt),
  };
  const reported: unknown[] = [];
  const parts = {
    sender: sender as MailSender,
    clock,
    later,
    report: (error: unknown) => reported.push(error),
  };
  const waiting = () => timers.filter(({ off }) => !off);
  return { mail: new MailRounds(parts), rounds, waiting, state, reported };
}

describe('the rounds of mail', () => {
  it('are one at a time, and one more for who called meanwhile', async () => {
    const { mail, rounds } = setUp();
    mail.wake();
    mail.wake();
    mail.wake();
    expect(rounds).toHaveLength(1);
    const settled = mail.settled();
    mail.wake();
    rounds[0]?.end();
    await new Promise(setImmediate);
    expect(rounds).toHaveLength(2);
    rounds[1]?.end();
    await settled;
    expect(rounds).toHaveLength(2);
  });

  it.each([
    [null, MINUTE],
    ['2026-06-13T16:00:20.000Z', 20_000],
    ['2026-06-13T15:00:00.000Z', 0],
    ['2026-06-14T16:00:00.000Z', MINUTE],
  ])('with the next mail at %s rest %i ms', async (nextAt, ms) => {
    const { mail, rounds, waiting, state } = setUp();
    state.nextAt = nextAt;
    mail.wake();
    rounds[0]?.end();
    await mail.settled();
    expect(waiting().map((timer) => timer.ms)).toEqual([ms]);
    waiting()[0]?.work();
    expect(rounds).toHaveLength(2);
  });

  it('go on after one that failed, and say so', async () => {
    const { mail, rounds, waiting, reported } = setUp();
    const fault = new Error('the database is busy');
    mail.wake();
    rounds[0]?.end(fault);
    await mail.settled();
    expect([reported, waiting().map(({ ms }) => ms)]).toEqual([[fault], [MINUTE]]);
  });

  it('end after the mail that is under way, without a timer or a new one', async () => {
    const { mail, rounds, waiting } = setUp();
    mail.wake();
    const stopped = mail.stop();
    expect([rounds[0]?.stop.aborted, rounds[0]?.abandon.aborted]).toEqual([true, false]);
    rounds[0]?.end();
    await stopped;
    mail.wake();
    expect([rounds.length, waiting()]).toEqual([1, []]);
  });

  it('break a try off that would keep the service from ending', async () => {
    const { mail, rounds, waiting } = setUp();
    mail.wake();
    const stopped = mail.stop();
    waiting()[0]?.work();
    expect(rounds[0]?.abandon.aborted).toBe(true);
    rounds[0]?.end();
    await stopped;
  });
});
