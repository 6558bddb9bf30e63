import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { Ticks } from '../look/ticks.js';
import { lists as say } from '../words/lists.js';
import { draftOf } from './draft.js';
import type { Draft, DraftValue, FieldSpec } from './field-spec.js';

interface SpecFieldsProps {
  readonly specs: readonly FieldSpec[];
  readonly draft: Draft;
  readonly onChange: (draft: Draft) => void;
  /** What is wrong at a place of what was sent, such as `/numbers/0/phone`. */
  readonly faultAt: (pointer: string) => string | null;
  /** Where the thing itself stands in what is sent; empty for the whole. */
  readonly within?: string;
}

/** The fields of a form, each by what it takes, with its fault. */
export function SpecFields({ specs, draft, onChange, faultAt, within = '' }: SpecFieldsProps) {
  return (
    <>
      {specs.map((spec) => (
        <SpecField
          key={spec.name}
          spec={spec}
          value={draft[spec.name] ?? ''}
          onChange={(value) => onChange({ ...draft, [spec.name]: value })}
          faultAt={faultAt}
          pointer={`${within}/${spec.name}`}
        />
      ))}
    </>
  );
}

interface SpecFieldProps {
  readonly spec: FieldSpec;
  readonly value: DraftValue;
  readonly onChange: (value: DraftValue) => void;
  readonly faultAt: (pointer: string) => string | null;
  readonly pointer: string;
}

function SpecField({ spec, value, onChange, faultAt, pointer }: SpecFieldProps) {
  const error = inWords(spec, faultAt(pointer));
  const label = spec.required === true ? `${spec.label} *` : spec.label;
  const hint = spec.hint === undefined ? {} : { hint: spec.hint };
  switch (spec.as) {
    case 'items':
      return (
        <ItemsField
          spec={spec}
          items={value as Draft[]}
          onChange={onChange}
          faultAt={faultAt}
          within={pointer}
        />
      );
    case 'several':
      return (
        <Ticks
          legend={label}
          options={spec.options}
          ticked={new Set(value as string[])}
          onTick={(ticked) => onChange([...ticked])}
          none={spec.none}
          error={error}
        />
      );
    case 'choice':
      return (
        <Choice
          legend={label}
          options={spec.options}
          value={value as string}
          onChoose={onChange}
          error={error}
          {...hint}
        />
      );
    case 'one':
      return (
        <Select
          label={label}
          value={value as string}
          onChoose={onChange}
          groups={[{ options: spec.options }]}
          none={spec.none}
          optional={spec.required !== true}
          error={error}
          {...hint}
        />
      );
    default:
      return (
        <Field
          label={label}
          value={value as string}
          onInput={onChange}
          error={error}
          {...hint}
          {...inputOf(spec)}
        />
      );
  }
}

/** The fault of a field; the service counts in cents, the page in dollars. */
export function inWords<Fault extends string | null>(spec: FieldSpec, fault: Fault): string | Fault {
  return spec.as === 'dollars' && fault !== null ? say.amount : fault;
}

/** How text is typed: on a phone this chooses the keys. */
function inputOf(spec: FieldSpec): Partial<Parameters<typeof Field>[0]> {
  const unit = spec.unit === undefined ? {} : { unit: spec.unit };
  switch (spec.as) {
    case 'text':
      return { rows: spec.rows ?? 3 };
    case 'phone':
      return { type: 'tel' };
    case 'mail':
      return { type: 'email' };
    case 'day':
      return { type: 'date' };
    case 'number':
      return { inputMode: 'decimal', ...unit };
    case 'dollars':
      return { inputMode: 'decimal', unit: '$' };
    case 'password':
      return { type: 'password', autoComplete: 'current-password' };
    case 'digits':
      return { type: 'password', inputMode: 'numeric', autoComplete: 'off' };
    case 'words':
      return { hint: [spec.hint, say.commas].filter(Boolean).join(' ') };
    default:
      return {};
  }
}

interface ItemsFieldProps {
  readonly spec: Extract<FieldSpec, { as: 'items' }>;
  readonly items: readonly Draft[];
  readonly onChange: (items: readonly Draft[]) => void;
  readonly faultAt: (pointer: string) => string | null;
  readonly within: string;
}

/** A list of things with fields of their own, such as telephone numbers: added, changed, taken out. */
function ItemsField({ spec, items, onChange, faultAt, within }: ItemsFieldProps) {
  const put = (place: number, item: Draft): void =>
    onChange(items.map((one, at) => (at === place ? item : one)));
  return (
    <fieldset class="choice items">
      <legend>{spec.label}</legend>
      {spec.hint !== undefined && <p class="hint">{spec.hint}</p>}
      {items.map((item, place) => (
        <div
          class="spec-item"
          role="group"
          aria-label={say.one(spec.one, place + 1)}
          key={item['id'] as string}
        >
          <SpecFields
            specs={spec.fields}
            draft={item}
            onChange={(changed) => put(place, changed)}
            faultAt={faultAt}
            within={`${within}/${place}`}
          />
          <Button onPress={() => onChange(items.filter((_, at) => at !== place))}>
            {say.takeOut(spec.one, place + 1)}
          </Button>
        </div>
      ))}
      <Button onPress={() => onChange([...items, draftOf(spec.fields, { id: crypto.randomUUID() })])}>
        {say.add(spec.one)}
      </Button>
    </fieldset>
  );
}
