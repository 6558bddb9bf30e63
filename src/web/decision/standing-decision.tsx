import type { Decision } from '../../../shared/decision/decision.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';

/** A signed decision in words: what, by whom, when, and what it rests on. */
export function StandingDecision({ decision, zone }: { decision: Decision; zone: string }) {
  const { by, signedAt } = decision;
  const when = tellInstant(signedAt, zone);
  switch (decision.kind) {
    case 'report':
      return (
        <div class="signed">
          <p>{say.standing.report(by.person, when)}</p>
          {decision.reason !== undefined && <p>{say.standing.reason(decision.reason)}</p>}
        </div>
      );
    case 'wait':
      return (
        <div class="signed">
          <p>{say.standing.wait(by.person, when, tellInstant(decision.until, zone))}</p>
          <p>{say.standing.waitsFor}:</p>
          <ul>
            {decision.questions.map((question) => (
              <li key={question}>{question}</li>
            ))}
          </ul>
        </div>
      );
    case 'no-report':
      return (
        <div class="signed">
          <p>{say.standing['no-report'](by.person, when)}</p>
          {decision.reason !== undefined && <p>{say.standing.reason(decision.reason)}</p>}
          {decision.counsel !== undefined && <p>{say.standing.counsel(decision.counsel)}</p>}
        </div>
      );
  }
}
