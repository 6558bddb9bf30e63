import { expect, it } from 'vitest';
import type { Letter, MailCarrier, Outcome } from '../../src/server/platform/mail/mail-carrier.js';
import { describeEngines } from '../support/databases.js';
import { HOUR, MailHouse, MAILS, MINUTE, REOPENED } from './mail-house.js';

const ANA = 'ana@rental.example';
const BEN = 'ben@rental.example';

/** Carries nothing, and says what the test wants to have come of it. */
class TestCarrier implements MailCarrier {
  readonly letters: Letter[] = [];
  answers: Outcome['kind'][] = [];

  constructor(readonly kind: 'smtp' | 'folder' = 'smtp') {}

  async carry(letter: Letter): Promise<Outcome> {
    this.letters.push(letter);
    const kind = this.answers.shift() ?? 'sent';
    return Promise.resolve({ kind, words: `said ${this.letters.length}` });
  }

  get sentTo(): string[] {
    return this.letters.map(({ to }) => to);
  }
}

describeEngines('the queue of mail', MAILS, (desk) => {
  let count = 0;
  /** Each test in a house of its own: what the last one left is out of the way. */
  const open = async (carrier = new TestCarrier()): Promise<{ house: MailHouse; carrier: TestCarrier }> => {
    await desk.plainSql('DELETE FROM mail');
    count += 1;
    return { house: new MailHouse(desk.unitOfWork, carrier), carrier };
  };
  const key = (name: string): string => `${name}/${count}`;

  it('keeps a mail with its cause, and sends it behind it', async () => {
    const { house, carrier } = await open();
    await desk.unitOfWork.run(async () => {
      expect(await house.enqueue(key('a'))).toBe(true);
      expect(house.wakes).toBe(0);
    });
    expect(house.wakes).toBe(1);
    expect(await house.states()).toEqual(['queued']);
    await house.round();
    expect(await house.mails()).toMatchObject([
      { state: 'sent', tries: 1, words: 'said 1', purpose: 'decision-reopened' },
    ]);
    expect(carrier.letters).toMatchObject([
      { to: ANA, subject: 'Incident 2026-0042: a decision is open again' },
    ]);
  });

  it('keeps no mail of a cause that failed', async () => {
    const { house } = await open();
    const cause = desk.unitOfWork.run(async () => {
      await house.enqueue(key('a'));
      throw new Error('the cause failed');
    });
    await expect(cause).rejects.toThrow('the cause failed');
    expect([await house.states(), house.wakes]).toEqual([[], 0]);
  });

  it('never queues the same cause twice, not even at once', async () => {
    const { house, carrier } = await open();
    const queued = await Promise.all(Array.from({ length: 8 }, () => house.enqueue(key('a'))));
    expect(queued.filter(Boolean)).toHaveLength(1);
    await house.round();
    expect(await house.enqueue(key('a'))).toBe(false);
    await house.round();
    expect(carrier.letters).toHaveLength(1);
  });

  it('keeps what has no mail address where an administrator sees it, and does not undo the cause', async () => {
    const { house, carrier } = await open();
    expect(await house.enqueue(key('a'), '12 Shore Road')).toBe(true);
    await house.round();
    expect(await house.mails()).toMatchObject([{ state: 'failed', words: 'That is no mail address.' }]);
    expect(carrier.letters).toEqual([]);
  });

  it('sends in the order in which was queued', async () => {
    const { house, carrier } = await open();
    for (const name of ['a', 'b', 'c', 'd', 'e']) await house.enqueue(key(name), `${name}@rental.example`);
    await house.round();
    expect(carrier.sentTo.join()).toBe(
      ['a', 'b', 'c', 'd', 'e'].map((name) => `${name}@rental.example`).join(),
    );
  });

  it('tries again later and later, at last every half hour or more, and gives up after a day', async () => {
    const { house, carrier } = await open();
    carrier.answers = Array<Outcome['kind']>(99).fill('deferred');
    await house.enqueue(key('a'));
    const gaps: number[] = [];
    for (let next = await house.sender.nextAt(); next !== null; next = await house.sender.nextAt()) {
      const gap = Date.parse(next) - Date.parse(house.clock.now());
      gaps.push(gap);
      house.clock.letPass(gap);
      await house.round();
    }
    expect(gaps.slice(0, 4)).toEqual([0, 15_000, 30_000, MINUTE]);
    expect(Math.max(...gaps)).toBe(HOUR / 2);
    expect(await house.mails()).toMatchObject([
      { state: 'failed', tries: 30, words: 'Given up after 30 tries: said 30' },
    ]);
  });

  it('lets others go first while one waits for its next try, but none to the same person', async () => {
    const { house, carrier } = await open();
    carrier.answers = ['deferred'];
    await house.enqueue(key('first to ana'));
    await house.enqueue(key('second to ana'));
    await house.enqueue(key('to ben'), BEN);
    await house.round();
    expect(carrier.sentTo).toEqual([ANA, BEN]);
    expect(await house.sender.nextAt()).toBe('2026-06-13T16:00:15.000Z');
    await house.untilNothingWaits();
    expect(carrier.sentTo).toEqual([ANA, BEN, ANA, ANA]);
    expect(await house.states()).toEqual(['sent', 'sent', 'sent']);
  });

  it('leaves the others alone while the server cannot be reached', async () => {
    const { house, carrier } = await open();
    carrier.answers = ['unreachable'];
    await house.enqueue(key('a'));
    await house.enqueue(key('b'), BEN);
    await house.round();
    await house.round();
    expect(await house.mails()).toMatchObject([{ tries: 1 }, { tries: 0 }]);
    expect(await house.sender.nextAt()).toBe('2026-06-13T16:00:15.000Z');
    await house.untilNothingWaits();
    expect(await house.states()).toEqual(['sent', 'sent']);
  });

  it.each(['uncertain', 'refused'] as const)('does not send again by itself what is %s', async (kind) => {
    const { house, carrier } = await open();
    carrier.answers = [kind];
    await house.enqueue(key('a'));
    await house.round();
    house.clock.letPass(24 * HOUR);
    await house.round();
    expect(await house.states()).toEqual([kind === 'refused' ? 'failed' : 'uncertain']);
    expect([carrier.letters.length, await house.sender.nextAt()]).toEqual([1, null]);
  });

  it('is sent once by two services on one database', async () => {
    const { house, carrier } = await open();
    const other = new MailHouse(desk.unitOfWork, carrier, house.clock);
    for (let mail = 0; mail < 12; mail += 1) await house.enqueue(key(`${mail}`), `p${mail}@rental.example`);
    await Promise.all([house.round(), other.round()]);
    expect(new Set(carrier.sentTo).size).toBe(12);
    expect(carrier.letters).toHaveLength(12);
    expect(new Set(await house.states())).toEqual(new Set(['sent']));
  });

  const dying: MailCarrier = {
    kind: 'smtp',
    carry: () => Promise.reject(new Error('the process died')),
  };

  it('asks a person about what a dying process was handing over to a server', async () => {
    const { house } = await open();
    await house.enqueue(key('a'));
    const died = new MailHouse(desk.unitOfWork, dying, house.clock);
    await expect(died.round()).rejects.toThrow('the process died');
    await house.round();
    expect(await house.states()).toEqual(['sending']);
    house.clock.letPass(11 * MINUTE);
    await house.round();
    expect(await house.mails()).toMatchObject([
      { state: 'uncertain', words: expect.stringContaining('may have been delivered') as string },
    ]);
  });

  it('writes a file again that a dying process was writing', async () => {
    const { house, carrier } = await open(new TestCarrier('folder'));
    await house.enqueue(key('a'));
    const died = new MailHouse(desk.unitOfWork, { ...dying, kind: 'folder' }, house.clock);
    await expect(died.round()).rejects.toThrow('the process died');
    house.clock.letPass(11 * MINUTE);
    await house.round();
    expect(await house.mails()).toMatchObject([{ state: 'sent', tries: 2 }]);
    expect(carrier.letters[0]?.messageId).toBe((await house.mails())[0]?.messageId);
  });

  it('tells when a try that was given up came to its end after all', async () => {
    const { house } = await open();
    await house.enqueue(key('a'));
    const late: MailCarrier = {
      kind: 'smtp',
      carry: async () => {
        house.clock.letPass(12 * MINUTE);
        await house.round();
        return { kind: 'sent', words: 'taken' };
      },
    };
    const slow = new MailHouse(desk.unitOfWork, late, house.clock);
    await slow.round();
    expect([await house.states(), slow.reported.length]).toEqual([['uncertain'], 1]);
  });

  it('holds nothing of the database while a server is slow', async () => {
    const { house } = await open();
    await house.enqueue(key('a'));
    const slow: MailCarrier = {
      kind: 'smtp',
      carry: async () => {
        await house.enqueue(key('meanwhile'), BEN);
        return { kind: 'sent', words: '' };
      },
    };
    await new MailHouse(desk.unitOfWork, slow, house.clock).round();
    expect(await house.states()).toEqual(['sent', 'sent']);
  });

  it('begins no other mail when the service ends', async () => {
    const { house, carrier } = await open();
    await house.enqueue(key('a'));
    await house.round(AbortSignal.abort());
    expect([carrier.letters.length, await house.states()]).toEqual([0, ['queued']]);
  });

  it('keeps of what a server says only so much, and no character that a database refuses', async () => {
    const { house } = await open();
    await house.enqueue(key('a'));
    const words = `\0${'x'.repeat(5000)}`;
    const chatty: MailCarrier = { kind: 'smtp', carry: () => Promise.resolve({ kind: 'refused', words }) };
    await new MailHouse(desk.unitOfWork, chatty, house.clock).round();
    expect(await house.mails()).toMatchObject([{ state: 'failed', words: 'x'.repeat(1000) }]);
  });

  it('gives every mail a Message-ID of its own that stays', async () => {
    const { house, carrier } = await open();
    carrier.answers = ['deferred'];
    await house.queue.enqueue({ to: ANA, message: REOPENED, key: key('a'), incidentId: 'i-1' });
    await house.enqueue(key('b'), BEN);
    await house.untilNothingWaits();
    const [first, other, again] = carrier.letters.map(({ messageId }) => messageId);
    expect(first).toMatch(/^[0-9a-f-]{36}@rental\.example$/);
    expect([again === first, other === first]).toEqual([true, false]);
  });
});
