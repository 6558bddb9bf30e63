import { useId } from 'preact/hooks';

interface TicksProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly ticked: ReadonlySet<Value>;
  readonly onTick: (ticked: ReadonlySet<Value>) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null;
  /** Said where there is nothing to tick. */
  readonly none?: string;
}

/** Several of a few: native boxes, each with its words. */
export function Ticks<Value extends string>({
  legend,
  options,
  ticked,
  onTick,
  hint,
  error,
  none,
}: TicksProps<Value>) {
  const id = useId();
  const hasError = error !== null && error !== undefined;
  const turn = (value: Value): void => {
    const next = new Set(ticked);
    if (!next.delete(value)) next.add(value);
    onTick(next);
  };
  return (
    <fieldset class="choice" {...(hasError && { 'aria-describedby': `${id}-error` })}>
      <legend>{legend}</legend>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {hasError && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      {options.length === 0 && none !== undefined && <p>{none}</p>}
      {options.map(({ value, label }) => (
        <label class="tick" key={value}>
          <input type="checkbox" checked={ticked.has(value)} onChange={() => turn(value)} />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
