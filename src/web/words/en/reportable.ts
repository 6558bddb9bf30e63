/** What stands beside the duties: what nobody asked, what is to be done with nothing to file, and if it is reportable at all. */
export const reportable = {
  notAsked: {
    title: 'Not asked yet',
    lead: 'Nobody has said these, and each could call a further duty up.',
  },
  conduct: {
    title: 'To be done, with nothing to file',
    lead: 'The law asks that something is done or kept. It is work of the follow-up, and nothing is signed or filed for it.',
    none: (count: number) =>
      count === 1
        ? '1 more is not required on these facts.'
        : `${count} more are not required on these facts.`,
  },
  aids: {
    title: 'Is it reportable at all?',
    lead: 'None of this takes a duty away by itself. Only a signed answer of a manager does, with its reason, and only the accident duties of the law that it names.',
    source: (source: string, how: string) => `Source: ${source}, read ${how}.`,
    notKnown: (words: string) => `Not known: ${words}`,
    of: (jurisdiction: string) => `Asked of: ${jurisdiction}`,
    answered: (by: string, at: string, answer: string) => `${by} answered on ${at}: ${answer}.`,
    answers: { reportable: 'reportable', 'not-reportable': 'not a reportable occurrence' },
    fold: 'Sign an answer',
    answer: 'Your answer',
    options: { reportable: 'It is reportable', 'not-reportable': 'It is not a reportable occurrence' },
    optionAbout: 'Takes the accident duties of the law that you name away.',
    laws: 'For whose law',
    reason: 'Why',
    reasonHint: 'What you know, and whom you asked. No names of patients.',
    missing: 'Say it before you sign.',
    refused: 'It was not signed.',
    sign: 'Sign the answer',
    done: 'Signed, and determined again.',
  },
};
