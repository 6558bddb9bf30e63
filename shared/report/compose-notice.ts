import { STATE_NAMES } from '../place/state-codes.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import { zoneName } from '../time/zone-name.js';
import type { NoticeRecipient, NoticeWords, RenterNotice } from './renter-notice.js';

/** A duty of the operator, as the notice tells it. */
export interface NoticeDuty {
  /** `us`, `us-tx`. */
  readonly jurisdiction: string;
  readonly outcome: 'required' | 'not-required' | 'undetermined';
  /** RFC 3339. */
  readonly dueAt: string | null;
  readonly dueAtIfRequired: string | null;
  readonly authority: string | null;
}

export interface NoticeMatter {
  readonly recipient: NoticeRecipient;
  /** Of the operator; null where nobody knows it. */
  readonly name: string | null;
  readonly vessel: string;
  readonly reference: string;
  /** RFC 3339. */
  readonly occurredAt: string;
  readonly timeZone: string;
  readonly duties: readonly NoticeDuty[];
}

/**
 * The notice of a customer's duty to report in one language: duty, form, deadline and where to send it, and that the
 * business is not their lawyer. Nothing of it is the customer's account, and nothing is told of anybody else.
 * @example composeNotice(english, { recipient: 'operator', name: 'Ann', … }).to // 'To Ann (operator of PWC 7)'
 */
export function composeNotice(words: NoticeWords, matter: NoticeMatter): RenterNotice {
  const { recipient, reference, occurredAt, vessel } = matter;
  const name = matter.name ?? words.nameless;
  const date = (instant: string): string => tellDate(instant, matter.timeZone, words);
  const fill = (text: string, more: Readonly<Record<string, string>> = {}): string =>
    fillIn(text, { name, vessel, reference, date: date(occurredAt), ...more });
  const duties = matter.duties.filter(({ outcome }) => outcome !== 'not-required');
  const isRequired = duties.some(({ outcome }) => outcome === 'required');
  return {
    language: words.language,
    title: isRequired ? words.titleRequired : words.titleOpen,
    to: fill(words.to[recipient]),
    about: fill(words.about),
    urgent: words.urgent,
    duties: duties.map((duty) => ({
      law: fill(duty.outcome === 'required' ? words.required : words.open, { law: lawOf(duty, words) }),
      when: whenOf(duty, words, date),
      where: duty.authority === null ? words.askWhere : fill(words.sendTo, { authority: duty.authority }),
    })),
    parts: [
      { title: words.dutyTitle, text: fill(words.duty[recipient]) },
      { title: words.formTitle, text: words.form },
      { title: words.whereTitle, text: words.where },
      { title: words.ownTitle, text: fill(words.own[recipient]) },
      { title: words.lawyerTitle, text: words.lawyer },
    ],
    given: words.given,
  };
}

function whenOf(duty: NoticeDuty, words: NoticeWords, date: (instant: string) => string): string {
  const due = duty.dueAt ?? duty.dueAtIfRequired;
  if (due === null) return words.noDate;
  return fillIn(duty.outcome === 'required' ? words.by : words.byIfRequired, { date: date(due) });
}

function lawOf({ jurisdiction }: NoticeDuty, { federal }: NoticeWords): string {
  const code = jurisdiction.replace(/^us-?/, '').toUpperCase();
  return code === '' ? federal : (STATE_NAMES[code] ?? code);
}

/** Values are put in once: braces in a name are no places to fill. */
function fillIn(text: string, values: Readonly<Record<string, string>>): string {
  return text.replaceAll(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
}

function tellDate(instant: string, timeZone: string, { date, days, months, halves }: NoticeWords): string {
  const local = zoneClock(timeZone).format(readInstant(instant));
  const [year = 0, month = 1, day = 1] = local.slice(0, 10).split('-').map(Number);
  const hour = Number(local.slice(11, 13));
  return fillIn(date, {
    weekday: days[new Date(Date.UTC(year, month - 1, day)).getUTCDay()] ?? '',
    day: String(day),
    month: months[month - 1] ?? '',
    year: String(year),
    time: local.slice(11, 16),
    clock: `${hour % 12 || 12}:${local.slice(14, 16)} ${halves[hour < 12 ? 0 : 1]}`,
    zone: zoneName(instant, timeZone),
  });
}
