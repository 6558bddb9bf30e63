import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { nameDuty } from './compare-determinations.js';
import { type Done, listDone } from './done-list.js';
import type {
  DecisionsAnswer,
  FilingsAnswer,
  LegalCallsAnswer,
  OperatorNoticesAnswer,
} from './service-answers.js';
import { StandingDecision } from './standing-decision.js';

interface SignedHistoryProps {
  readonly id: string;
  readonly zone: string;
  /** `?at=` of a moment; all of it without one. */
  readonly query?: string;
}

/** Everything that was signed, reopened, filed, told and asked, the latest first. */
export function SignedHistory({ id, zone, query = '' }: SignedHistoryProps) {
  const path = `/api/incidents/${id}`;
  const signed = useAsk<DecisionsAnswer>(`${path}/decisions${query}`);
  const filings = useAsk<FilingsAnswer>(`${path}/filings${query}`);
  const notices = useAsk<OperatorNoticesAnswer>(`${path}/operator-notices${query}`);
  const calls = useAsk<LegalCallsAnswer>(`${path}/legal-calls${query}`);
  const failed = [signed, filings, notices, calls].find(({ error }) => error !== null);
  return (
    <Section title={say.history.title}>
      {failed !== undefined && failed.error !== null && (
        <ErrorState error={failed.error} again={failed.again} />
      )}
      {failed === undefined &&
        (signed.data && filings.data && notices.data && calls.data ? (
          <DoneList
            zone={zone}
            done={listDone({
              decisions: signed.data.items,
              reopenings: signed.data.reopenings,
              filings: filings.data.items,
              notices: notices.data.items,
              calls: calls.data.items,
            })}
          />
        ) : (
          <Loading />
        ))}
    </Section>
  );
}

function DoneList({ done, zone }: { done: readonly Done[]; zone: string }) {
  if (done.length === 0) return <p>{say.history.none}</p>;
  return (
    <ol class="done">
      {done.map((one) => (
        <li key={one.item.id}>
          <p class="quiet">{tellInstant(one.at, zone)}</p>
          <DoneItem one={one} zone={zone} />
        </li>
      ))}
    </ol>
  );
}

function DoneItem({ one, zone }: { one: Done; zone: string }) {
  switch (one.kind) {
    case 'decision':
      return (
        <>
          <strong>{nameDuty(one.item.duty, one.item.vessel)}</strong>{' '}
          <span class="quiet">{say.history.on(one.item.determination)}</span>
          <StandingDecision decision={one.item} zone={zone} />
        </>
      );
    case 'reopening':
      return (
        <p>
          <strong>{`${say.history.reopened}: ${nameDuty(one.item.duty, one.item.vessel)}.`}</strong>{' '}
          {one.item.changes.map(({ text }) => text).join(' ')}
        </p>
      );
    case 'filing':
      return <FilingItem one={one} zone={zone} />;
    case 'notice': {
      const { vessel, told, toldBy, saysFiled, words, confirmation } = one.item;
      const whose = vessel ?? say.history.ourCraft;
      return (
        <p>
          <strong>{told === 'yes' ? say.history.told(whose, toldBy) : say.history.notTold(whose)}.</strong>{' '}
          {say.history.says[saysFiled]} {confirmation !== undefined && say.history.confirmed(confirmation)}{' '}
          {words}
        </p>
      );
    }
    case 'call':
      return (
        <p>
          <strong>{say.history.call(one.item.who)}.</strong> {one.item.said}{' '}
          <span class="quiet">{one.item.duties.map((duty) => nameDuty(duty, null)).join('; ')}</span>
        </p>
      );
  }
}

function FilingItem({
  one: { item, stands },
  zone,
}: {
  one: Extract<Done, { kind: 'filing' }>;
  zone: string;
}) {
  const { form, to, way, at, filer, filedBy, confirmation, remark, satisfies } = item;
  return (
    <>
      <p>
        <strong>{say.history.filing(say.filing.forms[form], to, say.filing.ways[way])}.</strong>{' '}
        {tellInstant(at, zone)}, {filer} ({say.filing.filers[filedBy]}).{' '}
        {confirmation !== undefined && say.history.confirmed(confirmation)} {remark}
      </p>
      {!stands && <p>{say.history.replaced}</p>}
      <p class="quiet">
        {say.history.answers}: {satisfies.map(({ duty, vessel }) => nameDuty(duty, vessel)).join('; ')}
      </p>
    </>
  );
}
