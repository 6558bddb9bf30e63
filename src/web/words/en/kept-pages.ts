/** Pages of stations, places and policies, which managers keep and the others read. */
export const keptPages = {
  managersOnly: 'Managers and administrators add to this list. Ask one of them.',
  entered: 'What is entered',
  change: 'Change what is entered',
  keep: 'Keep the change',
  ended: (day: string) => `Ended on ${day}. It stays in every record.`,
  none: 'Not entered',
  retired: 'Show also what has ended',
  hidden: 'It then leaves the lists, and stays in every record.',
};
