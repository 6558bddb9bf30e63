import { type Manifest, type ManifestFile, PACKET_FILES } from '../../../shared/hand-over/packet.js';
import { headText } from '../../../shared/proof/merkle-log.js';
import { tellZonedTime } from '../../../shared/report/tell-value.js';
import { pagePrefix } from './paper/paper-matter.js';

/** What a stranger reads first: what is here, and how to check it with tools that every computer has. */
export function packetReadme(about: Omit<Manifest, 'files'>, timeZone: string, isStamped = false): string {
  const { reference, recipient, purpose, madeAt, madeBy, head, packet } = about;
  const { manifest, paper, record, schema, withheld, proof, profile, workbook, sums, timeStamp } =
    PACKET_FILES;
  return `FILE OF INCIDENT ${reference}

For:      ${recipient.name}
Purpose:  ${purpose}
Made:     ${tellZonedTime(madeAt, timeZone)}, by ${madeBy}
Packet:   ${packet}

Anyone hurt, missing or in danger: emergency services first. This is no legal advice. What is not written here was not
recorded or is withheld: it is never a no.

WHAT IS HERE
${paper}          the file on paper, to be read first; each page bears ${pagePrefix({ reference, packet })} and its number
${record}         the record as far as it leaves, with how each fact is known; ${schema} describes it
${workbook}         the same as a workbook, one sheet a subject
${withheld}       what is masked or not here, and why
evidence/           photographs and other files, if any leave, each under its number; originals byte for byte as they arrived
${manifest}       size, SHA-256, source and custody of every file
${sums}      the same hashes, one line a file
${proof}          what proves that the record is as it was written
${profile}        the rules by which it was decided what leaves
${isStamped ? `${timeStamp}      the time stamp of the head (RFC 3161)\n` : ''}
HOW TO CHECK IT
The short way: on the desk that made it, the page "Check a packet" (/check) reads the ZIP file in your browser, uploads
nothing, and names every file and line that was changed. The same by hand follows.

1. That no file was changed since the packet was made. Unpack the ZIP file, open a command line in its folder, and say:
     Linux      sha256sum -c ${sums}
     macOS      shasum -a 256 -c ${sums}
     Windows    in PowerShell, on one line:
                Get-Content ${sums} | % { $sum, $file = $_ -split '  ', 2; "$file " + $(if ((Get-FileHash -LiteralPath $file).Hash -eq $sum) { 'OK' } else { 'CHANGED' }) }
   It says OK behind each file that was not changed. Then compare that list with ${manifest}, which names each file with
   the same hash and which the list leaves out. One file at a time on Windows: certutil -hashfile FILE SHA256
2. That the record is as it was written. With the program of the incident desk:
     npm run -s verify -- PACKET.zip
   By hand: each line that is shown in ${proof} has a salt. The SHA-256 of
     ["incident-desk/field/1","SALT","PATH",VALUE]
   (JSON without blanks, by RFC 8785, in UTF-8) is what the amendment holds for that line under "from", "to" or "reason".
   For example: printf '%s' 'THAT TEXT' | openssl dgst -sha256
   The digest of that line is the SHA-256 of
     ["incident-desk/change/1","PATH","FROM","TO"]
   and of a line that is not shown the amendment holds the digest alone. The SHA-256 of a zero byte followed by
     {"fields":[DIGESTS IN THEIR ORDER],"format":"incident-desk/amendment/2","header":{HEADER}}
   (written the same way, members by the alphabet) is the leaf of the amendment in a Merkle tree (RFC 6962, section 2.1),
   and its path leads to this head:
     amendments  ${head.size}
     root        ${head.root}
3. That the log is the true one. The head proves nothing by itself: whoever has this packet could have been given another
   log. Write the head down with today's date, or keep the message that brought it. A later packet proves that it grew
   from this head, and so that nothing of before that day was changed since. Of the time before somebody outside had a
   head, nobody can prove anything by it.

${isStamped ? stampNote(timeStamp, headText(head)) : ''}What is masked or withheld cannot be guessed from the proof: the salt stays with the value.
`;
}

/** One line a file, as `sha256sum -c` reads them: hash, two blanks, path. Lines end in a line feed on every system. */
export function packetSums(files: readonly Pick<ManifestFile, 'sha256' | 'path'>[]): string {
  return files.map(({ sha256, path }) => `${sha256}  ${path}\n`).join('');
}

const stampNote = (file: string, head: string): string =>
  `4. That the head was there at the time that ${file} says: what the log held then is unchanged since. With OpenSSL, and a
   file of the certificates that you trust:
     printf '%s' ${head} > head.txt
     openssl ts -verify -token_in -in ${file} -data head.txt -CAfile TRUSTED.pem
   With the program of the incident desk: npm run -s verify -- PACKET.zip --roots TRUSTED.pem
   It is as good as the certificate of the authority that stamped it, and says nothing of whether what was written is true.

`;
