import type { Standing } from '../../../../shared/outing/outing.js';
import type { Duty } from '../../../../shared/wire/accounts-roster.dto.js';

/** The first page: what runs, what is open, what is out, who is on. */
export const today = {
  title: 'Today',
  lead: (time: string, zone: string) => `${time}, times in ${zone}.`,
  noClock: 'No clock runs',
  noClockAbout: 'No report that is or may be due is unsettled.',
  call: 'Call for help',
  outAndBack: 'Out and back',
  whatToSay: 'What to say',
  unsent: 'Only on this device',
  clocks: {
    title: 'Clocks',
    all: 'All of them in the register',
    none: 'Every report is filed, or signed as not due.',
    atOnce: 'At once',
    ifRequired: 'if it is required',
    supplement: 'supplement what was filed',
    waits: (time: string) => `decided to wait until ${time}`,
    closed: 'the incident is closed',
    noTime: 'No time known',
    outcomes: {
      required: 'Required',
      undetermined: 'Cannot tell yet',
      'not-required': 'Not required any more',
    },
  },
  open: {
    title: 'Open calls and incidents',
    none: 'No incident is open.',
    all: 'All incidents in the register',
    said: (words: string) => `“${words}”`,
    nothing: 'Nothing is known yet',
    opened: (time: string) => `opened ${time}`,
    tasks: (open: number, overdue: number) =>
      `${open} open ${open === 1 ? 'task' : 'tasks'}${overdue === 0 ? '' : `, ${overdue} overdue`}`,
  },
  water: {
    title: 'On the water',
    standings: {
      late: 'late',
      'due-not-known': 'out, due time not known',
      out: 'out',
      'not-known': 'nobody wrote it down',
      in: 'in',
    } satisfies Record<Standing, string>,
    notBack: (unit: string) => `${unit} is not back`,
    notBackSince: (time: string) => `looked for since ${time}`,
    notBackEnded: 'Found or given up: say whether it is an incident',
    late: (unit: string) => `${unit} is late`,
    fleetEmpty: 'The fleet has no craft yet.',
    toWater: 'To out and back',
    held: (names: string) => `Held: ${names}`,
    noneHeld: 'No craft is held.',
    toFleet: 'To the fleet',
  },
  tasks: {
    title: 'Due within 24 hours',
    none: 'Nothing is due within 24 hours.',
    more: 'More are due: all in the follow-up',
    all: 'To the follow-up',
    handOver: 'To the shift hand-over',
    nobody: 'nobody has it yet',
  },
  roster: {
    title: 'Who is on',
    none: 'Nobody is on the roster for today.',
    toPeople: 'To the roster',
    outOfDate: (what: string) => `out of date: ${what}`,
    duties: {
      'shift-lead': 'shift lead',
      dock: 'dock',
      'check-in': 'check-in',
      briefing: 'briefing',
      guide: 'guide',
      rescue: 'rescue',
      maintenance: 'maintenance',
      office: 'office',
    } satisfies Record<Duty, string>,
  },
  requests: {
    title: 'Papers that ask for records',
    none: 'No request is open.',
    all: 'To the requests',
    more: 'More are open: to the requests',
  },
  backups: {
    title: 'Last checked copy',
    none: 'No copy of this desk was ever made and checked. Whoever runs the service makes one with “npm run backup”.',
    fine: (incidents: number, files: number) =>
      `Checked, nothing wrong: ${incidents} ${incidents === 1 ? 'incident' : 'incidents'}, ${files} ${files === 1 ? 'file' : 'files'}.`,
    faults: (faults: number) =>
      `The check found ${faults} ${faults === 1 ? 'fault' : 'faults'}. Make another copy, and look at what “npm run backup” says.`,
    old: 'Older than a week: make another.',
    where: (folder: string) => `Kept in ${folder}`,
  },
  mail: {
    title: 'Mail',
    failed: (count: number) => `${count} could not be sent`,
    uncertain: (count: number) => `Of ${count} nobody knows whether it arrived`,
    none: 'All mail went out.',
    toMail: 'To the mail',
  },
  start: {
    counsel: 'Incidents assigned to you',
    counselNone: 'No incident is assigned to you yet. A manager assigns it.',
    device: (name: string) =>
      `This device is ${name}. It can call for help and add to the record; it shows no record.`,
    signIn: 'Sign in to read the records',
    enrol: 'Enrol this device',
    tryLaw: 'Try the law',
  },
};

export type TodayWords = typeof today;
