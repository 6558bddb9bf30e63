import type { Withheld } from '../../../../shared/hand-over/packet.js';
import { fieldLabel, sectionTitle } from '../../../../shared/record/field-words/tell-field.js';
import type { Block, PaperColumn } from './blocks.js';
import { MASKED_WORDS } from './tell-fact.js';

const COLUMNS = (what: string, count: string): PaperColumn[] => [
  { title: what, share: 0.32 },
  { title: count, share: 0.16 },
  { title: 'Why', share: 0.52 },
];

/** The log of what is not here, or tells less than the record, and why; it says nothing of what that was. */
export function composeWithheld({ withheld, masked }: Withheld): Block[] {
  const grouped = new Map<string, { what: string; count: number; how: string; reason: string }>();
  for (const { section, path, how, reason } of masked) {
    const what = `${sectionTitle(section, 'en')}: ${fieldLabel(section, path, 'en') ?? path}`;
    const key = JSON.stringify([what, how, reason]);
    const count = (grouped.get(key)?.count ?? 0) + 1;
    grouped.set(key, { what, count, how: MASKED_WORDS[how], reason });
  }
  return [
    {
      kind: 'text',
      text:
        'Where something of a kind stays, its number is told and its place is not, as that alone may tell something. ' +
        'What stands neither here nor in the rest of the file was not recorded: it is never a no.',
    },
    withheld.length === 0
      ? { kind: 'text', text: 'Nothing of the record stays.' }
      : {
          kind: 'table',
          columns: COLUMNS('What stays', 'Lines or files'),
          rows: withheld.map(({ what, count, reason }) => [what, String(count), reason]),
        },
    ...(grouped.size === 0
      ? []
      : [
          { kind: 'heading', title: 'Masked: it is here and tells less' } as const,
          {
            kind: 'table',
            columns: COLUMNS('What is masked', 'What is shown'),
            rows: [...grouped.values()].map(({ what, count, how, reason }) => [
              count === 1 ? what : `${what} (${count} times)`,
              how,
              reason,
            ]),
          } as const,
        ]),
  ];
}
