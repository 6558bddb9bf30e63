import type { HouseRule } from '../../../shared/follow-up/house-rule.js';
import { useId } from 'preact/hooks';
import { Field } from '../look/field.js';
import { houseRules as say } from '../words/en/house-rules.js';
import { type Figures, tellRule } from './house-rules-answer.js';

interface RuleTicksProps {
  readonly offered: readonly HouseRule[];
  readonly figures: Figures;
  readonly onChange: (figures: Figures) => void;
  readonly error: string | null;
  readonly faultOf: (rule: HouseRule['id']) => string | null;
}

/** What is often written, to be ticked; a rule with a figure asks for it once it is ticked. */
export function RuleTicks({ offered, figures, onChange, error, faultOf }: RuleTicksProps) {
  const id = useId();
  const turn = ({ id: rule, value }: HouseRule): void => {
    const { [rule]: was, ...rest } = figures;
    onChange(was === undefined ? { ...rest, [rule]: String(value ?? '') } : rest);
  };
  return (
    <fieldset class="choice" {...(error !== null && { 'aria-describedby': `${id}-error` })}>
      <legend>{say.form.rules}</legend>
      <p class="hint">{say.form.figures}</p>
      {error !== null && (
        <p class="fault" id={`${id}-error`} role="alert">
          {error}
        </p>
      )}
      {offered.map((rule) => {
        const typed = figures[rule.id];
        const words = tellRule(rule, '…');
        return (
          <div key={rule.id}>
            <label class="tick">
              <input type="checkbox" checked={typed !== undefined} onChange={() => turn(rule)} />
              <span>{words}</span>
            </label>
            {typed !== undefined && rule.unit !== null && (
              <Field
                label={say.form.figure(words)}
                value={typed}
                onInput={(figure) => onChange({ ...figures, [rule.id]: figure })}
                inputMode="decimal"
                unit={say.units[rule.unit]}
                error={faultOf(rule.id)}
              />
            )}
          </div>
        );
      })}
    </fieldset>
  );
}
