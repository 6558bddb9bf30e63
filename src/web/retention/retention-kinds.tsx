import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { Fold } from '../look/fold.js';
import { Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { retention } from '../words/en/retention.js';
import { type Kind, type KindPeriod, type KindsAnswer, tellSource } from './retention-answer.js';

const say = retention.kinds;

const SPECS: readonly FieldSpec[] = [
  { name: 'months', label: say.months, as: 'number', required: true },
  { name: 'reason', label: retention.decide.reason, as: 'text', rows: 2, required: true },
];

/** Every period once, with its reason and source, and what is kept for it. */
export function RetentionKinds({ answer: { kinds, majority } }: { answer: KindsAnswer }) {
  const periods = new Map(kinds.flatMap((kind) => kind.periods.map((period) => [period.id, period])));
  return (
    <Section title={say.title}>
      <p>{say.lead}</p>
      <p class="quiet">{say.majority(majority.citation)}</p>
      <ul class="log">
        {[...periods.values()].map((period) => (
          <li key={period.id}>
            <PeriodLines period={period} kinds={kinds.filter(hasPeriod(period.id))} />
          </li>
        ))}
      </ul>
    </Section>
  );
}

const hasPeriod =
  (id: string) =>
  ({ periods }: Kind): boolean =>
    periods.some((period) => period.id === id);

function PeriodLines({ period, kinds }: { period: KindPeriod; kinds: readonly Kind[] }) {
  const { id, months, from, reason, chosenMonths, chosenWhy, basis, version } = period;
  return (
    <>
      <p>
        <strong>{say.of(months, say.starts[from])}.</strong> {reason}
        {chosenMonths !== null && <strong> {say.own(chosenMonths, chosenWhy ?? '')}</strong>}
      </p>
      <p class="quiet">{[tellSource(period), ...(period.doubts ?? [])].join('. ')}</p>
      <p class="quiet">{say.keptFor(kinds.map(({ title }) => title))}</p>
      {basis === 'choice' && (
        <Fold title={say.lengthen} key={`${id} ${version}`}>
          {() => <Lengthen period={period} />}
        </Fold>
      )}
    </>
  );
}

function Lengthen({ period }: { period: KindPeriod }) {
  const telling = useTell();
  const [saved, setSaved] = useState(false);
  const { id, months, chosenMonths, version } = period;
  return (
    <>
      {saved && <Note kind="saved">{say.saved}</Note>}
      <ThingForm
        specs={SPECS}
        first={{ months: chosenMonths ?? months }}
        submit={say.save}
        pending={telling.pending}
        error={telling.error}
        send={async (draft, over) => {
          const asked = { method: 'PUT', body: bodyOf(SPECS, draft), version: over ?? version } as const;
          const done = await telling.tell(`/api/retention/periods/${id}`, asked, ['/api/retention']);
          setSaved(done !== undefined);
          return done !== undefined;
        }}
      />
    </>
  );
}
