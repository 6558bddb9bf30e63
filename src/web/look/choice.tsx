import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Ternary } from '../../../shared/kernel/truth.js';
import { common } from '../words/common.js';
import { Sign } from './sign.js';

interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly about?: string;
  readonly sign?: ComponentChildren;
}

interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly Option<Value>[];
  readonly value: Value | undefined;
  readonly onChoose: (value: Value) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  /** Legend for screen readers alone, where a heading says the same. */
  readonly quietLegend?: boolean;
  /** Choosing moves on at once: arrow keys then only go from one to the next, and the space bar chooses. */
  readonly atOnce?: boolean;
}

/** One of a few, each large enough for a wet thumb: radio buttons that look like what they are pressed as. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { legend, options, value, onChoose, hint, error, quietLegend = false, atOnce = false } = props;
  const id = useId();
  const hasError = error !== null && error !== undefined;
  return (
    <fieldset class="choice" {...(hasError && { 'aria-describedby': `${id}-error` })}>
      <legend class={quietLegend ? 'unseen' : ''}>{legend}</legend>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {hasError && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      <div class="options">
        {options.map((option) => (
          <label class="option" key={option.value}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              // A radio that is checked tells of no change when it is pressed again; a click always tells.
              onClick={() => onChoose(option.value)}
              {...(atOnce && { onKeyDown: goByArrow })}
            />
            {option.sign ?? <span class="dot" aria-hidden="true" />}
            <span>
              {option.label}
              {option.about !== undefined && <small>{option.about}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/** A browser chooses with each arrow, and whoever wants the third would have answered with the second. */
function goByArrow(event: JSX.TargetedKeyboardEvent<HTMLInputElement>): void {
  const step = STEPS[event.key];
  const group = event.currentTarget.closest('.options');
  if (step === undefined || group === null) return;
  event.preventDefault();
  const all = [...group.querySelectorAll('input')];
  const next = all.indexOf(event.currentTarget) + step;
  all.at(next % all.length)?.focus();
}

type ThreeWayProps = Omit<ChoiceProps<Ternary>, 'options'> & {
  /** Other words than Yes, No and Not known yet, such as "Yes, both". */
  readonly words?: Partial<Record<Ternary, string>>;
};

const TERNARIES: readonly Ternary[] = ['yes', 'no', 'unknown'];

/** A fact with its three values; nothing is chosen before somebody has answered. */
export function ThreeWay({ words, ...rest }: ThreeWayProps) {
  const options = TERNARIES.map((value) => ({
    value,
    label: words?.[value] ?? common.answer[value],
    sign: <Sign of={value} />,
  }));
  return <Choice {...rest} options={options} />;
}
