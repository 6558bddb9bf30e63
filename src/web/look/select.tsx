import { useId } from 'preact/hooks';

interface SelectProps<Value extends string> {
  readonly label: string;
  readonly value: Value | '';
  readonly onChoose: (value: Value | '') => void;
  /** In groups where a group has a label. */
  readonly groups: readonly {
    readonly label?: string;
    readonly options: readonly { readonly value: Value; readonly label: string }[];
  }[];
  /** Shown while nothing is chosen. */
  readonly none: string;
  /** What was chosen can be taken back. */
  readonly optional?: boolean;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
}

/** One of many: the native list, with its label, its hint and its fault. */
export function Select<Value extends string>(props: SelectProps<Value>) {
  const { label, value, onChoose, groups, none, optional = false, hint, error } = props;
  const id = useId();
  const hasError = error !== null && error !== undefined;
  const described = [hint !== undefined && `${id}-hint`, hasError && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {hasError && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      <select
        id={id}
        value={value}
        onChange={({ currentTarget }) => onChoose(currentTarget.value as Value | '')}
        {...(described !== '' && { 'aria-describedby': described })}
        {...(hasError && { 'aria-invalid': 'true' as const })}
      >
        <option value="" disabled={!optional}>
          {none}
        </option>
        {groups.map((group) =>
          group.label === undefined ? (
            group.options.map((option) => <Option key={option.value} {...option} />)
          ) : (
            <optgroup key={group.label} label={group.label}>
              {group.options.map((option) => (
                <Option key={option.value} {...option} />
              ))}
            </optgroup>
          ),
        )}
      </select>
    </div>
  );
}

function Option({ value, label }: { value: string; label: string }) {
  return <option value={value}>{label}</option>;
}
