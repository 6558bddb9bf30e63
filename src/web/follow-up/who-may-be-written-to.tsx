import type { Writing } from '../../../shared/follow-up/may-write-to.js';
import { useAsk } from '../ask/use-ask.js';
import { DefinitionRows, Section } from '../look/section.js';
import { followUp as say } from '../words/follow-up.js';
import type { WritingAnswer } from './service-answers.js';

/** Whether renter and family may be written to, and why not. */
export function WhoMayBeWrittenTo({ incident }: { incident: string }) {
  const { data } = useAsk<WritingAnswer>(`/api/incidents/${incident}/who-may-be-written-to`, { keep: true });
  if (data === undefined) return null;
  const row = (term: string, { why, ...writing }: Writing) => ({
    term,
    value: wordsOf(writing),
    ...(why !== '' && { about: <span lang="en">{why}</span> }),
  });
  return (
    <Section title={say.writing.title}>
      <DefinitionRows rows={[row(say.writing.renter, data.renter), row(say.writing.family, data.family)]} />
    </Section>
  );
}

function wordsOf({ automatic, notice }: Omit<Writing, 'why'>): string {
  if (automatic) return say.writing.free;
  return notice ? say.writing.byPerson : say.writing.no;
}
