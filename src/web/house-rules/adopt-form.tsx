import { useRef, useState } from 'preact/hooks';
import type { AdoptedRules, HouseRule } from '../../../shared/follow-up/house-rule.js';
import { useSend } from '../lists/use-send.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { houseRules as say } from '../words/en/house-rules.js';
import type { Figures } from './house-rules-answer.js';
import { RuleTicks } from './rule-ticks.js';

interface AdoptFormProps {
  /** Rules from a day on; none from a day on; or another entry for the day of one that was wrong. */
  readonly kind: 'adopt' | 'end' | 'correct';
  readonly offered: readonly HouseRule[];
  readonly first: AdoptedRules;
  readonly onDone: () => void;
}

const LEADS = { adopt: say.form.lead, end: say.form.endLead, correct: say.form.correctLead };

/** One entry of house rules. Nothing is changed by it: what was written down before stays. */
export function AdoptForm({ kind, offered, first, onDone }: AdoptFormProps) {
  const { create, pending, error } = useSend();
  const [day, setDay] = useState(first.adoptedOn);
  const [document, setDocument] = useState(first.document);
  const [figures, setFigures] = useState<Figures>(() =>
    Object.fromEntries(first.rules.map(({ id, value }) => [id, String(value ?? '')])),
  );
  const [isEmpty, setIsEmpty] = useState(false);
  const trouble = useRef<HTMLDivElement>(null);
  const rules = offered.filter(({ id }) => figures[id] !== undefined);
  const submit = async (): Promise<void> => {
    setIsEmpty(kind === 'adopt' && rules.length === 0);
    if (kind === 'adopt' && rules.length === 0) return;
    const body = {
      adoptedOn: day,
      document: document.trim(),
      rules: rules.map(({ id, unit }) => ({ id, ...(unit !== null && { value: figureOf(figures[id]) }) })),
    };
    const answer = await create('/api/house-rules', body, ['/api/house-rules']);
    if (answer === undefined) trouble.current?.focus();
    else onDone();
  };
  const named = new Set(['/adoptedOn', '/document', ...rules.map((_rule, place) => `/rules/${place}/value`)]);
  const isNamed =
    error?.errors.every(({ pointer }) => named.has(pointer)) === true && error.errors.length > 0;
  return (
    <form
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!pending) void submit();
      }}
    >
      <p class="quiet">{LEADS[kind]}</p>
      <Field
        label={say.form.day}
        type="date"
        value={day}
        onInput={setDay}
        readOnly={kind === 'correct'}
        error={error?.faultAt('/adoptedOn')}
      />
      <Field
        label={say.form.document}
        hint={say.form.documentHint}
        value={document}
        onInput={setDocument}
        error={error?.faultAt('/document')}
      />
      {kind !== 'end' && (
        <RuleTicks
          offered={offered}
          figures={figures}
          onChange={setFigures}
          error={isEmpty ? say.form.nothing : null}
          faultOf={(id) =>
            error?.faultAt(`/rules/${rules.findIndex((rule) => rule.id === id)}/value`) ?? null
          }
        />
      )}
      <div ref={trouble} tabIndex={-1}>
        {error !== null &&
          (isNamed ? <Note kind="error">{say.form.look}</Note> : <ErrorState error={error} />)}
      </div>
      <Button type="submit" look="main" busy={pending}>
        {say.form[kind]}
      </Button>
    </form>
  );
}

/** What is no figure goes as it was typed, so that the service names the field; an empty one is left out. */
function figureOf(typed = ''): number | string | undefined {
  const text = typed.trim();
  if (text === '') return undefined;
  return Number.isFinite(Number(text)) ? Number(text) : text;
}
