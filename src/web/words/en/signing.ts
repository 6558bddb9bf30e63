import type { DecisionKind } from '../../../../shared/decision/decision.js';
import type { Filer, FilingForm, FilingWay } from '../../../../shared/decision/filing.js';
import type { SigningRefusalCode } from '../../../../shared/decision/judge-signing.js';

const kinds: Record<DecisionKind, string> = {
  report: 'Report',
  wait: 'Wait',
  'no-report': 'No report due',
};
const ways: Record<FilingWay, string> = {
  online: 'Online',
  mail: 'Mail',
  email: 'E-mail',
  fax: 'Fax',
  phone: 'Phone',
  radio: 'Radio',
  'in-person': 'In person',
};
const filers: Record<Filer, string> = {
  owner: 'The owner (we)',
  operator: 'The operator',
  officer: 'An officer',
  other: 'Somebody else',
};
const forms: Record<FilingForm, string> = { report: 'Written report', notice: 'Notice' };
/** What to do about each reason against signing. */
const fixes: Record<SigningRefusalCode, string> = {
  WAIT_FOR_NOTHING: 'Choose “No report due”, or “Report”.',
  WAIT_NAMES_NO_QUESTION: 'Tick at least one question, or write one.',
  WAIT_IS_OVER: 'Choose a later time.',
  WAIT_PAST_CLOCK: 'Choose an earlier time, or choose “Report”.',
  WAIT_WITHOUT_CLOCK: 'Log a call below, then sign again.',
  NO_REPORT_UNDETERMINED: 'Answer the open questions, or choose “Wait” or “Report”.',
  REASON_MISSING: 'Write the reason.',
  COUNSEL_MISSING: 'Name the counsel who was asked.',
  CALL_FIRST: 'Call the agency or counsel, log the call below, then sign again.',
};

/** What is signed, filed, told and asked. */
export const signing = {
  sign: {
    open: 'Decide',
    again: 'Decide again',
    title: (duty: string) => `Decide: ${duty}`,
    onlyManagers: 'A manager or an administrator signs.',
    legend: 'What is signed',
    kinds,
    about: {
      report: 'Now, on what is known. It can be supplemented later.',
      wait: 'For named answers, until a time.',
      'no-report': 'On the facts as they stand at this moment.',
    },
    cannotYet: 'While it cannot be told whether a report is due, nobody can sign that none is.',
    until: 'Wait until',
    untilHint: (time: string, zone: string) =>
      `At the latest ${time}, the earliest time at which it can be due (${zone}).`,
    untilAny: (zone: string) => `By the clocks of the place (${zone}).`,
    waitedFor: 'What is waited for',
    other: 'Something else that is waited for',
    otherHint: 'May be left out.',
    reason: 'Reason',
    reasonHint: 'Facts that bear on the duty. Not whose fault it was.',
    reasonMay: 'May be left out.',
    counsel: 'Counsel who was asked',
    counselHint: 'Name. The law calls for a report on these facts, so counsel is asked first.',
    as: (name: string, role: string) => `Signed as ${name}, ${role}.`,
    lasts: 'A decision is never changed: a later one takes its place.',
    submit: { report: 'Sign: report', wait: 'Sign: wait', 'no-report': 'Sign: no report due' },
    choose: 'Choose what is signed.',
    chooseTime: 'Choose a day and a time.',
    refused: 'It was not signed',
    fixes,
    stale: 'It was determined again since you opened this.',
    staleSame: 'Nothing that bears on this incident’s duties changed.',
    staleGo: 'I have read it: go on with what stands now',
    done: (what: string) => `Signed: ${what}.`,
  },

  standing: {
    report: (who: string, time: string) => `Signed by ${who}, ${time}: report.`,
    wait: (who: string, time: string, until: string) => `Signed by ${who}, ${time}: wait until ${until}.`,
    'no-report': (who: string, time: string) =>
      `Signed by ${who}, ${time}: no report due on the facts of that time.`,
    waitsFor: 'Waits for',
    reason: (reason: string) => `Reason: ${reason}`,
    counsel: (name: string) => `Counsel asked: ${name}`,
  },

  filing: {
    title: 'Record a filing',
    lead: 'A report or notice that was made. One report to a state may answer the federal rule too (33 CFR 173.59).',
    form: 'What was made',
    forms,
    at: 'When it was made',
    atHint: 'Leave empty for: just now.',
    way: 'How',
    ways,
    jurisdiction: 'Authority of',
    coastGuard: 'Coast Guard',
    to: 'Made to',
    toHint: 'The authority, and the person there where known.',
    filedBy: 'Made by',
    filers,
    filer: 'Name of whoever made it',
    confirmation: 'Confirmation',
    confirmationHint: 'Number or words by which the authority confirmed it. May be left out.',
    copy: 'Copy among the evidence',
    noCopy: 'No copy yet',
    remark: 'Remark',
    vessel: 'For the craft',
    satisfies: 'What it answers',
    satisfiesNone: 'No duty of this craft is answered by that form at that authority.',
    replaces: 'In the place of a filing that was recorded wrongly',
    replacesNone: 'No: it is a new one',
    submit: 'Record the filing',
    done: 'The filing is recorded.',
    choose: 'Choose',
    missing: 'Choose or write it.',
    fileThis: 'Record its filing',
  },

  operatorNotice: {
    title: 'What the operator was told',
    lead: 'A person tells the operator; the desk sends nothing.',
    bereaved:
      'Somebody aboard died or is missing: send the family no notice. The owner’s own report is filed (33 CFR 173.55(c)).',
    vessel: 'Operator of',
    told: 'Were they told that they must report?',
    toldYes: 'Yes, they were told',
    toldNo: 'No, not told',
    toldBy: 'By whom',
    toldByHint: 'Who told them, or who knows that nobody did.',
    way: 'How',
    wayHint: 'In person, by phone, by mail. May be left out.',
    saysFiled: 'Do they say that it was filed?',
    confirmation: 'Confirmation that they name',
    words: 'What was said',
    submit: 'Note it',
    done: 'Noted.',
  },

  call: {
    title: 'Log a call about the law',
    lead: 'Assume that the other side will read this: write the answer about the duty. Advice of counsel belongs among the privileged notes.',
    with: 'With',
    agency: 'The agency',
    counsel: 'Counsel',
    who: 'Who',
    whoHint: 'Name, and office or firm.',
    said: 'What was said about the duty',
    duties: 'About',
    dutiesMissing: 'Tick the duties that it was about.',
    at: 'When',
    submit: 'Log the call',
    done: 'The call is logged.',
  },
};
