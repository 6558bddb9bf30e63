import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, KeptNote, Loading, UndoStrip } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { dayIn } from '../look/tell-instant.js';
import { nowByService } from '../look/use-now.js';
import { pin } from '../words/pin.js';
import { type PickedPerson, pickPerson, usePickedPerson } from './picked-person.js';
import { PinConfirm } from './pin-confirm.js';
import { useSession } from './session.js';

const { who: say } = pin;

interface OnDuty {
  readonly people: readonly {
    readonly accountId: string;
    readonly personName: string;
    readonly duties: readonly (keyof typeof say.duties)[];
  }[];
}

/** Whose name stands under what is entered on a shared device. */
export default function WhoPage() {
  const { me, device } = useSession();
  const picked = usePickedPerson();
  const [left, setLeft] = useState<PickedPerson | null>(null);
  if (me !== null || device === null) {
    return <Page title={say.title}>{me !== null && <p>{say.signedIn(me.name)}</p>}</Page>;
  }
  if (picked === null) {
    return (
      <Page title={say.title} lead={say.lead}>
        {left !== null && (
          <UndoStrip undo={() => void pickPerson(left)}>{say.put(left.personName)}</UndoStrip>
        )}
        <Names />
      </Page>
    );
  }
  const leave = (): void => {
    setLeft(picked);
    void pickPerson(null);
  };
  return (
    <Page
      title={say.picked(picked.personName)}
      lead={say.lead}
      actions={<Button onPress={leave}>{say.other}</Button>}
    >
      <PinConfirm picked={picked} />
    </Page>
  );
}

/** Who is on today, to be picked from; kept on the device, since picking waits for no signal. */
function Names() {
  const { data, error, keptAt, again } = useAsk<OnDuty>(`/api/device/people?day=${dayIn()}`, { keep: true });
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const pick = ({ accountId, personName }: OnDuty['people'][number]): void =>
    void pickPerson({
      accountId,
      personName,
      since: new Date(nowByService()).toISOString(),
      confirmedAt: null,
    });
  return (
    <Section title={say.onDuty}>
      <KeptNote keptAt={keptAt} />
      {data.people.length === 0 && <Empty>{say.empty}</Empty>}
      <div class="buttons">
        {data.people.map((person) => (
          <Button key={person.accountId} onPress={() => pick(person)}>
            {person.personName}
            <br />
            <small>{person.duties.map((duty) => say.duties[duty]).join(', ')}</small>
          </Button>
        ))}
      </div>
    </Section>
  );
}
