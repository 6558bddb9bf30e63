import { useId } from 'preact/hooks';
import { fieldWords, valueWord } from '../../../shared/record/field-words/tell-field.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import { casualtyTypes } from '../../../shared/vocabulary/casualty-types.js';
import { beyondFirstAidTreatments, firstAidTreatments } from '../../../shared/vocabulary/treatments.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { Ticks } from '../look/ticks.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import type { RefTarget } from './control-of.js';
import type { ControlProps } from './control-props.js';
import { textOf } from './read-typed.js';
import { useEditor } from './section-editor.js';
import { suggestionsFor } from './suggestions.js';

const textsOf = (value: JsonValue | undefined): readonly string[] =>
  Array.isArray(value) ? (value as readonly JsonValue[]).filter((one) => typeof one === 'string') : [];

/** Several texts, one on each line; empty lines go when it is saved. */
export function LinesField({ path, label, value, onValue, error, hint }: ControlProps) {
  const { section } = useEditor();
  const lines = textsOf(value);
  const set = (text: string): void => onValue(text === '' ? undefined : text.split('\n'));
  const { suggestions } = suggestionsFor(section, path);
  return (
    <>
      <Field
        label={label}
        hint={hint === undefined ? say.onePerLine : `${hint} ${say.onePerLine}`}
        error={error}
        rows={Math.max(2, lines.length + 1)}
        value={lines.join('\n')}
        onInput={set}
      />
      {suggestions !== undefined && (
        <Select
          label={say.formWord(label)}
          value=""
          none={say.choose}
          groups={[
            {
              options: suggestions
                .filter((word) => !lines.includes(word))
                .map((word) => ({ value: word, label: word })),
            },
          ]}
          onChoose={(word) => onValue([...lines.filter((line) => line !== ''), word])}
        />
      )}
    </>
  );
}

interface Group {
  readonly label?: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

/** Words of a list, in the order in which they were chosen. */
function ChosenList(props: ControlProps & { groups: readonly Group[]; ordered?: boolean }) {
  const { section } = useEditor();
  const { path, label, value, onValue, error, hint, groups } = props;
  const id = useId();
  const chosen = textsOf(value);
  const left = groups.map((group) => ({
    ...group,
    options: group.options.filter((option) => !chosen.includes(option.value)),
  }));
  const nameOf = (one: string): string =>
    groups.flatMap(({ options }) => options).find((option) => option.value === one)?.label ??
    valueWord(section, path, one, language());
  const without = (one: string): void => {
    const rest = chosen.filter((other) => other !== one);
    onValue(rest.length === 0 ? undefined : rest);
  };
  return (
    <div class="chosen-list" role="group" aria-labelledby={id}>
      <p class={chosen.length === 0 ? 'unseen' : 'group-title'} id={id}>
        {label}
      </p>
      {chosen.length > 0 && (
        <ol class="chosen">
          {chosen.map((one) => (
            <li key={one}>
              <span>{nameOf(one)}</span>
              <Button look="plain" label={say.removeOf(nameOf(one))} onPress={() => without(one)}>
                {say.remove}
              </Button>
            </li>
          ))}
        </ol>
      )}
      <Select
        label={chosen.length === 0 ? label : say.addTo(label)}
        hint={hint}
        error={error}
        value=""
        none={say.choose}
        groups={left}
        onChoose={(one) => one !== '' && onValue([...chosen, one])}
      />
    </div>
  );
}

/** Kinds of occurrence or treatments. */
export function SlugsField({ list, ...props }: ControlProps & { list: 'casualty-types' | 'treatments' }) {
  const { vocabulary } = fieldWords(language());
  const optionsOf = (terms: readonly { slug: string; label: string }[]) =>
    terms.map(({ slug, label }) => ({ value: slug, label: vocabulary[slug] ?? label }));
  const groups: readonly Group[] =
    list === 'casualty-types'
      ? [{ options: optionsOf(casualtyTypes) }]
      : [
          { label: say.firstAid, options: optionsOf(firstAidTreatments) },
          { label: say.beyondFirstAid, options: optionsOf(beyondFirstAidTreatments) },
        ];
  return <ChosenList {...props} groups={groups} />;
}

const STATES = Object.entries(STATE_NAMES).map(([value, label]) => ({ value, label }));

export function StatesField(props: ControlProps) {
  return <ChosenList {...props} groups={[{ options: STATES }]} />;
}

/** Somebody or something that is listed elsewhere in the record; what is not listed any more stays to be seen. */
export function RefField({ label, value, onValue, error, hint, to }: ControlProps & { to: RefTarget }) {
  const { choices, addsOnly } = useEditor();
  if (addsOnly) return null;
  const id = textOf(value);
  const options = choices[to].map((one) => ({ value: one.id, label: one.name }));
  const known = id === '' || options.some((option) => option.value === id);
  return (
    <Select
      label={label}
      hint={options.length === 0 ? say.nothingToChoose[to] : hint}
      error={error}
      value={id}
      none={say.choose}
      optional
      groups={[{ options: known ? options : [...options, { value: id, label: id }] }]}
      onChoose={(chosen) => onValue(chosen === '' ? undefined : chosen)}
    />
  );
}

export function RefsField({ label, value, onValue, error, hint, to }: ControlProps & { to: RefTarget }) {
  const { choices, addsOnly } = useEditor();
  if (addsOnly) return null;
  return (
    <Ticks
      legend={label}
      hint={hint}
      error={error}
      options={choices[to].map(({ id, name }) => ({ value: id, label: name }))}
      ticked={new Set(textsOf(value))}
      none={say.nothingToChoose[to]}
      onTick={(ticked) => onValue(ticked.size === 0 ? undefined : [...ticked])}
    />
  );
}
