import { assertTimeZone, showInstant } from './show-instant.js';

/** Why a mail about an incident is sent. There is no place for words of the record. */
const NOTICES = {
  'decision-reopened': 'a decision is open again',
  'supplement-due': 'a filed report has to be supplemented',
} as const;

export type Notice = keyof typeof NOTICES;

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

export interface DigestParts {
  readonly overdue: readonly DigestLine[];
  readonly due: readonly DigestLine[];
  /** References alone. */
  readonly undated: readonly string[];
  readonly timeZone: string;
}

function plain(reference: string): string {
  if (!/^\d{4}-\d{4,9}$/.test(reference)) throw new TypeError('A mail names an incident by its reference.');
  return reference;
}

/** Lines that need no encoding on their way (RFC 5322, 2.1.1), so that an .eml file can be read as it is. */
function textOf(paragraphs: readonly string[]): string {
  return `${paragraphs.map((text) => text.replaceAll(/(.{1,72})(?: |\n|$)/g, '$1\n')).join('\n')}`;
}
