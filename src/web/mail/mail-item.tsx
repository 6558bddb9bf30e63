import { Link } from 'wouter-preact';
import type { MailState } from '../../../shared/kernel/mail-state.js';
import { tellInstant } from '../look/tell-instant.js';
import { mail as say } from '../words/en/mail.js';
import { DecideMail } from './decide-mail.js';

export interface Mail {
  readonly id: string;
  readonly version: number;
  readonly state: MailState;
  readonly incidentId: string | null;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  readonly tries: number;
  readonly nextTryAt: string | null;
  /** What the server, or the folder, said last. */
  readonly words: string | null;
  readonly queuedAt: string;
  readonly changedAt: string;
  readonly decisions: readonly {
    readonly decision: 'resend' | 'delivered';
    readonly reason: string;
    readonly person: string;
    readonly decidedAt: string;
  }[];
}

/** One mail: to whom, what it says, what became of it, and what a person may decide about it. */
export function MailItem({ mail }: { mail: Mail }) {
  const { state, to, subject, text, tries, nextTryAt, words, changedAt, incidentId, decisions } = mail;
  const about = say.about[state];
  const facts = [
    say.to(to),
    tellInstant(changedAt),
    tries > 0 && say.tries(tries),
    nextTryAt !== null && say.next(tellInstant(nextTryAt)),
  ];
  return (
    <article class="mail" aria-label={`${subject}, ${to}`}>
      <h2>{subject}</h2>
      <p class="thing-state">{say.states[state]}</p>
      <p class="quiet">{facts.filter(Boolean).join(' · ')}</p>
      {about !== undefined && <p>{about}</p>}
      {words !== null && (
        <p>
          {say.said}: <q>{words}</q>
        </p>
      )}
      {incidentId !== null && (
        <p class="links-line">
          <Link href={`/incidents/${incidentId}`}>{say.openIncident}</Link>
        </p>
      )}
      <details>
        <summary>{say.text}</summary>
        <pre class="to-copy">{text}</pre>
      </details>
      {decisions.map(({ decision, reason, person, decidedAt }) => (
        <p key={decidedAt} class="quiet">
          {say.decided(say.decisions[decision], person, tellInstant(decidedAt))}: {reason}
        </p>
      ))}
      {(state === 'failed' || state === 'uncertain') && <DecideMail mail={mail} decision="resend" />}
      {state === 'uncertain' && <DecideMail mail={mail} decision="delivered" />}
    </article>
  );
}
