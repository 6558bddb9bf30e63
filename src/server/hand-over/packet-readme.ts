import { pagePrefix } from './paper/paper-matter.js';
import { type Manifest, PACKET_FILES } from '../../../shared/hand-over/packet.js';

/** What a stranger reads first: what is here, and how to check it with tools that every computer has. */
export function packetReadme({
  reference,
  recipient,
  purpose,
  madeAt,
  madeBy,
  head,
  packet,
}: Omit<Manifest, 'files'>): string {
  const { manifest, paper, record, schema, withheld, proof, profile, workbook } = PACKET_FILES;
  return `FILE OF INCIDENT ${reference}

For:      ${recipient.name}
Purpose:  ${purpose}
Made:     ${madeAt} by ${madeBy}
Packet:   ${packet}

Anyone hurt, missing or in danger: emergency services first. This is no legal advice. What is not written here was not
recorded or is withheld: it is never a no.

WHAT IS HERE
${paper}          the file on paper, to be read first; each page bears ${pagePrefix({ reference, packet })} and its number
${record}         the record as far as it leaves, with how each fact is known; ${schema} describes it
${workbook}         the same as a workbook, one sheet a subject
${withheld}       what is masked or not here, and why
evidence/           photographs and other files, each under its number; originals are as they arrived, byte for byte
${manifest}       size, SHA-256, source and custody of every file
${proof}          what proves that the record is as it was written
${profile}        the rules by which it was decided what leaves

HOW TO CHECK IT
1. That no file was changed since the packet was made. ${manifest} names each file with its SHA-256. Compare them:
     Linux     sha256sum FILE
     macOS     shasum -a 256 FILE
     Windows   certutil -hashfile FILE SHA256
2. That the record is as it was written. With the program of the incident desk:
     npm run -s verify -- PACKET.zip
   It names every file and field that was changed. By hand: each value in ${proof} is shown with a salt. The SHA-256 of
   the line ["incident-desk/field/1","SALT","PATH",VALUE] (JSON without spaces, by RFC 8785) is the commitment of that
   field. The SHA-256 of a zero byte and the canonical JSON of an amendment is a leaf of a Merkle tree (RFC 6962, section
   2.1), and its path leads to this head:
     amendments  ${head.size}
     root        ${head.root}
3. That the log is the true one. The head proves nothing by itself: whoever has this packet could have been given another
   log. Write the head down with today's date, or keep the message that brought it. A later packet proves that it grew
   from this head, and so that nothing of before that day was changed since. Of the time before somebody outside had a
   head, nobody can prove anything by it.

What is masked or withheld cannot be guessed from the proof: the salt stays with the value.
`;
}
