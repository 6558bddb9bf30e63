import { useState } from 'preact/hooks';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { ErrorState, Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { tellRecorded } from '../look/tell-recorded.js';
import { withdrawing as say } from '../words/en/withdrawing.js';
import { itemsAt } from './edit-document.js';
import { fullLabel } from './section-label.js';
import type { SectionDraft } from './section-draft.js';

const NOTHING = { path: '', reason: '', counsel: '', directedOn: '' };
const LONGEST = 40;

/** For the manager: takes the content of one field out of the record, for good. That there was one, and why it went, stays. */
export function WithdrawForm({ draft }: { draft: SectionDraft }) {
  const { base } = draft;
  return Object.keys(base).length === 0 ? null : (
    <Fold title={say.title}>{() => <Form draft={draft} />}</Fold>
  );
}

function Form({ draft: { incident, section, base } }: { draft: SectionDraft }) {
  const [form, setForm] = useState(NOTHING);
  const [looked, setLooked] = useState(false);
  const [done, setDone] = useState(false);
  const { tell, pending, error } = useTell();
  const fields = [...flattenSection(base)].filter(
    ([path]) => !path.endsWith('/id') && itemsAt(base, path).length === 0,
  );
  const set = (change: Partial<typeof NOTHING>): void => {
    setDone(false);
    setForm({ ...form, ...change });
  };
  const whole = form.path !== '' && form.reason.trim() !== '';
  const withdraw = async (): Promise<void> => {
    setLooked(true);
    if (!whole) return;
    const { counsel, directedOn, ...body } = form;
    const direction = counsel === '' && directedOn === '' ? {} : { counsel, directedOn };
    const path = `/api/incidents/${incident}`;
    const answer = await tell(
      `${path}/sections/${section}/withdrawals`,
      { method: 'POST', body: { ...body, ...direction } },
      [path],
    );
    if (answer === undefined) return;
    setForm(NOTHING);
    setLooked(false);
    setDone(true);
  };
  return (
    <div class="form">
      <p>{say.lead}</p>
      <Select
        label={say.field}
        value={form.path}
        none={say.choose}
        error={looked && form.path === '' ? say.chooseFirst : null}
        groups={[
          {
            options: fields.map(([path, value]) => ({
              value: path,
              label: `${fullLabel(section, base, path)} (${cut(tellRecorded(value, { section, path }))})`,
            })),
          },
        ]}
        onChoose={(path) => set({ path })}
      />
      <Field
        label={say.reason}
        hint={say.reasonHint}
        error={looked && form.reason.trim() === '' ? say.reasonMissing : (error?.faultAt('/reason') ?? null)}
        value={form.reason}
        onInput={(reason) => set({ reason })}
      />
      <Field
        label={say.counsel}
        hint={say.counselHint}
        error={error?.faultAt('/counsel')}
        value={form.counsel}
        onInput={(counsel) => set({ counsel })}
      />
      <Field
        label={say.directedOn}
        type="date"
        error={error?.faultAt('/directedOn')}
        value={form.directedOn}
        onInput={(directedOn) => set({ directedOn })}
      />
      {error !== null && <ErrorState error={error} />}
      {done && <Note kind="saved">{say.done}</Note>}
      <Button busy={pending} onPress={() => void withdraw()}>
        {say.withdraw}
      </Button>
    </div>
  );
}

function cut(text: string): string {
  return text.length <= LONGEST ? text : `${[...text].slice(0, LONGEST - 1).join('')}…`;
}
