import { useState } from 'preact/hooks';
import type { ShownAid } from '../../../shared/determination/determination.js';
import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import type { ScopeAnswer } from '../../../shared/record/incident-facts.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { Ticks } from '../look/ticks.js';
import { reportable } from '../words/reportable.js';
import { Refusals } from './refusals.js';
import { useCreate } from './use-create.js';
import type { Matter } from './use-matter.js';

const say = reportable.aids;

/** A signed answer: for whose law, and why. A later one takes its place, and none is taken back. */
export function ScopeAnswerForm({ matter, aid }: { matter: Matter; aid: ShownAid }) {
  const [answer, setAnswer] = useState<ScopeAnswer['answer']>();
  const [laws, setLaws] = useState<ReadonlySet<string>>(new Set([aid.jurisdiction]));
  const [reason, setReason] = useState('');
  const [looked, setLooked] = useState(false);
  const signing = useCreate(matter.id, 'scope-answers');
  const { states } = matter.determined.determination;
  const offered = [
    ...new Set([aid.jurisdiction, 'us', ...states.map(({ state }) => `us-${state.toLowerCase()}`)]),
  ];
  const missing = (is: boolean): string | null => (looked && is ? say.missing : null);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (answer === undefined || laws.size === 0 || reason.trim() === '' || signing.pending) return;
    if (await signing.create({ aid: aid.id, jurisdictions: [...laws], answer, reason: reason.trim() })) {
      setAnswer(undefined);
      setReason('');
      setLooked(false);
    }
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Choice
        legend={say.answer}
        value={answer}
        options={[
          { value: 'reportable', label: say.options.reportable },
          { value: 'not-reportable', label: say.options['not-reportable'], about: say.optionAbout },
        ]}
        onChoose={setAnswer}
        error={missing(answer === undefined)}
      />
      <Ticks
        legend={say.laws}
        options={offered.map((law) => ({ value: law, label: nameJurisdiction(law) }))}
        ticked={laws}
        onTick={setLaws}
        error={missing(laws.size === 0)}
      />
      <Field
        label={say.reason}
        hint={say.reasonHint}
        rows={3}
        value={reason}
        onInput={setReason}
        error={missing(reason.trim() === '')}
      />
      <Refusals error={signing.error} title={say.refused} />
      {signing.done && <Note kind="saved">{say.done}</Note>}
      <Button type="submit" look="main" busy={signing.pending}>
        {say.sign}
      </Button>
    </form>
  );
}
