/** For somebody outside who was sent a link: an adjuster, a lawyer, a renter. */
export const collect = {
  title: 'A packet for you',
  lead: 'Give the passcode that you were told another way than the mail.',
  passcode: 'Passcode',
  passcodeHint: 'Ten letters and digits; capitals, spaces and the line between them do not matter.',
  missing: 'Give the passcode.',
  wrong: (left: number) =>
    `That is not the passcode: ${left} ${left === 1 ? 'try is' : 'tries are'} left before the link locks.`,
  open: 'Open',
  opensUntil: (until: string) => `The link opens until ${until}.`,
  over: 'Half an hour is over: give the passcode again.',
  loggedNote: 'That you look and download is written down, and whoever sent it sees that.',
  from: (sender: string) => `From ${sender}`,
  to: 'For',
  why: 'Why',
  about: 'About',
  incident: (reference: string) => `Incident ${reference}`,
  made: 'Made',
  until: 'Opens until',
  files: 'Files in it',
  head: 'Head of the log',
  headAbout: 'Keep it: with it you can show later that what the record said then was not changed.',
  download: 'Download the packet (ZIP)',
  downloadNote:
    'For half an hour without the passcode. If the download breaks off, press again: it begins anew, and only a whole one counts as collected.',
  downloadNoteSignedIn:
    'If the download breaks off, press again: it begins anew, and only a whole one counts as collected.',
  check: 'Check that it is whole and unchanged, without sending it anywhere',
  nothing: 'Nothing opens here',
  closed: {
    expired: 'The link has expired: ask whoever sent it for a new one.',
    revoked: 'The link was taken back: ask whoever sent it.',
    locked:
      'The link is locked after too many wrong passcodes, and whoever sent it can see that: ask them for a new one.',
    never:
      'There is nothing to collect at this address: it may have been cut off. Open the link of the mail whole.',
  },
  counsel: {
    lead: 'It holds notes that a lawyer asked for, and opens for that lawyer alone.',
    signIn: 'Sign in as the lawyer it was sent to',
    wrongRole: (name: string) =>
      `${name} is signed in here, and is no lawyer of this incident. It opens for the lawyer alone that it was sent to.`,
    signOut: 'Sign out',
    as: (name: string) => `Signed in as ${name}.`,
  },
};

export type CollectWords = typeof collect;
