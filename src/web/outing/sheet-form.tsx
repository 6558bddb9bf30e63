import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { fieldMoment, momentOf } from '../look/moment.js';
import { ErrorState, Note } from '../look/notes.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackView } from './not-back-answers.js';
import { notBackPath } from './not-back-queue.js';

type Typed = Record<'lastSeenAt' | 'lastSeenWhere' | 'lastSpokenAt' | 'fuel' | 'plan' | 'remark', string>;

/** What somebody learns while the search goes on; what is left empty is not known. */
export function SheetForm({ view }: { view: NotBackView }) {
  const { sheet, timeZone: zone, version } = view;
  const [typed, setTyped] = useState<Typed>(() => ({
    lastSeenAt: sheet.lastSeenAt === undefined ? '' : fieldMoment(sheet.lastSeenAt, zone),
    lastSeenWhere: sheet.lastSeenWhere ?? '',
    lastSpokenAt: sheet.lastSpokenAt === undefined ? '' : fieldMoment(sheet.lastSpokenAt, zone),
    fuel: sheet.fuel ?? '',
    plan: sheet.plan ?? '',
    remark: sheet.remark ?? '',
  }));
  const [looked, setLooked] = useState(false);
  const [saved, setSaved] = useState(false);
  const { tell, pending, error } = useTell();
  const momentFault = (text: string): string | null =>
    looked && text !== '' && momentOf(text, zone) === null ? say.sheet.moment : null;
  const field = (name: keyof Typed) => ({
    value: typed[name],
    onInput: (text: string) => {
      setSaved(false);
      setTyped({ ...typed, [name]: text });
    },
    error: error?.faultAt(`/${name}`) ?? null,
  });
  const save = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    const body: Record<string, string> = {};
    for (const [name, text] of Object.entries(typed)) {
      if (text.trim() === '') continue;
      const value = name.endsWith('At') ? momentOf(text, zone) : text.trim();
      if (value === null) return;
      body[name] = value;
    }
    const path = notBackPath(view.id);
    const answer = await tell(`${path}/sheet`, { method: 'PUT', version, body }, [path]);
    setSaved(answer !== undefined);
  };
  return (
    <form class="form" onSubmit={(event) => void save(event)} noValidate>
      <Field
        label={say.sheet.seenAt}
        type="datetime-local"
        {...field('lastSeenAt')}
        error={momentFault(typed.lastSeenAt) ?? error?.faultAt('/lastSeenAt')}
      />
      <Field label={say.sheet.seenWhere} autoComplete="off" {...field('lastSeenWhere')} />
      <Field
        label={say.sheet.spokenAt}
        type="datetime-local"
        {...field('lastSpokenAt')}
        error={momentFault(typed.lastSpokenAt) ?? error?.faultAt('/lastSpokenAt')}
      />
      <Field label={say.sheet.fuelLeft} autoComplete="off" {...field('fuel')} />
      <Field label={say.sheet.plan} rows={2} {...field('plan')} />
      <Field label={say.sheet.remark} rows={2} {...field('remark')} />
      {error !== null && <ErrorState error={error} />}
      {saved && <Note kind="saved">{say.sheet.saved}</Note>}
      <Button type="submit" look="main" busy={pending}>
        {say.sheet.save}
      </Button>
    </form>
  );
}
