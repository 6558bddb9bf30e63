/** Words that every page shares. */
export const common = {
  deskName: 'Incident desk',
  skip: 'Skip to the page',
  pages: 'Pages',
  morePages: 'More',
  call: 'Call for help',
  caution: {
    help: 'Anyone hurt, missing or in danger: emergency services first.',
    law: 'Not legal advice. Confirm with the state agency and counsel.',
    call911: 'Call 911',
    vhf: 'VHF channel 16',
    label: 'Emergency',
  },
  answer: { yes: 'Yes', no: 'No', unknown: 'Not known yet', 'not-applicable': 'Does not apply' },
  /** Between events in the order in which they happened. */
  then: ', then ',
  loading: 'Loading…',
  again: 'Try again',
  undo: 'Undo',
  close: 'Close',
  print: 'Print',
  printed: (time: string, who: string) => `Printed ${time} by ${who}.`,
  signIn: 'Sign in',
  signOut: 'Sign out',
  language: 'Español',
  optional: 'may be left out',
  overdue: 'Overdue',
  trouble: {
    unreachable: 'The service could not be reached. Check the signal and try again.',
    'sign-in': 'Your sign-in has ended. Sign in and try again.',
    'not-yours': 'This is not yours to see or do.',
    'not-there': 'There is nothing at this address.',
    'changed-meanwhile': 'Somebody else changed it while you were writing. Both are kept.',
    refused: 'It was not taken.',
    busy: 'The service cannot do that now. Try again shortly.',
    broken: 'The service failed. Try again.',
  },
  failureNumber: (number: string) => `Number of the failure: ${number}`,
  kept: (time: string) => `No signal. This is what this device kept at ${time}; it may have changed since.`,
  noPermission: {
    title: 'Not yours to see',
    text: (role: string) => `You are signed in as ${role}, and this page is for others.`,
    ask: 'If you need it, ask an administrator of the desk.',
  },
  notFound: {
    title: 'There is no such page',
    text: 'The address may have been cut off. The pages that there are stand at the top.',
  },
  chunkFailed: 'This page could not be loaded. It needs signal once; after that it opens without.',
  newer: { text: 'A newer version of the desk is ready.', use: 'Use it now' },
  photographNotKept: 'The photograph could not be kept on this phone. Keep it in the phone’s own pictures.',
  sending: {
    waiting: 'Saved on this device, not yet sent',
    sending: 'Being sent',
    sent: (time: string) => `Sent ${time}`,
    conflict: 'Changed by someone else while you were writing: both kept',
    refused: 'Not taken by the service',
    waitingCount: (count: number) =>
      count === 1 ? '1 entry is only on this device' : `${count} entries are only on this device`,
    evictable:
      'This browser may throw away what it keeps when it runs short of space. Send soon, and keep the paper.',
    notKept: 'This browser keeps nothing (it needs HTTPS). Without signal, write on paper.',
  },
  roles: { staff: 'staff', manager: 'manager', administrator: 'administrator', counsel: 'counsel' },
};

export type Common = typeof common;
