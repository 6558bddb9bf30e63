/** The own PIN, and whose name is picked on a shared device. */
export const pin = {
  title: 'Your PIN',
  lead: 'On a shared phone you pick your name, and confirm with your PIN that the entries are yours.',
  has: 'You have a PIN. A new one takes its place.',
  password: 'Present password',
  pin: 'New PIN',
  pinHint: '4 to 8 digits. No run, and not one digit alone.',
  again: 'The same PIN once more',
  notSame: 'Not the same as the PIN above.',
  button: 'Keep this PIN',
  done: 'Your PIN is kept.',
  toPassword: 'Change your password',
  toPin: 'Your PIN for shared phones',
  who: {
    title: 'Who is writing?',
    lead: 'Pick your name. What is entered on this device then stands under it.',
    signedIn: (name: string) => `You are signed in as ${name}: what you enter stands under that name.`,
    onDuty: 'On today',
    empty:
      'Nobody is on the roster today. Entries then stand under the device alone; a manager keeps the roster under People.',
    pick: 'No name picked',
    picked: (name: string) => `${name} is writing`,
    since: (clock: string) => `Since ${clock}, not confirmed yet.`,
    confirmed: (clock: string) =>
      `Confirmed ${clock}. What is entered from now on waits for the next confirmation.`,
    pin: 'PIN',
    confirm: 'They are mine: confirm',
    confirmLead: 'Confirms what was entered on this device under your name since you picked it.',
    noPin: 'Without a PIN, sign in once and choose one under your name.',
    other: 'Somebody else writes',
    put: (name: string) => `${name} is not picked any more. What they entered stays in their name.`,
    duties: {
      'shift-lead': 'shift lead',
      dock: 'dock',
      'check-in': 'check-in',
      briefing: 'briefing',
      guide: 'guide',
      rescue: 'rescue',
      maintenance: 'maintenance',
      office: 'office',
    },
  },
};

export type PinWords = typeof pin;
