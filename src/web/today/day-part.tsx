import type { ComponentChildren } from 'preact';
import type { Asked } from '../ask/use-ask.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';

/**
 * A part of the day. Each asks for itself, so that one that fails hides none of the others; what the device kept says so
 * where it stands.
 */
export function DayPart<Answer>({
  title,
  asked: { data, error, keptAt, again },
  children,
}: {
  title: string;
  asked: Asked<Answer>;
  children: (answer: Answer) => ComponentChildren;
}) {
  return (
    <Section title={title}>
      <KeptNote keptAt={keptAt} />
      {data !== undefined && children(data)}
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
    </Section>
  );
}
