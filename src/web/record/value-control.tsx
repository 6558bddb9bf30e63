import {
  fieldHelp,
  fieldUnit,
  fieldWords,
  valueList,
} from '../../../shared/record/field-words/tell-field.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import { vesselTypes } from '../../../shared/vocabulary/vessel-types.js';
import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import { Choice, ThreeWay } from '../look/choice.js';
import { Field } from '../look/field.js';
import { fieldMoment } from '../look/moment.js';
import { Select } from '../look/select.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import {
  AmountFields,
  HoursField,
  MeasureFields,
  OccurredFields,
  PositionFields,
  StampFields,
} from './compound-controls.js';
import { type Control, controlOf } from './control-of.js';
import type { ControlProps } from './control-props.js';
import { FigureField } from './figure-field.js';
import { LinesField, RefField, RefsField, SlugsField, StatesField } from './list-controls.js';
import { figureOf, instantOf, textOf } from './read-typed.js';
import { useEditor } from './section-editor.js';
import { suggestionsFor } from './suggestions.js';
import type { ValueRule } from '../../../shared/wire/record-members.js';

type Given = Omit<ControlProps, 'hint'> & { readonly rule: ValueRule; readonly name: string };

/** Few enough to be pressed rather than looked up in a list. */
const MOST_PRESSED = 6;

/** The control that fits a value, with its label, its help and its unit. */
export function ValueControl({ rule, name, ...given }: Given) {
  const { section } = useEditor();
  const help = fieldHelp(section, given.path, language());
  return <FittingControl control={controlOf(rule, name)} {...given} hint={help} />;
}

function FittingControl({ control, ...props }: ControlProps & { control: Control }) {
  const { section, timeZone } = useEditor();
  const { path, label, value, onValue, error, hint } = props;
  const field = { label, value: textOf(value), error, hint };
  const words = (text: string): void => onValue(text === '' ? undefined : text);
  switch (control.kind) {
    case 'three-way':
      return (
        <ThreeWay
          legend={label}
          hint={hint}
          error={error}
          value={value as Ternary | undefined}
          onChoose={onValue}
        />
      );
    case 'yes-no':
      return (
        <Choice
          legend={label}
          hint={hint}
          error={error}
          value={value === undefined ? undefined : `${value as boolean}`}
          options={optionsOf(fieldWords(language()).values.yesNo)}
          onChoose={(chosen) => onValue(chosen === 'true')}
        />
      );
    case 'choice':
      return <ChoiceControl {...props} values={control.values} />;
    case 'text':
      return <Field {...field} rows={4} onInput={words} />;
    case 'line':
      return field.value.includes('\n') ? (
        <Field {...field} rows={2} onInput={words} />
      ) : (
        <Field {...field} onInput={words} {...suggestionsFor(section, path)} {...keyboardOf(path)} />
      );
    case 'lines':
      return <LinesField {...props} />;
    case 'instant':
      return (
        <Field
          {...field}
          hint={joined(hint, say.clocks(timeZone))}
          type="datetime-local"
          value={/^\d{4}-/.test(field.value) ? fieldMoment(field.value, timeZone) : field.value}
          onInput={(text) => onValue(instantOf(text, timeZone))}
        />
      );
    case 'day':
      return <Field {...field} type="date" onInput={words} />;
    case 'count':
      return (
        <FigureField
          {...props}
          figure={value}
          read={figureOf}
          onFigure={onValue}
          {...unitOf(section, path)}
        />
      );
    case 'hours':
      return <HoursField {...props} />;
    case 'amount':
      return <AmountFields {...props} />;
    case 'measure':
      return <MeasureFields {...props} units={control.units} />;
    case 'stamp':
      return <StampFields {...props} />;
    case 'position':
      return <PositionFields {...props} />;
    case 'occurred':
      return <OccurredFields {...props} />;
    case 'casualty-types':
    case 'treatments':
      return <SlugsField {...props} list={control.kind} />;
    case 'vessel-type':
      return (
        <Select
          {...field}
          none={say.choose}
          optional
          groups={[{ options: typesWith(field.value) }]}
          onChoose={words}
        />
      );
    case 'states':
      return <StatesField {...props} />;
    case 'state':
      return (
        <Select
          label={label}
          error={error}
          value={field.value}
          none={say.choose}
          optional
          groups={[{ options: STATES }]}
          onChoose={words}
        />
      );
    case 'zone':
      return <Field {...field} onInput={words} suggestions={ZONES} />;
    case 'ref':
      return <RefField {...props} to={control.to} />;
    case 'refs':
      return <RefsField {...props} to={control.to} />;
  }
}

function ChoiceControl({
  path,
  label,
  value,
  onValue,
  error,
  hint,
  values,
}: ControlProps & { values: readonly string[] }) {
  const { section } = useEditor();
  const words: Readonly<Record<string, string>> = fieldWords(language()).values[valueList(section, path)];
  const options = values.map((one) => ({ value: one, label: words[one] ?? one }));
  const shared = { error, hint, value: textOf(value) };
  return options.length > MOST_PRESSED ? (
    <Select
      {...shared}
      label={label}
      none={say.choose}
      optional
      groups={[{ options }]}
      onChoose={(chosen) => onValue(chosen === '' ? undefined : chosen)}
    />
  ) : (
    <Choice {...shared} legend={label} options={options} onChoose={onValue} />
  );
}

const STATES = Object.entries(STATE_NAMES).map(([value, label]) => ({ value, label }));
const ZONES = [
  'America/Chicago',
  'America/New_York',
  'America/Denver',
  'America/Phoenix',
  'America/Los_Angeles',
  'America/Anchorage',
  'Pacific/Honolulu',
];

function optionsOf(words: Readonly<Record<string, string>>) {
  return Object.entries(words).map(([value, label]) => ({ value, label }));
}

/** The types of the rule, and what somebody wrote instead of one. */
function typesWith(value: string) {
  const { vocabulary } = fieldWords(language());
  const listed = vesselTypes.map(({ slug, label }) => ({ value: slug, label: vocabulary[slug] ?? label }));
  return value === '' || listed.some((one) => one.value === value)
    ? listed
    : [...listed, { value, label: value }];
}

const joined = (hint: string | undefined, more: string): string =>
  hint === undefined ? more : `${hint} ${more}`;

export function unitOf(section: string, path: string): { unit?: string } {
  const unit = fieldUnit(section, path, language());
  return unit === undefined ? {} : { unit };
}

function keyboardOf(path: string): { inputMode?: 'tel' | 'email' } {
  if (/[pP]hone$|callBack$|number$/.test(path)) return { inputMode: 'tel' };
  return path.endsWith('/email') ? { inputMode: 'email' } : {};
}
