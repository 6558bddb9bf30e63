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

/** Every kind with its periods, reasons and sources. */
export function RetentionKinds({ answer: { kinds, majority } }: { answer: KindsAnswer }) {
  const chosen = new Set<string>();
  return (
    <Section title={say.title}>
      <p>{say.lead}</p>
      <p class="quiet">{say.majority(majority.citation)}</p>
      {kinds.map((kind) => {
        // A choice that several kinds share is changed in one place.
        const own = kind.periods.filter(({ id, basis }) => basis === 'choice' && !chosen.has(id));
        for (const { id } of own) chosen.add(id);
        return <KindLines key={kind.id} kind={kind} own={own} />;
      })}
    </Section>
  );
}

function KindLines({ kind, own }: { kind: Kind; own: readonly KindPeriod[] }) {
  return (
    <>
      <h3>{kind.title}</h3>
      <ul>
        {kind.periods.map((period) => (
          <li key={period.id}>
            {say.of(period.months, say.starts[period.from])}. {period.reason}{' '}
            <span class="quiet">{tellSource(period)}.</span>
            {period.chosenMonths !== null && (
              <strong> {say.own(period.chosenMonths, period.chosenWhy ?? '')}</strong>
            )}
          </li>
        ))}
      </ul>
      {own.map((period) => (
        <Fold title={say.lengthen} key={`${period.id} ${period.version}`}>
          {() => <Lengthen period={period} />}
        </Fold>
      ))}
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
