/** The page on which anybody checks a packet. */
export const check = {
  title: 'Check a packet',
  lead: 'You received a file of an incident and want to know whether it is as it was sent. It stays on this device: nothing of it is uploaded.',
  file: 'The packet (a file that ends in .zip)',
  head: 'The head of the log that you had before (optional)',
  headHint: 'A number, a colon and 64 letters and digits, as an earlier packet or message told it.',
  headFault: 'That is no head: it looks like 167:8cf7… with 64 letters and digits after the colon.',
  roots: {
    title: 'Certificates for time stamps (optional)',
    label: 'A file of certificates that you trust (PEM)',
    hint: 'Where the packet has a time stamp, its certificate must then lead to one of these. Without them, whose it is stays open.',
    fault: 'That file holds no certificate: a file in PEM has lines with BEGIN CERTIFICATE.',
  },
  button: 'Check it',
  noFile: 'Choose the packet first.',
  working: (done: string, total: string) => `Looked at ${done} of ${total}`,
  good: 'Everything in this packet fits together.',
  bad: 'This packet is not as it was made.',
  unreadable: 'This is no packet that can be checked.',
  noArchive:
    'The file is no ZIP archive, or it broke off on its way, or a part of it was changed so that it cannot be unpacked. Ask the sender for it again.',
  said: 'What the check found',
  means: 'What that means',
  meansGood:
    'Every file is the one that the packet’s own list names, and every value shown is the one that its log holds. Whoever changes a packet can make the list anew: that it is the one that was sent, you know once the head above is the one that the sender names by telephone, or that you had before. It does not say that what people told is true.',
  meansBad:
    'Do not rely on it. Tell the sender which lines stand above, and ask for a new packet. The sender keeps each packet as it was sent.',
  another: 'Check another',
  sizes: ['bytes', 'kB', 'MB', 'GB'],
};
