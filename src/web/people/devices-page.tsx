import { useState } from 'preact/hooks';
import { useAskAll } from '../ask/use-ask-all.js';
import { useTell } from '../ask/use-tell.js';
import { ConfirmDialog } from '../lists/confirm-dialog.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { useSend } from '../lists/use-send.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { people } from '../words/en/people.js';
import { PeopleLinks } from './people-links.js';
import { ShownOnce } from './shown-once.js';

const { devices: say, once } = people;
const DEVICES = ['/api/devices'];
const SPECS: readonly FieldSpec[] = [
  { name: 'name', label: say.name, hint: say.nameHint, as: 'line', required: true },
];

interface Device {
  readonly id: string;
  readonly name: string;
  readonly state: keyof typeof say.states;
  readonly codeExpiresAt: string | null;
  readonly lastUsedAt: string | null;
}

/** The shared devices, for administrators: each gets a code that is shown once, and can be shut out. */
export default function DevicesPage() {
  const { data, error, again } = useAskAll<Device>('/api/devices');
  const sending = useSend();
  const telling = useTell();
  const now = useNow();
  const [made, setMade] = useState<(Device & { code: string | null }) | null>(null);
  const [asking, setAsking] = useState<Device | null>(null);
  const [shutOut, setShutOut] = useState<string | null>(null);
  const revoke = async ({ id, name }: Device): Promise<void> => {
    setAsking(null);
    if ((await telling.tell(`/api/devices/${id}`, { method: 'DELETE' }, DEVICES)) !== undefined)
      setShutOut(name);
  };
  const stateOf = ({ state, codeExpiresAt }: Device): string =>
    state === 'waiting' && codeExpiresAt !== null && Date.parse(codeExpiresAt) < now
      ? say.codeEnded
      : say.states[state];
  return (
    <Page title={say.title} lead={say.lead}>
      <PeopleLinks />
      {shutOut !== null && <Note kind="saved">{say.revoked(shutOut)}</Note>}
      {telling.error !== null && <ErrorState error={telling.error} />}
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data?.length === 0 && <Empty>{say.empty}</Empty>}
      <ul class="log">
        {data?.map((device) => (
          <li key={device.id}>
            <strong>{device.name}</strong>
            <span>{stateOf(device)}</span>
            <span class="quiet">
              {device.lastUsedAt === null
                ? say.never
                : say.lastUsed(tellInstant(device.lastUsedAt, undefined, now))}
            </span>
            {device.state !== 'revoked' && (
              <Button look="plain" onPress={() => setAsking(device)}>
                {say.revoke(device.name)}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <Section title={say.add}>
        {made !== null && (
          <ShownOnce
            what={`${once.code}: ${made.name}`}
            secret={made.code}
            until={made.codeExpiresAt}
            onSeen={() => setMade(null)}
          />
        )}
        <ThingForm
          specs={SPECS}
          lead={say.addLead}
          submit={say.add}
          pending={sending.pending}
          error={sending.error}
          send={async (draft) => {
            const answer = await sending.create<Device & { code: string | null }>(
              '/api/devices',
              bodyOf(SPECS, draft),
              DEVICES,
            );
            if (answer !== undefined) setMade(answer);
            return answer !== undefined;
          }}
        />
      </Section>
      {asking !== null && (
        <ConfirmDialog
          title={say.revokeTitle(asking.name)}
          text={say.revokeText}
          yes={say.revokeYes}
          onYes={() => void revoke(asking)}
          onNo={() => setAsking(null)}
        />
      )}
    </Page>
  );
}
