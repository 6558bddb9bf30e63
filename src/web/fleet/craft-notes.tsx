import { useState } from 'preact/hooks';
import { queueRequest } from '../device/outbox.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { tellDay } from '../lists/tell-day.js';
import { ThingForm } from '../lists/thing-form.js';
import { usePages } from '../lists/use-pages.js';
import { useSend } from '../lists/use-send.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { fleet } from '../words/fleet.js';
import { lists } from '../words/lists.js';
import { type Craft, type CraftNote, whoOf } from './craft-answers.js';

const { notes: say, step, units } = fleet;

const SPECS: readonly FieldSpec[] = [
  {
    name: 'about',
    label: say.about,
    as: 'choice',
    options: Object.entries(say.abouts).map(([value, label]) => ({ value, label })),
    required: true,
  },
  { name: 'text', label: say.text, as: 'text', required: true },
  { name: 'day', label: say.day, hint: say.dayHint, as: 'day' },
  { name: 'hourMeter', label: step.hourMeter, as: 'number', unit: units.hours },
];

/** What was done to a craft or noticed about it, the newest first; also written without signal. */
export function CraftNotes({ craft }: { craft: Craft }) {
  const path = `/api/craft/${craft.id}/notes`;
  const { data, error, again, more } = usePages<CraftNote>(path, { keep: true });
  const sending = useSend();
  const [done, setDone] = useState(false);
  return (
    <Section title={say.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && <Empty>{say.empty}</Empty>}
      <ol class="log">
        {data?.items.map((note) => (
          <li key={note.id}>
            <strong>
              {say.abouts[note.about]}
              {note.day !== null && `, ${tellDay(note.day)}`}
              {note.hourMeter !== null && `, ${note.hourMeter} ${units.hours}`}
            </strong>
            <span class="as-written">{note.text}</span>
            <span class="quiet">{fleet.log.entered(tellInstant(note.recordedAt), whoOf(note))}</span>
          </li>
        ))}
      </ol>
      {more !== undefined && <Button onPress={more}>{lists.more}</Button>}
      {done && <Note kind="saved">{say.done}</Note>}
      <Fold title={say.add}>
        {() => (
          <ThingForm
            specs={SPECS}
            lead={say.lead}
            submit={say.add}
            pending={sending.pending}
            error={sending.error}
            send={async (draft) => {
              const made = await sending.create(path, bodyOf(SPECS, draft), [path]);
              setDone(made !== undefined);
              return made !== undefined;
            }}
            keepHere={async (draft) => {
              const about = `${craft.unitName}: ${say.text}`;
              const body = bodyOf(SPECS, draft);
              await queueRequest({ line: craft.id, about, method: 'POST', path, body, key: sending.key });
              sending.renew();
            }}
          />
        )}
      </Fold>
    </Section>
  );
}
