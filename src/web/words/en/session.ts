/** Sign-in, the own password, enrolment of a device. */
export const session = {
  signIn: {
    title: 'Sign in',
    lead: 'To call for help you need no sign-in on an enrolled phone.',
    name: 'Sign-in name',
    password: 'Password',
    button: 'Sign in',
    again: 'Your sign-in ended',
    againLead: (name: string) => `Nothing that you typed is lost. Sign in again, ${name}, and it goes on.`,
    leave: 'Not now: the page stays as it is',
    already: (name: string, role: string) => `You are signed in as ${name}, ${role}.`,
  },
  password: {
    title: 'Choose a password',
    due: 'Your password was given to you by an administrator. Choose one of your own before anything else.',
    current: 'Present password',
    next: 'New password',
    nextHint: (shortest: number) =>
      `At least ${shortest} characters. Three or four words are easy to keep in mind.`,
    button: 'Keep this password',
    done: 'Your new password is kept. Other sessions of yours have ended.',
  },
  notice: {
    title: 'Where you are told',
    lead: 'Of tasks that are due, and of packets that were collected. Mail holds no names and nothing of a record.',
    mail: 'Mail address',
    phone: 'Telephone',
    button: 'Keep it',
    kept: 'Kept. What is left empty is taken away.',
  },
  enrol: {
    title: 'Enrol this device',
    lead: 'An enrolled phone can call for help and add to the record without a sign-in. It shows no record.',
    code: 'Code',
    codeHint: 'An administrator gets it under People and devices. It works once, for 15 minutes.',
    button: 'Enrol this device',
    enrolled: (name: string) => `This device is enrolled as ${name}.`,
    toCall: 'Go to the call page',
  },
};

export type SessionWords = typeof session;
