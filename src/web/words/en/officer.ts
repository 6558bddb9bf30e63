/** What stands on the sheets; they are given to others, so that the English stands on them in every language. */
export const sheetTerms = {
  kind: 'Kind',
  look: 'Make, model, colours',
  hullNumber: 'Hull number (HIN)',
  registrationNumber: 'Registration number',
  owner: 'Owner, address',
  operator: 'Operator: name, address, telephone',
  operatorShort: 'In charge of it: name, address',
  aboard: 'People aboard',
  riders: 'Others aboard',
  agreement: 'Rental agreement',
  insurer: 'Insurer',
  when: 'When',
  position: 'Position',
  place: 'Place',
  accounted: 'Everyone accounted for',
  missing: 'Missing',
  dead: 'Died',
  contact: 'Whom to ask at our house',
  unknown: 'Not written down yet',
  noName: 'Name not written down yet',
  craft: 'Craft',
  scene: 'When, where and who',
};

/** Phrases on a sheet, in English for whoever is given it. */
export const onSheet = {
  about: (time: string) => `about ${time}`,
  within: (minutes: number) => `${minutes} minutes either way`,
  between: (from: string, until: string) => `between ${from} and ${until}`,
  asOf: (time: string, version: number) => `As of ${time}, version ${version} of the record`,
  law: 'Given under 46 U.S.C. 2303(a)(2): name, address and identification of the vessel.',
};

export const officer = {
  title: (reference: string) => `Officer’s sheet, ${reference}`,
  titleWithout: 'Officer’s sheet',
  lead: (time: string, version: number) => `The record as of ${time}, version ${version}.`,
  zone: (zone: string) => `Times are of ${zone}.`,
  about: 'Turn the phone round, or print it. Answer truthfully, and only what you saw yourself.',
  left: 'Injuries, care and dates of birth are left off: the officer asks the people themselves.',
  noCraft: 'No craft is named in this incident yet.',
  toIncident: 'To the incident',
  toOther: 'Sheet for the other operator',
  toOfficer: 'Officer’s sheet',
  toSay: 'What to say, and what not',
  printedTo: 'Given to (name, agency, badge, time)',
  owner: {
    lead: 'The record does not say who owns our craft. Write it once; this device keeps it for the next sheet.',
    name: 'Owner of our craft: name',
    address: 'Address of the owner',
    lacksName: 'Write the name of the owner.',
    save: 'Put it on the sheet',
  },
  give: {
    title: 'Note that it was given',
    lead: 'Whatever leaves the house is written down: to whom, when, by whom. It cannot be altered afterwards.',
    officer: 'Which officer',
    another: 'Another officer',
    name: 'Name of the officer',
    agency: 'Agency',
    badge: 'Badge or number',
    basis: 'Why it was given',
    bases: {
      asked: 'The officer asked for it',
      offered: 'We offered it',
      subpoena: 'On a subpoena',
      warrant: 'On a warrant',
    },
    lacksOfficer: 'Write the name, or the badge or number, of the officer.',
    lacksBasis: 'Say why it was given.',
    submit: 'Given now: note it',
    done: 'Noted.',
    notKept: 'It could not be kept on this phone. Write it on paper.',
  },
  given: {
    title: 'Given so far',
    none: 'Nothing was noted as given yet.',
    by: (name: string) => `by ${name}`,
    badge: (badge: string) => `badge ${badge}`,
    unnamed: 'Nobody wrote down to whom',
    waiting: 'Saved on this device, not yet sent',
  },
};

/** What goes into the record, which is in English: that the sheet was given, and nothing of what stood on it. */
export const givenInRecord = {
  channel: 'Sheet for the other operator',
  to: {
    'other-operator': 'whoever is in charge of the other vessel',
    hurt: 'somebody hurt',
    owner: 'the owner of what was damaged',
  },
  summary: (to: string, craft: string, version: number, asOf: string) =>
    `Name, address and identification of ${craft || 'our craft'} given to ${to} under 46 U.S.C. 2303(a)(2), from version ${version} of the record, as of ${asOf}.`,
};

export const otherOperator = {
  title: (reference: string) => `For the other operator, ${reference}`,
  titleWithout: 'For the other operator',
  law: '46 U.S.C. 2303(a)(2): whoever is in charge of a vessel gives name, address and the vessel’s identification to whoever is in charge of the other vessel, to anyone hurt, and to the owner of damaged property.',
  nothing:
    'Nothing else stands here, and nothing else is due: no telephone, no insurance, no word on who is hurt or why.',
  give: {
    title: 'Note that it was given',
    to: 'To whom',
    tos: {
      'other-operator': 'In charge of the other vessel',
      hurt: 'Somebody hurt',
      owner: 'Owner of what was damaged',
    },
    name: 'Their name',
    nameHint: 'As they said it. May be left out.',
    lacksTo: 'Say to whom it was given.',
  },
};

export type SheetTerms = typeof sheetTerms;
export type OfficerWords = typeof officer;
export type OtherOperatorWords = typeof otherOperator;
