import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MailMessage, withoutLinks } from '../../src/server/platform/mail/mail-message.js';

const ZONE = 'America/Chicago';
const DUE = '2026-06-13T16:20:00.000Z';

describe('what a mail says', () => {
  it.each([
    ['decision-reopened', 'a decision is open again'],
    ['supplement-due', 'a filed report has to be supplemented'],
  ] as const)('%s: what has to be done and where to look', (notice, what) => {
    const { purpose, subject, body } = MailMessage.about(notice, '2026-0042');
    expect([purpose, subject]).toEqual([notice, `Incident 2026-0042: ${what}`]);
    expect(body.replaceAll('\n', ' ')).toBe(
      [
        `Incident 2026-0042: ${what}. Facts or law behind it have changed. `,
        'Look it up in the incident desk. Mail passes many hands, so it does not say what happened. ',
        'Anyone hurt, missing or in danger: emergency services first. ',
      ].join(' '),
    );
    expect(body.split('\n').filter((line) => line.length > 76)).toEqual([]);
  });

  it('is a list of what is overdue and due for one person', () => {
    const { subject, body } = MailMessage.digest({
      overdue: [{ reference: '2026-0041', dueAt: '2026-06-12T16:20:00.000Z' }],
      due: [
        { reference: '2026-0042', dueAt: '2026-06-13T16:20:00.000Z' },
        { reference: '2026-0043', dueAt: '2026-06-13T22:00:00.000Z' },
      ],
      undated: ['2026-0044'],
      timeZone: ZONE,
    });
    expect(subject).toBe('Incident desk: 1 overdue, 3 due');
    expect(body.split('\n').slice(0, 10)).toEqual([
      'Overdue:',
      '  2026-0041   Friday, June 12, 2026 at 11:20 AM CDT',
      '',
      'Due:',
      '  2026-0042   Saturday, June 13, 2026 at 11:20 AM CDT',
      '  2026-0043   Saturday, June 13, 2026 at 5:00 PM CDT',
      '',
      'Due at a time that nobody knows yet:',
      '  2026-0044',
      '',
    ]);
  });

  it('takes nothing that could be text of a record', () => {
    const parts = { overdue: [], due: [], undated: [], timeZone: ZONE };
    const words = fc.string().filter((text) => !/^\d{4}-\d{4,9}$/.test(text));
    fc.assert(
      fc.property(words, (text) => {
        expect(() => MailMessage.about('decision-reopened', text)).toThrow(TypeError);
        expect(() => MailMessage.digest({ ...parts, undated: [text] })).toThrow(TypeError);
        const line = { reference: text, dueAt: DUE };
        expect(() => MailMessage.digest({ ...parts, due: [line] })).toThrow(TypeError);
        const untimed = { reference: '2026-0042', dueAt: text };
        expect(() => MailMessage.digest({ ...parts, due: [untimed] })).toThrow(TypeError);
      }),
    );
  });

  const packet = {
    reference: '2026-0042',
    address: `https://desk.rental.example/collect/${'a'.repeat(43)}`,
    expiresAt: DUE,
    head: { size: 17, root: 'ab'.repeat(32), at: DUE },
    timeZone: ZONE,
    opensBy: 'passcode',
    language: 'en',
  } as const;

  it('is a link to a packet, with the head of the log by choice and nothing of what the packet holds', () => {
    const { subject, body } = MailMessage.packet(packet);
    expect(subject).toBe('Incident 2026-0042: a packet waits for you');
    expect(body).toContain(`\n${packet.address}\n`);
    expect(body).toContain(`\n17:${'ab'.repeat(32)}\n`);
    expect(body.replaceAll('\n', ' ')).toContain(
      'waits for you until Saturday, June 13, 2026 at 11:20 AM CDT',
    );
    expect(MailMessage.packet({ ...packet, head: null }).body).not.toContain('abab');
    expect(withoutLinks(body)).toContain('\nhttps://desk.rental.example/collect/(sent)\n');
  });

  it('speaks Spanish to those who read it, and tells a lawyer to sign in', () => {
    const { subject, body } = MailMessage.packet({ ...packet, language: 'es' });
    expect(subject).toBe('Incidente 2026-0042: un paquete lo espera');
    expect(body.replaceAll('\n', ' ')).toContain('hasta el sábado, 13 de junio de 2026, 11:20 a.m. CDT');
    expect(body).toContain(`\n${packet.address}\n`);
    const toCounsel = MailMessage.packet({ ...packet, opensBy: 'sign-in' }).body;
    expect(toCounsel).toContain('sign in there');
    expect(toCounsel).not.toContain('told another way');
  });

  it.each([
    { reference: 'broken leg' },
    { address: 'https://desk.rental.example/collect/broken leg' },
    { address: `javascript:alert(1)//collect/${'a'.repeat(43)}` },
    { expiresAt: 'soon' },
    { head: { ...packet.head, root: 'broken leg' } },
    { head: { ...packet.head, size: Number.NaN } },
    { timeZone: 'a broken leg' },
  ])('puts nothing else into a mail about a packet: %j', (part) => {
    expect(() => MailMessage.packet({ ...packet, ...part })).toThrow(TypeError);
  });

  it('tells whoever sent it of the link, by the reference', () => {
    const about = { reference: '2026-0042', at: DUE, timeZone: ZONE };
    expect(MailMessage.ofPacket('packet-collected', about).subject).toBe(
      'Incident 2026-0042: a packet was collected',
    );
    expect(() => MailMessage.ofPacket('packet-link-locked', { ...about, reference: 'Ann' })).toThrow(
      TypeError,
    );
  });

  it.each(['broken leg', 'America/Chicago broken', 'x'.repeat(65)])(
    'takes no zone such as %j',
    (timeZone) => {
      expect(() => MailMessage.digest({ overdue: [], due: [], undated: [], timeZone })).toThrow(/zone/i);
    },
  );
});
