/** What lists of things share: forms, faults, versions. */
export const lists = {
  look: 'Look at the marked fields: it was not taken as it is.',
  amount: 'Give an amount in US dollars, such as 2500 or 2500.50.',
  commas: 'With commas between them.',
  add: (one: string) => `Add: ${one}`,
  takeOut: (one: string, number: number) => `Take out: ${one} ${number}`,
  one: (one: string, number: number) => `${one} ${number}`,
  more: 'Show more',
  nothing: 'nothing',
  changed: 'Kept as changed.',
  undone: 'Put back as it was before.',
  unchanged: 'Nothing was changed.',
  cancel: 'Leave it as it is',
  conflict: {
    title: 'Somebody else changed it while you were writing. Both are here.',
    mine: 'Yours',
    theirs: 'Theirs, as it stands now',
    takeTheirs: 'Take theirs, and write on from there',
    sendMine: 'Put mine in place of theirs',
  },
  noSignal: 'There is no signal. It can be kept on this device and sent by itself later.',
  keepHere: 'Keep it here and send it later',
  keptHere: 'Saved on this device, not yet sent.',
  versions: {
    title: 'As it was',
    lead: 'Every version is kept. Incidents speak of a thing as it was on their day.',
    day: 'As it was on',
    none: (day: string) => `It was not entered yet on ${day}.`,
    asOf: (number: number, when: string, who: string) => `Version ${number}, entered ${when} by ${who}`,
    changes: 'What changed',
    first: 'Entered for the first time',
    from: (label: string, was: string, is: string) => `${label}: from ${was} to ${is}`,
  },
};

export type ListsWords = typeof lists;
