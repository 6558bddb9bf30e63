import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import { casualtyTypes } from '../../../shared/vocabulary/casualty-types.js';
import { Choice, ThreeWay } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { facts as say } from '../words/facts.js';
import type { FactDraft } from './fact-draft.js';
import type { FactPlace } from './fact-place.js';

interface FactControlProps {
  readonly place: FactPlace;
  readonly label: string;
  readonly facts: IncidentFacts;
  readonly zone: string;
  readonly draft: FactDraft;
  readonly onDraft: (draft: FactDraft) => void;
  readonly error: string | null;
  /** The heading above says what the label says. */
  readonly quietLegend?: boolean;
}

/** The control that fits a fact. */
export function FactControl(props: FactControlProps) {
  const { place, label, facts, zone, draft, onDraft, error, quietLegend = false } = props;
  const set = (text: string): void => onDraft({ ...draft, text });
  const chosen = { legend: label, quietLegend, value: draft.text, onChoose: set, error };
  switch (place.kind) {
    case 'ternary':
      return <ThreeWay {...chosen} value={draft.text === '' ? undefined : (draft.text as Ternary)} />;
    case 'outcome':
      return <Choice {...chosen} options={optionsOf(say.outcomes)} />;
    case 'care':
      return <Choice {...chosen} options={optionsOf(say.cares)} />;
    case 'use':
      return <Choice {...chosen} options={optionsOf(say.uses)} />;
    case 'assessment':
      return <Choice {...chosen} options={optionsOf(say.assessments)} />;
    case 'craft':
      return <Choice {...chosen} options={facts.vessels.map(({ id }) => ({ value: id, label: id }))} />;
    case 'hours':
      return (
        <Field
          label={label}
          value={draft.text}
          onInput={set}
          error={error}
          inputMode="decimal"
          unit={say.hours}
        />
      );
    case 'instant':
      return (
        <Field
          label={label}
          hint={say.when(zone)}
          type="datetime-local"
          value={draft.text}
          onInput={set}
          error={error}
        />
      );
    case 'amount':
      return <AmountFields {...props} />;
    case 'state':
      return <Select {...listed(label, draft, set, error)} groups={[{ options: STATES }]} />;
    case 'casualty':
      return <Select {...listed(label, draft, set, error)} groups={[{ options: CASUALTIES }]} />;
    case 'text':
      return <Field label={label} value={draft.text} onInput={set} error={error} />;
  }
}

const STATES = Object.entries(STATE_NAMES).map(([value, label]) => ({ value, label }));
const CASUALTIES = casualtyTypes.map(({ slug, label }) => ({ value: slug, label }));

function optionsOf(words: Readonly<Record<string, string>>): { value: string; label: string }[] {
  return Object.entries(words).map(([value, label]) => ({ value, label }));
}

function listed(label: string, { text }: FactDraft, onChoose: (text: string) => void, error: string | null) {
  return { label, value: text, onChoose, error, none: say.choose };
}

function AmountFields({ draft, onDraft, error }: FactControlProps) {
  return (
    <>
      <Field
        label={say.lowest}
        value={draft.text}
        onInput={(text) => onDraft({ ...draft, text })}
        inputMode="decimal"
        error={error}
      />
      <Field
        label={say.highest}
        hint={say.highestHint}
        value={draft.high}
        onInput={(high) => onDraft({ ...draft, high })}
        inputMode="decimal"
      />
    </>
  );
}
