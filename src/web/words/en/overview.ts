/** One incident at a glance. */
export const overview = {
  title: (reference: string) => `Incident ${reference}`,
  titleWithout: 'Incident',
  status: { open: 'Open', closed: 'Closed' },
  opened: (time: string) => `opened ${time}`,
  notSaid: 'Not said yet',
  known: 'What is known',
  what: 'What',
  when: 'When',
  where: 'Where',
  craft: 'Craft',
  people: 'People',
  told: 'First call',
  person: 'Somebody, not named yet',
  duties: 'What the law calls for',
  dutyCount: (word: string, count: number) => `${count} ${word}`,
  outcomes: {
    required: 'required',
    undetermined: 'cannot tell yet',
    'not-required': 'not required on these facts',
  },
  undecided: (count: number) =>
    count === 1 ? 'Nobody has decided about 1 of them.' : `Nobody has decided about ${count} of them.`,
  noDuties: 'Nothing was determined yet.',
  openDuties: 'Open the duties',
  sections: 'The record',
  sectionsLead: 'In any order, by whoever knows. Each says what the official report still lacks of it.',
  lacks: (count: number) =>
    count === 1 ? 'The official report still lacks 1 line' : `The official report still lacks ${count} lines`,
  lackState: { missing: 'Missing', unknown: 'Not known' },
  version: { none: 'Nobody has written here', begun: 'Begun', finished: 'Finished' },
  by: (person: string, time: string) => `${person}, ${time}`,
  aDevice: 'a shared device',
  writing: 'You have begun to write here; not saved yet',
  onlyHere: 'Saved on this phone, not yet sent',
  pages: 'More about this incident',
};

export type OverviewWords = typeof overview;
