import MailComposer from 'nodemailer/lib/mail-composer';
import type { Sender } from '../mail-config.js';
import type { Letter } from './mail-carrier.js';

/** The mail as a message (RFC 5322), to the byte the same whenever it is composed. */
export function composeLetter(letter: Letter, from: Sender): Promise<Buffer> {
  return new MailComposer({
    from,
    to: { name: '', address: letter.to },
    subject: letter.subject,
    messageId: `<${letter.messageId}>`,
    date: new Date(letter.queuedAt),
    text: letter.text,
    newline: 'win',
    // RFC 3834: no "out of office" comes back for it.
    headers: { 'Auto-Submitted': 'auto-generated' },
    disableFileAccess: true,
    disableUrlAccess: true,
  })
    .compile()
    .build();
}
