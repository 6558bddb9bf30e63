import { PACKET_FILES } from '../../../../shared/hand-over/packet.js';
import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import type { Block } from './blocks.js';
import { pagePrefix, type PaperMatter } from './paper-matter.js';

/** To whom this is disclosed, why, under which rules, and what it can and cannot prove. */
export function composeNote({ about, plan, profile, timeZone }: PaperMatter): Block[] {
  const { recipient, purpose, madeAt, madeBy, head } = about;
  const chosen = plan.withheld.withheld.length;
  return [
    {
      kind: 'rows',
      rows: [
        { label: 'Disclosed to', text: `${recipient.name} (${profile.title.toLowerCase()})` },
        { label: 'For', text: purpose },
        { label: 'Made', text: `${tellZonedTime(madeAt, timeZone)}, by ${madeBy}` },
        { label: 'Pages', text: `Each bears ${pagePrefix(about)} and its number.` },
        {
          label: 'Decided by',
          text: `The rules “${profile.title}” as they stood then; they are in ${PACKET_FILES.profile}. ${
            chosen === 0
              ? 'Nothing stays by them.'
              : 'What stays by them or was held back stands in the part before.'
          }`,
        },
      ],
    },
    {
      kind: 'list',
      items: [
        'It holds names and details of people who were told that a record is kept, and not that you would read it. Keep it as you would keep your own papers, and show it to nobody who does not need it for what it was made for.',
        'Whoever has it by mistake tells the sender and destroys it. Nothing in it is given up that a lawyer or the law protects.',
        'Accounts are told as they were given. That somebody said so does not make it so, and nobody’s fault is found here.',
        `This paper and ${PACKET_FILES.record} are made from the same content. Where they seem to differ, ${PACKET_FILES.record} is what the proof covers.`,
        `${PACKET_FILES.manifest} names every file of the packet with its SHA-256, size, source and custody. ${PACKET_FILES.readme} says how to check them.`,
        `The log of the record stood at ${head.size} amendments, root ${head.root}. With that, and the day on which you received it, a later packet can be held against this one. Of the time before anybody outside had it, it proves nothing.`,
      ],
    },
  ];
}
