/** Names of pages, for the list at the top and for links: one word for one thing. */
export const titles = {
  today: 'Today',
  call: 'Call for help',
  outAndBack: 'Out and back',
  register: 'Register',
  fleet: 'Fleet',
  places: 'Places',
  people: 'People',
  mail: 'Mail',
  pin: 'Your PIN',
  shiftHandOver: 'Shift hand-over',
  followUp: 'Follow-up',
  requests: 'Requests',
  servedPaper: 'A paper was served',
  law: 'Law',
  tryLaw: 'Try the law',
  password: 'Password',
  enrol: 'Enrol this device',
};

export type Titles = typeof titles;
