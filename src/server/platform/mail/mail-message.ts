import { PACKET_WORDS, type PacketLanguage } from './packet-mail-words.js';
import { assertTimeZone, showInstant } from './show-instant.js';

/** Why a mail about an incident is sent. There is no place for words of the record. */
const NOTICES = {
  'decision-reopened': 'a decision is open again',
  'supplement-due': 'a filed report has to be supplemented',
} as const;

export type Notice = keyof typeof NOTICES;

/** What whoever sent a packet is told of its link. */
const PACKET_NOTICES = {
  'packet-collected': 'a packet was collected',
  'packet-link-locked': 'the link to a packet is locked after wrong passcodes',
} as const;

export type PacketNotice = keyof typeof PACKET_NOTICES;

export interface DigestLine {
  readonly reference: string;
  readonly dueAt: string;
}

const WHY = 'Facts or law behind it have changed.';

/** Everything that mails say: what is due, where to look, and not what happened. */
const WHERE = 'Look it up in the incident desk. Mail passes many hands, so it does not say what happened.';
const FIRST = 'Anyone hurt, missing or in danger: emergency services first.';

/**
 * What a mail says. Its constructor is private, and its makers take references, instants and words of closed lists, so
 * that no text of a record, and nothing about anybody's health, gets into a mail by accident: a new kind of mail is a
 * new maker in this file, where it is seen.
 */
export class MailMessage {
  private constructor(
    /** What it is for, as administrators see it. */
    readonly purpose: string,
    readonly subject: string,
    readonly body: string,
  ) {}

  /**
   * That something has to be done about an incident.
   * @throws TypeError for anything else than a reference: it might be text of the record
   * @example MailMessage.about('decision-reopened', '2026-0042').subject
   * // 'Incident 2026-0042: a decision is open again'
   */
  static about(notice: Notice, reference: string): MailMessage {
    const subject = `Incident ${plain(reference)}: ${NOTICES[notice]}`;
    return new MailMessage(notice, subject, textOf([`${subject}. ${WHY}`, WHERE, FIRST]));
  }

  /**
   * A link to a packet, for somebody without an account. The passcode goes another way, and what the packet holds is
   * told nowhere. With the head of the log at its moment the mail is a witness outside the desk: what the record said
   * then can be shown to be unchanged against it.
   * @throws TypeError for anything else than a reference, a link of this desk, instants, a head and a zone
   */
  static packet({
    reference,
    address,
    expiresAt,
    head,
    timeZone,
    opensBy,
    language,
  }: PacketParts): MailMessage {
    assertTimeZone(timeZone);
    if (!LINK.test(address)) throw new TypeError('A mail holds a link of this desk and no other text.');
    const say = PACKET_WORDS[language];
    return new MailMessage(
      'packet-link',
      say.subject(plain(reference)),
      textOf([
        say.waits(reference, showInstant(expiresAt, timeZone, language)),
        address,
        `${say.opensBy[opensBy]} ${say.logged}`,
        ...(head === null ? [] : witnessOf(head, timeZone, language)),
      ]),
    );
  }

  /**
   * That something happened at a link that the reader had sent.
   * @throws TypeError for anything else than a reference, an instant and a zone
   */
  static ofPacket(notice: PacketNotice, { reference, at, timeZone }: PacketNoticeParts): MailMessage {
    assertTimeZone(timeZone);
    const subject = `Incident ${plain(reference)}: ${PACKET_NOTICES[notice]}`;
    const when = `${subject}, on ${showInstant(at, timeZone)}.`;
    return new MailMessage(notice, subject, textOf([when, WHERE, FIRST]));
  }

  /**
   * What is due and overdue for one person.
   * @throws TypeError for anything else than references, instants and a zone
   */
  static digest({ overdue, due, undated, timeZone }: DigestParts): MailMessage {
    assertTimeZone(timeZone);
    const show = ({ reference, dueAt }: DigestLine): string =>
      `  ${plain(reference)}   ${showInstant(dueAt, timeZone)}`;
    const list = (title: string, lines: readonly string[]): string[] =>
      lines.length === 0 ? [] : [[title, ...lines].join('\n')];
    const subject = `Incident desk: ${overdue.length} overdue, ${due.length + undated.length} due`;
    const lists = [
      ...list('Overdue:', overdue.map(show)),
      ...list('Due:', due.map(show)),
      ...list(
        'Due at a time that nobody knows yet:',
        undated.map((reference) => `  ${plain(reference)}`),
      ),
    ];
    return new MailMessage('digest', subject, textOf([...lists, WHERE, FIRST]));
  }
}

export interface PacketParts {
  readonly reference: string;
  /** `https://…/collect/` and the token. */
  readonly address: string;
  readonly expiresAt: string;
  /** That of the record's log at an instant; null where the sender leaves it out. */
  readonly head: { readonly size: number; readonly root: string; readonly at: string } | null;
  readonly timeZone: string;
  readonly opensBy: 'passcode' | 'sign-in';
  readonly language: PacketLanguage;
}

export interface PacketNoticeParts {
  readonly reference: string;
  readonly at: string;
  readonly timeZone: string;
}

/** 256 bits in base64url, behind the address of the desk. */
const LINK = /^https?:\/\/[a-z0-9.:-]+\/collect\/[\w-]{43}$/i;

/**
 * What is kept of a mail once it is out: a link in it opens nothing for whoever reads the list of mails.
 * @example withoutLinks('https://desk.example.com/collect/…') // 'https://desk.example.com/collect/(sent)'
 */
export function withoutLinks(body: string): string {
  return body.replaceAll(/(\/collect\/)[\w-]{43}/g, '$1(sent)');
}

export interface DigestParts {
  readonly overdue: readonly DigestLine[];
  readonly due: readonly DigestLine[];
  /** References alone. */
  readonly undated: readonly string[];
  readonly timeZone: string;
}

function witnessOf(
  { size, root, at }: NonNullable<PacketParts['head']>,
  timeZone: string,
  language: PacketLanguage,
): string[] {
  if (!Number.isSafeInteger(size) || !/^[0-9a-f]{64}$/.test(root)) {
    throw new TypeError('A mail holds the head of a log as size and SHA-256.');
  }
  return [
    PACKET_WORDS[language].witness(showInstant(at, timeZone, language)),
    `${size}:${root}`,
    PACKET_WORDS[language].use,
  ];
}

function plain(reference: string): string {
  if (!/^\d{4}-\d{4,9}$/.test(reference)) throw new TypeError('A mail names an incident by its reference.');
  return reference;
}

/** Lines that need no encoding on their way (RFC 5322, 2.1.1), so that an .eml file can be read as it is. */
function textOf(paragraphs: readonly string[]): string {
  return `${paragraphs.map((text) => text.replaceAll(/(.{1,72})(?: |\n|$)/g, '$1\n')).join('\n')}`;
}
