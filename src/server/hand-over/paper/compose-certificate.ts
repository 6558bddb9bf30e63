import { PACKET_FILES } from '../../../../shared/hand-over/packet.js';
import type { Block } from './blocks.js';
import { pagePrefix, type PaperMatter } from './paper-matter.js';

/**
 * A draft for counsel. What it rests on is from memory: Fed. R. Evid. 803(6)(A) to (C) as 902(11) takes it up, 902(13) for
 * records of an electronic process or system, 902(14) for data copied from a device, store or file and proven by a hash.
 */
export function composeCertificate({ about, evidence }: PaperMatter): Block[] {
  const { reference, head, packet } = about;
  return [
    {
      kind: 'text',
      strong: true,
      text: 'Draft, ask counsel. Not signed, not sworn, and of no effect until counsel has settled it.',
    },
    {
      kind: 'text',
      text:
        'Certificate of a custodian of records, for Fed. R. Evid. 902(11), (13) and (14). The rules are told here from memory; ' +
        'counsel holds them against the text in force, and against the rules of the court. Reasonable written notice, and the record ' +
        'itself, go to the other side before trial (902(11)).',
    },
    { kind: 'heading', title: 'I say:' },
    {
      kind: 'list',
      items: [
        '1. My name and position are those below. I know how the business keeps its records of incidents, and I am its custodian or another qualified person.',
        `2. The pages marked ${pagePrefix(about)} and the files of packet ${packet} are copies of the record of incident ${reference}, as far as they leave: what is withheld or masked is listed in them.`,
        '3. For 902(11): the record was made at or near the time by, or from information given by, somebody with knowledge; it was kept in the course of a regularly conducted activity of the business; making it was a regular practice of that activity. [Counsel: for which parts does each of these hold? Statements of customers and passers-by are theirs. Lines that were entered later say so.]',
        '4. For 902(13): the record is kept by an electronic system that stores each change with its time and author as an amendment, hashes it (SHA-256, FIPS 180-4) and chains the hashes in a log (RFC 6962); the system produces an accurate result. [Counsel: who says so, and from what experience or test?]',
        `5. For 902(14): the ${evidence.length === 1 ? 'one file' : `${evidence.length} files`} of evidence in the packet were compared by SHA-256 with the originals in the store of the business; for each, ${PACKET_FILES.manifest} gives the hash of the original, and of the copy where a copy was made with something taken out. An original and a file called original have the same hash. [Counsel: copies with something taken out are not identical and are not certified as such.]`,
        `6. The log stood at ${head.size} amendments, root ${head.root}. [Counsel: it proves that nothing was changed since somebody outside received this head, and nothing about the time before.]`,
        'I declare under penalty of perjury that the foregoing is true and correct (28 U.S.C. 1746, from memory). [Counsel: form for this court?]',
      ],
    },
    { kind: 'sign', labels: ['Signature (do not sign the draft)', 'Name and position', 'Date and place'] },
  ];
}
