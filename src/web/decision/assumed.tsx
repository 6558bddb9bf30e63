import { Section } from '../look/section.js';
import { decision as say } from '../words/decision.js';
import { nameFact } from './fact-words.js';
import type { Matter } from './use-matter.js';

/** Where the determination takes something for so since the record is silent. */
export function Assumed({ matter: { assumptions, determined } }: { matter: Matter }) {
  if (assumptions.length === 0) return null;
  return (
    <Section title={say.assumed}>
      <ul>
        {assumptions.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>
            {pointer === '/occurredAt' ? '' : `${nameFact(pointer, determined.facts)} `}
            {detail}
          </li>
        ))}
      </ul>
    </Section>
  );
}
