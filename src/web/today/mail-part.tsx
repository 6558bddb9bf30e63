import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { today as say } from '../words/today.js';
import { DayPart } from './day-part.js';
import type { Paged } from './service-answers.js';

const path = (state: string): string => `/api/mail?state=${state}&limit=100`;

/** Mail that did not go out, and mail of which nobody knows whether it arrived; for administrators. */
export function MailPart() {
  const failed = useAsk<Paged<object>>(path('failed'));
  const uncertain = useAsk<Paged<object>>(path('uncertain')).data;
  return (
    <DayPart title={say.mail.title} asked={failed}>
      {(answer) => (
        <>
          {answer.items.length > 0 && (
            <p>
              <strong>{say.mail.failed(answer.items.length)}</strong>
            </p>
          )}
          {uncertain !== undefined && uncertain.items.length > 0 && (
            <p>
              <strong>{say.mail.uncertain(uncertain.items.length)}</strong>
            </p>
          )}
          {answer.items.length === 0 && uncertain?.items.length === 0 && <p>{say.mail.none}</p>}
          <p class="links-line">
            <Link href="/mail">{say.mail.toMail}</Link>
          </p>
        </>
      )}
    </DayPart>
  );
}
