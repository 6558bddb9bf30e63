import { assertTimeZone, showInstant } from './show-instant.js';

/** Why a mail about an incident is sent. There is no place for words of the record. */
const NOTICES = {
  'report-due': 'a report is due',
  'decision-reopened': 'the decision is open again, as facts or law behind it have changed',
  'wait-ended': 'the time until which answers were awaited has come',
  'supplement-due': 'a filed report has to be supplemented',
  'task-due': 'a task is due',
  'evidence-hold': 'evidence is under a hold: acknowledge it',
} as const;

export type Notice = keyof typeof NOTICES;

export interface AboutIncident {
  /** As the service gave it: 2026-0042. */
  readonly reference: string;
  readonly dueAt?: string;
  /** IANA zone in which times are shown. */
  readonly timeZone: string;
}

export interface DigestLine {
  readonly reference: string;
  readonly dueAt: string;
}

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
   * That something about an incident is due.
   * @throws TypeError for anything else than a reference, an instant, a zone: it might be text of the record
   * @example MailMessage.about('report-due', { reference: '2026-0042', timeZone: 'America/Chicago' }).subject
   * // 'Incident 2026-0042: a report is due'
   */
  static about(notice: Notice, { reference, dueAt, timeZone }: AboutIncident): MailMessage {
    const sentence = `Incident ${plain(reference)}: ${NOTICES[notice]}`;
    assertTimeZone(timeZone);
    const due = dueAt === undefined ? [] : [`Due: ${showInstant(dueAt, timeZone)}.`];
    return new MailMessage(notice, sentence, textOf([`${sentence}.`, ...due, WHERE, FIRST]));
  }

  /**
   * What is due and overdue for one person.
   * @throws TypeError as for `about`
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
