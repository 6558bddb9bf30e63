/** Of statements, of talks with others since, and of what was written down minute by minute. */
export const statements = {
  title: 'Statements',
  lead: 'What each person said, in that person’s words.',
  fields: {
    '/statements': 'Statements',
    '/statements/*': 'Statement',
    '/statements/*/person': 'Which of the people',
    '/statements/*/name': 'Name, where not listed',
    '/statements/*/takenBy': 'Who took it',
    '/statements/*/startedAt': 'Begun',
    '/statements/*/endedAt': 'Ended',
    '/statements/*/place': 'Where it was taken',
    '/statements/*/present': 'Who else was there',
    '/statements/*/language': 'Language',
    '/statements/*/interpreter': 'Interpreter',
    '/statements/*/words': 'The words',
    '/statements/*/translation': 'Translation',
    '/statements/*/readBack': 'Read back to them?',
    '/statements/*/signed': 'Signed?',
    '/statements/*/original': 'Where the paper or recording is',
    '/statements/*/copyGiven': 'Did they get a copy?',
    '/statements/*/copyGivenAt': 'When they got it',
    '/statements/*/refused': 'Did they refuse?',
    '/statements/*/whyRefused': 'Why they refused',
    '/statements/*/addenda': 'Corrections',
    '/statements/*/addenda/*': 'Correction',
    '/statements/*/addenda/*/at': 'When',
    '/statements/*/addenda/*/by': 'Whose words',
    '/statements/*/addenda/*/takenBy': 'Who wrote them down',
    '/statements/*/addenda/*/words': 'The words of the correction',
  },
  help: {
    '/statements/*/words': 'As they were spoken or written, in that language. They stay as they are.',
    '/statements/*/translation': 'Beside the words, never in their place.',
  },
};

export const contacts = {
  title: 'Talks since',
  lead: 'Who spoke with whom since, and what was promised or demanded.',
  fields: {
    '/contacts': 'Talks, letters and messages',
    '/contacts/*': 'Talk',
    '/contacts/*/at': 'When',
    '/contacts/*/party': 'With whom',
    '/contacts/*/name': 'Name',
    '/contacts/*/person': 'Which of the people',
    '/contacts/*/speaksFor': 'For whom they speak',
    '/contacts/*/channel': 'How',
    '/contacts/*/direction': 'Who began it',
    '/contacts/*/by': 'Who of ours',
    '/contacts/*/summary': 'What was said, in short',
    '/contacts/*/writtenDemand': 'A demand in writing?',
    '/contacts/*/lawyerSpeaks': 'Does a lawyer speak for them?',
    '/contacts/*/paper': 'Where the letter is kept',
    '/contacts/*/promised': 'What we promised',
    '/contacts/*/promisedBy': 'By when',
  },
  help: {
    '/contacts/*/writtenDemand': 'May be the first claim, from which clocks run. Tell the manager today.',
    '/contacts/*/lawyerSpeaks': 'Then nothing is sent to this person by itself any more.',
  },
};

export const timeline = {
  title: 'Minute by minute',
  lead: 'Lines as they were written down, with the radio.',
  fields: {
    '/entries': 'Lines',
    '/entries/*': 'Line',
    '/entries/*/at': 'When',
    '/entries/*/what': 'What',
    '/entries/*/by': 'Who wrote it down',
    '/entries/*/radioChannel': 'Radio channel',
    '/entries/*/speaker': 'Who spoke',
    '/entries/*/spokenTo': 'To whom',
  },
  help: { '/entries/*/what': 'What was seen, done or heard, with the time it was.' },
};

/** What the service itself says of an incident. */
export const incident = {
  title: 'Incident',
  lead: 'What the service itself says of it.',
  fields: {
    '/reference': 'Reference',
    '/openedAt': 'Opened',
    '/status': 'Open or closed',
    '/timeZone': 'Time zone of the business',
    '/sameEventAs': 'The same event as',
  },
  help: {},
};
