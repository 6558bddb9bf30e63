/** What is only on this device, and what becomes of it. */
export const unsent = {
  title: 'Only on this device',
  lead: 'Written here and not yet with the service. It is sent by itself, in this order, as soon as there is signal.',
  badge: (count: number) => `${count} unsent`,
  list: 'What waits',
  empty: 'Nothing waits: everything that was written on this device has arrived.',
  sendNow: 'Try to send now',
  trying: 'Trying to reach the service…',
  notReached: 'The service was not reached. What waits stays here and is tried again by itself.',
  unreadable:
    'What this device keeps cannot be read. Another window of the desk may hold it: close the others and try again.',
  names: { call: 'Call', record: 'Record', note: 'Note for the timeline' } as Readonly<
    Record<string, string>
  >,
  part: (name: string, section: string) => `${name}: ${section}`,
  written: (when: string, who: string) => `Written ${when} ${who}`,
  byYou: 'by you',
  byOther: 'by somebody else',
  byNobody: 'with no name picked',
  file: (name: string, size: string) => `${name}, ${size}`,
  waitsForOpening: 'It waits: the entry that opens the incident was not taken. See to that one first.',
  waitsForPerson:
    'It goes when the person who wrote it signs in here again, so that it stands under the right name. A manager may open it too.',
  see: 'See what it says',
  mine: 'Here',
  theirs: 'With the service now',
  field: 'What',
  nothing: 'nothing',
  conflict: 'Choose what becomes of yours.',
  openSection: 'Open the section and put both together',
  sendOver: 'Put mine in place of theirs',
  sendAgain: 'Send it again as it is',
  keepNote: 'Keep mine as a note on the incident',
  copy: 'Copy the words',
  copied: 'Copied. It can be pasted anywhere; it stays here too.',
  notCopied: 'The browser did not let it be copied. The words stand below: mark them and copy by hand.',
  download: 'Save a copy of the file',
  fileGone: 'The file itself is no longer on this device: the browser has thrown it away.',
  discard: 'Throw it away',
  noteKept: 'Kept as a note on the incident. It is sent like everything else.',
  noteText: (about: string, words: string) =>
    `${about}: written on a device at this time, and not taken as it was.\n${words}`,
  confirm: {
    title: 'Throw it away?',
    text: 'It is nowhere else. Once thrown away, nobody can bring it back.',
    others: (count: number) =>
      count === 1
        ? '1 other entry belongs to it. It stays here, to be copied or thrown away by itself.'
        : `${count} other entries belong to it. They stay here, to be copied or thrown away one by one.`,
    yes: 'Throw it away for good',
    no: 'Keep it',
  },
  discarded: (about: string) => `Thrown away: ${about}.`,
};

export type UnsentWords = typeof unsent;
