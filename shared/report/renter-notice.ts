/** To whom the notice is given: the customer who drove, or the parent or guardian of one under age. */
export type NoticeRecipient = 'operator' | 'guardian';
export const NOTICE_LANGUAGES = ['en', 'es'] as const;
export type NoticeLanguage = (typeof NOTICE_LANGUAGES)[number];

type ForEach = Readonly<Record<NoticeRecipient, string>>;

/** The words of the notice in one language, from `forms/notice`; names in braces are filled in. */
export interface NoticeWords {
  readonly language: NoticeLanguage;
  readonly titleRequired: string;
  readonly titleOpen: string;
  readonly to: ForEach;
  readonly nameless: string;
  readonly about: string;
  readonly dutyTitle: string;
  readonly duty: ForEach;
  readonly federal: string;
  readonly required: string;
  readonly open: string;
  readonly by: string;
  readonly byIfRequired: string;
  readonly noDate: string;
  readonly sendTo: string;
  readonly askWhere: string;
  readonly formTitle: string;
  readonly form: string;
  readonly whereTitle: string;
  readonly where: string;
  readonly ownTitle: string;
  readonly own: ForEach;
  readonly lawyerTitle: string;
  readonly lawyer: string;
  readonly urgent: string;
  readonly given: string;
  readonly days: readonly string[];
  readonly months: readonly string[];
  /** Before and after noon, on the clock of twelve hours. */
  readonly halves: readonly [string, string];
  readonly date: string;
}

/** One page: what is due from the customer who drove. It tells nothing of anybody's harm and of nobody else. */
export interface RenterNotice {
  readonly language: NoticeLanguage;
  readonly title: string;
  readonly to: string;
  readonly about: string;
  readonly urgent: string;
  readonly duties: readonly {
    readonly law: string;
    readonly when: string;
    readonly where: string;
  }[];
  readonly parts: readonly { readonly title: string; readonly text: string }[];
  /** Where whoever gives it signs. */
  readonly given: string;
}
