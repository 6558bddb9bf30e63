/** The law, and the page that tries it. */
export const law = {
  title: 'Which reports does the law call for?',
  lead: 'Not legal advice. Confirm with the state agency and counsel. Nothing sent from this page is kept.',
  samples: 'Start from a sample. All three are invented.',
  noSamples: 'The samples could not be loaded. Paste or type the facts instead.',
  facts: 'Facts of the occurrence, as JSON',
  factsHint: 'Change anything, then press Determine.',
  lookAtFaults: 'Something in here cannot be used: the faults are named under No determination.',
  determine: 'Determine',
  determining: 'Determining…',
  answer: 'Answer',
  nothingYet:
    'No determination yet. It will show each duty, whether it is required, what to do, who reports, by when, and what is still unknown that could change it.',
  determination: 'Determination',
  noDetermination: 'No determination',
  unreachable: 'The service could not be reached',
  checkConnection: 'Check the connection and try again.',
  unreadable: 'The answer could not be read',
  tryAgain: 'Try again.',
  nothingDetermined: 'Nothing was determined. Until it is, treat a report as due.',
  byProgram: 'The same by program',
  lawInUse: 'The law in use',
};
