/** What stands on every report that is shown or printed. */
export const REPORT_CAUTIONS: readonly string[] = [
  'Anyone hurt, missing or in danger: emergency services first.',
  'Not legal advice. Confirm with the state agency and with counsel what is due, and on which form.',
  'A worksheet, and no agency’s form: copy it onto the form, or attach it.',
  'Assume that the other side will read this. Facts, not blame.',
];

/** What somebody is told who is about to write an opinion of the cause. */
export const OPINION_CAUTION =
  'An opinion of the cause is asked "if available" (33 CFR 173.57(b)). It may be used against the business, and nothing ' +
  'is lost by leaving it blank: speak with counsel first.';
