import type { ComponentChildren } from 'preact';
import { Note } from '../look/notes.js';
import { officer as say } from '../words/officer.js';
import type { Gave } from './use-give.js';

/** The part of a page where it is noted that its sheet was given; not on the paper itself. */
export function GiveSection({
  title,
  lead,
  children,
}: {
  title: string;
  lead: string;
  children: ComponentChildren;
}) {
  return (
    <section class="section unprinted" id="give" aria-labelledby="give-title">
      <h2 id="give-title" tabIndex={-1}>
        {title}
      </h2>
      <p class="quiet">{lead}</p>
      {children}
    </section>
  );
}

export function GaveNote({ gave }: { gave: Gave }) {
  if (gave === 'not-yet') return null;
  return (
    <Note kind={gave === 'kept' ? 'saved' : 'error'}>
      {gave === 'kept' ? say.give.done : say.give.notKept}
    </Note>
  );
}
