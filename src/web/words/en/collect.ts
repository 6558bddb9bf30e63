/** For somebody outside who was sent a link: an adjuster, a lawyer, a renter. */
export const collect = {
  title: 'A packet for you',
  lead: 'Give the passcode that you were told another way than the mail.',
  passcode: 'Passcode',
  passcodeHint: 'Ten letters and digits; capitals, spaces and the line between them do not matter.',
  missing: 'Give the passcode.',
  open: 'Open',
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
  downloadNote: 'For half an hour without the passcode. A download that breaks off begins anew.',
  check: 'Check that it is whole and unchanged, without sending it anywhere',
  nothing: 'Nothing opens here',
};

export type CollectWords = typeof collect;
