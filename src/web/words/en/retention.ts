/** How long what is kept, and what is due for deletion: for managers. */
export const retention = {
  title: 'Kept long enough',
  lead: 'What the desk has kept through every period that applies. Nothing is ever deleted by itself: a person looks at each, and decides.',
  empty: 'Nothing is due for deletion, and nothing is soon. Nobody has to do anything here.',
  groups: {
    due: {
      title: 'Due: decide',
      lead: 'Every period is surely over, and nothing stops it.',
    },
    stopped: {
      title: 'Stopped',
      lead: 'Every period is over, and something stops the deletion. Nothing of it may go.',
    },
    'cannot-tell': {
      title: 'Cannot be told yet',
      lead: 'The period may be over; a fact is missing that would show it. Until then it is kept.',
    },
    soon: { title: 'Soon due', lead: 'Kept for now.' },
  },
  of: (what: string, of: string) => `${what}: ${of}`,
  month: (month: string) => {
    const [year = 0, number = 1] = month.split('-').map(Number);
    const day = new Date(Date.UTC(year, number - 1, 1));
    return day.toLocaleDateString('en-GB', { month: 'long', year: 'numeric', timeZone: 'UTC' });
  },
  kept: (day: string) => `To be kept through ${day}.`,
  keptBetween: (from: string, to: string) =>
    `To be kept through ${from} at least, and at most through ${to}.`,
  keptNobodyKnows: (from: string) =>
    `To be kept through ${from} at least; how long at most, nobody can tell.`,
  keptUntil: (day: string) => `Kept by decision through ${day}.`,
  openIncident: 'Open the incident',
  longest: 'Longest period',
  there: 'What is there',
  counts: {
    fields: (n: number) => (n === 1 ? '1 field of the record' : `${n} fields of the record`),
    files: (n: number) => (n === 1 ? '1 file' : `${n} files`),
    privileged: (n: number) => (n === 1 ? 'notes for counsel' : `notes for counsel (asked for ${n} times)`),
    packets: (n: number) => (n === 1 ? '1 packet or first notice' : `${n} packets and first notices`),
    drafts: (n: number) => (n === 1 ? '1 draft' : `${n} drafts`),
    outings: (n: number) => (n === 1 ? '1 outing' : `${n} outings`),
    mails: (n: number) => (n === 1 ? '1 mail' : `${n} mails`),
  } as Readonly<Record<string, (n: number) => string>>,
  stops: 'What stops it',
  missing: 'What is missing',
  periods: 'Every period, with its source',
  period: (months: number, end: string) => `${tellMonths(months)}, through ${end}`,
  periodOpen: (months: number) => `${tellMonths(months)}; nobody can tell from when`,
  mayApply: 'May apply',
  choice: 'Our own choice, no law',
  read: (words: string) => `read ${words}`,
  decide: {
    delete: 'Delete for good',
    keep: 'Keep it longer',
    goes: 'What goes',
    stays: 'What stays',
    backups:
      'Copies of the desk that were made before hold it still. Delete those folders too, or wait until they are deleted.',
    lastCopy: (when: string) => `The latest copy that was checked is of ${when}.`,
    noCopy: 'No copy that was checked is known here; others may have made some.',
    phones: 'What still waits on a phone, was printed or was sent is out of the reach of the desk.',
    reason: 'Why',
    reasonHint: 'It stays in the log, under your name. Name no person in it.',
    until: 'Keep it through',
    counsel: 'Counsel who directed it',
    directedOn: 'Day of the direction',
    counselHint: 'Notes that a lawyer asked for go on the direction of counsel alone.',
    sure: (what: string) => `Delete for good: ${what}?`,
    sureText: 'This cannot be undone, by nobody. The log keeps that it was deleted, by whom, when and why.',
    yes: 'Delete it for good',
    changed: 'It changed after you saw it. Look at it again before you decide.',
    readAgain: 'Read the list again',
    look: 'Look at what is marked above.',
    deleted: (what: string) => `Deleted for good: ${what}.`,
    keptLonger: (what: string) => `Kept longer: ${what}.`,
  },
  kinds: {
    title: 'How long what is kept',
    lead: 'The longest period that applies or may apply counts. A period of a law is not for the business to change; its own choice can be made longer, never shorter.',
    majority: (citation: string) =>
      `Periods of a minor begin when they come of age (${citation}). Of somebody whose age nobody knows, as if they had been born on the day.`,
    keptFor: (kinds: readonly string[]) => `So are kept: ${kinds.join('; ')}.`,
    own: (months: number, why: string) => `Lengthened to ${tellMonths(months)}: ${why}`,
    lengthen: 'Lengthen our own choice',
    months: 'Months',
    save: 'Save the longer time',
    saved: 'Saved. The list counts by it from now on.',
    starts: {
      occurrence: 'from the day it happened',
      majority: 'from majority of the youngest concerned',
      'year-end': 'from the end of that year',
      closing: 'from the day it was closed',
      'employment-end': 'from the end of the employment',
      'packet-made': 'from the latest packet',
      return: 'from the return of the craft',
      saved: 'from when it was last saved',
      queued: 'from when it was written',
    },
    of: (months: number, from: string) => `${tellMonths(months)} ${from}`,
  },
  decided: {
    title: 'What was decided',
    empty: 'Nobody has decided anything here yet.',
    delete: 'Deleted',
    keep: 'Kept longer',
    through: (day: string) => `through ${day}`,
    by: (who: string, when: string) => `${who}, ${when}`,
    counsel: (name: string, day: string) => `On the direction of ${name}, ${day}.`,
  },
};

function tellMonths(months: number): string {
  if (months % 12 !== 0) return months === 1 ? '1 month' : `${months} months`;
  return months === 12 ? '1 year' : `${months / 12} years`;
}
