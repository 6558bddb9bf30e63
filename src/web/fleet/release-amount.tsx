import { dollars } from '../../../shared/quantity/cents.js';
import { useAsk } from '../ask/use-ask.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { useSend } from '../lists/use-send.js';
import { ErrorState } from '../look/notes.js';
import { Fold } from '../look/fold.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { fleet } from '../words/fleet.js';

const { amount: say } = fleet;
const PATH = '/api/release-amounts';
const SPECS: readonly FieldSpec[] = [
  { name: 'amountCents', label: say.field, hint: say.hint, as: 'dollars', required: true },
];

interface Amount {
  readonly amountCents: number;
  readonly person: string;
  readonly recordedAt: string;
}

/** Up to which damage a shift lead releases a craft; the owner names it as an administrator. */
export function ReleaseAmount() {
  const { me } = useSession();
  const { data, error, again } = useAsk<{ items: readonly Amount[] }>(`${PATH}?limit=1`, { keep: true });
  const sending = useSend();
  const [latest] = data?.items ?? [];
  return (
    <Section title={say.title}>
      {error !== null && data === undefined && <ErrorState error={error} again={again} />}
      {data !== undefined && (
        <p>
          {latest === undefined
            ? say.none
            : say.named(dollars(latest.amountCents), latest.person, tellInstant(latest.recordedAt))}
        </p>
      )}
      {me?.role === 'administrator' && (
        <Fold title={say.name}>
          {() => (
            <ThingForm
              specs={SPECS}
              lead={say.lead}
              submit={say.name}
              pending={sending.pending}
              error={sending.error}
              send={async (draft) =>
                (await sending.create(PATH, bodyOf(SPECS, draft), [PATH, '/api/craft'])) !== undefined
              }
            />
          )}
        </Fold>
      )}
    </Section>
  );
}
