import { Link } from 'wouter-preact';
import type { DuePack } from '../../../shared/law/list-due-packs.js';
import { nameDate } from '../../../shared/law/name-law-terms.js';
import { Section } from '../look/section.js';
import { lawPages } from '../words/law-pages.js';

const say = lawPages.list;

/** For administrators: which texts are to be read again, the longest overdue first, and what to do then. */
export function DueNow({ due }: { due: readonly DuePack[] }) {
  if (due.length === 0) return <p>{say.noneDue}</p>;
  return (
    <Section title={say.dueNow(due.length)}>
      <ul class="law-due">
        {due.map(({ pack, name, dueOn }) => (
          <li key={pack}>
            <Link href={`/law/${pack}`}>{name}</Link> <span>{say.overdue(nameDate(dueOn))}</span>
          </li>
        ))}
      </ul>
      <p class="quiet">{say.howToCorrect}</p>
    </Section>
  );
}
