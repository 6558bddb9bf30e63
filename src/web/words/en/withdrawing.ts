/** Taking a value out of the record: for the manager alone, in English. */
export const withdrawing = {
  title: 'Withdraw a value',
  lead: 'The content goes from the section, from its history and from every draft, and cannot be brought back. That something stood there, who withdrew it and why stays.',
  field: 'What is withdrawn',
  choose: 'Choose',
  chooseFirst: 'Choose what is withdrawn.',
  reason: 'Why it is withdrawn',
  reasonHint: 'Without repeating it: the telephone number of another person.',
  reasonMissing: 'Say why it is withdrawn.',
  counsel: 'Counsel who directed it',
  counselHint: 'Needed while the incident is held.',
  directedOn: 'Day of the direction',
  withdraw: 'Withdraw it for good',
  done: 'Withdrawn.',
};
