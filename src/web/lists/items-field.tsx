import { Button } from '../look/button.js';
import { lists as say } from '../words/lists.js';
import { draftOf } from './draft.js';
import type { Draft, FieldSpec } from './field-spec.js';
import { SpecFields } from './spec-fields.js';

interface ItemsFieldProps {
  readonly spec: Extract<FieldSpec, { as: 'items' }>;
  readonly items: readonly Draft[];
  readonly onChange: (items: readonly Draft[]) => void;
  readonly faultAt: (pointer: string) => string | null;
  readonly within: string;
}

/** A list of things with fields of their own, such as telephone numbers: added, changed, taken out. */
export function ItemsField({ spec, items, onChange, faultAt, within }: ItemsFieldProps) {
  const put = (place: number, item: Draft): void =>
    onChange(items.map((one, at) => (at === place ? item : one)));
  return (
    <fieldset class="choice items">
      <legend>{spec.label}</legend>
      {spec.hint !== undefined && <p class="hint">{spec.hint}</p>}
      {items.map((item, place) => (
        <div class="item" role="group" aria-label={say.one(spec.one, place + 1)} key={item['id'] as string}>
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
