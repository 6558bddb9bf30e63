/**
 * The card for everybody who works at the water. The sentences are our own and for orientation (common practice, no
 * source), but for the law that is named beside them.
 */
export const whatToSay = {
  title: 'What to say',
  lead: 'To anyone who asks after an accident. Care: yes. Blame, promises and copies: no.',
  first: 'People first. Nobody waits for an answer while somebody needs help.',
  yes: {
    title: 'Say this',
    parts: [
      {
        title: 'Care',
        lines: [
          '“Are you all right? Does anything hurt?”',
          '“Help is on its way. I am staying with you.”',
          '“I am sorry that this happened to you.”',
          '“Here is water, shade and a telephone. Whom shall we call?”',
        ],
      },
      {
        title: 'The truth, and only what you saw',
        lines: [
          '“This is what I saw myself.”',
          '“I do not know.” It is a good answer. Do not guess, and do not fill a gap.',
        ],
      },
    ],
  },
  no: {
    title: 'Do not say this',
    parts: [
      {
        title: 'Blame',
        lines: [
          '“It was our fault”, “it was yours”, “it was theirs”.',
          '“That one has had trouble before”, “they were going far too fast”: nothing about why.',
        ],
      },
      {
        title: 'Promises',
        lines: [
          '“We will pay”, “the insurance pays”, “you will get your money back”.',
          '“You owe us for that”, “your deposit is gone”.',
          '“You do not need a doctor”, “nobody has to report this”.',
        ],
      },
      {
        title: 'Copies',
        lines: [
          'No pictures, papers, statements or recordings out of your hand, but for the sheets named below.',
          'Nothing posted, nothing sent to a friend. What is wrong with somebody is told only to those who care for them.',
        ],
      },
    ],
  },
  asked: {
    title: 'If somebody asks',
    who: 'Who asks',
    answer: 'What you answer',
    rows: [
      {
        who: 'An officer',
        answer:
          'Answer truthfully what you saw. Give the officer’s sheet from the incident. For other papers, call the manager at once. Touch and hide nothing.',
      },
      {
        who: 'The other boater, somebody hurt, the owner of what was damaged',
        answer:
          'Name, address and the numbers of the craft: the sheet for the other operator (46 U.S.C. 2303(a)(2)). Nothing more.',
      },
      {
        who: '“Whose fault was it?”',
        answer: '“I do not know, and I do not guess. We are writing down what happened.”',
      },
      { who: '“Will you pay?”', answer: '“I cannot say. The manager speaks with you: here is the number.”' },
      {
        who: '“Do I have to report it?”',
        answer:
          '“The operator of a craft may have to, by law (33 CFR 173.55). Ask the manager; I cannot tell you.”',
      },
      {
        who: '“May I have a copy?”',
        answer: '“Not from me. I write down that you asked, and the manager answers.”',
      },
      {
        who: 'Family',
        answer:
          '“Somebody will speak with you at once.” Bring the manager. That somebody died is told by the authority, never by us first.',
      },
      { who: 'Press, people passing by', answer: '“The manager speaks for us.”' },
    ],
  },
  write: {
    title: 'Then write it down',
    lines: [
      'Who asked, what you answered, and when: in the incident, the same day, in the words that were used.',
      'What somebody tells you, in their words, without your opinion of it.',
    ],
  },
  manager: 'The manager’s number:',
  not: 'This card is no legal advice. What counsel or the manager tells you comes before it.',
};

export type WhatToSay = typeof whatToSay;
