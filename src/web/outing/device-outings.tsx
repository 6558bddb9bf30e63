import { useState } from 'preact/hooks';
import { useChoices } from '../call/use-choices.js';
import { StorageNote } from '../device/storage-note.js';
import { KeptNote } from '../look/notes.js';
import { Page } from '../look/page.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { DeviceUnits } from './device-units.js';
import { OutingActions } from './outing-actions.js';
import { OUTING_LINE } from './outing-queue.js';
import type { Outing } from './service-answers.js';
import { useMarking } from './use-marking.js';
import { WaitingNotes } from './waiting-notes.js';

/** The same on an enrolled device where nobody is signed in. */
export function DeviceOutings() {
  const { craft, keptAt } = useChoices();
  const { markBack, openNotBack, failure } = useMarking();
  const [form, setForm] = useState<Outing | 'new' | null>(null);
  return (
    <Page
      title={say.title}
      lead={say.device.lead}
      actions={<OutingActions form={form} setForm={setForm} units={craft.map(({ unitName }) => unitName)} />}
    >
      <KeptNote keptAt={keptAt} />
      {failure}
      <WaitingNotes line={OUTING_LINE} />
      <DeviceUnits craft={craft} onBack={markBack} onNotBack={openNotBack} />
      <StorageNote />
    </Page>
  );
}
