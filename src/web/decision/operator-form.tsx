import { useState } from 'preact/hooks';
import { isBereaved, type SaysFiled } from '../../../shared/decision/operator-notice.js';
import { Button } from '../look/button.js';
import { Choice, ThreeWay } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { decision as say } from '../words/decision.js';
import { facts as sayFacts } from '../words/facts.js';
import { craftOf } from './craft-of.js';
import { filledIn } from './filled-in.js';
import { momentOf } from '../look/moment.js';
import { Refusals } from './refusals.js';
import { useCreate } from './use-create.js';
import type { Matter } from './use-matter.js';

interface NoticeDraft {
  readonly vessel: string | undefined;
  readonly at: string;
  readonly told: 'yes' | 'no' | undefined;
  readonly toldBy: string;
  readonly way: string;
  readonly saysFiled: SaysFiled | undefined;
  readonly confirmation: string;
  readonly words: string;
}

const EMPTY: NoticeDraft = {
  vessel: undefined,
  at: '',
  told: undefined,
  toldBy: '',
  way: '',
  saysFiled: undefined,
  confirmation: '',
  words: '',
};

/** That a person told the operator of the duty to report, or did not, and what the operator says. */
export function OperatorForm({ matter }: { matter: Matter }) {
  const { facts, determination } = matter.determined;
  const craft = craftOf(matter.duties);
  const [draft, setDraft] = useState(EMPTY);
  const [looked, setLooked] = useState(false);
  const noting = useCreate(matter.id, 'operator-notices');
  const vessel = draft.vessel ?? (craft.length === 1 ? craft[0] : undefined);
  const at = momentOf(draft.at, determination.timeZone);
  const change = (part: Partial<NoticeDraft>): void => setDraft({ ...draft, ...part });
  const missing = (is: boolean, words: string = say.filing.missing): string | null =>
    looked && is ? words : null;
  const noTeller = draft.toldBy.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    const { told, saysFiled } = draft;
    const noCraft = vessel === undefined && craft.length > 0;
    if (at === null || noCraft || told === undefined || saysFiled === undefined || noTeller || noting.pending)
      return;
    const written = {
      toldBy: draft.toldBy,
      way: draft.way,
      confirmation: draft.confirmation,
      words: draft.words,
    };
    const body = { ...(vessel !== undefined && { vessel }), at, told, saysFiled, ...filledIn(written) };
    if (await noting.create(body)) {
      setDraft(EMPTY);
      setLooked(false);
    }
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <p class="quiet">{say.operatorNotice.lead}</p>
      {isBereaved(facts, vessel ?? null) && <Note>{say.operatorNotice.bereaved}</Note>}
      {craft.length > 1 && (
        <Choice
          legend={say.operatorNotice.vessel}
          value={draft.vessel}
          options={craft.map((id) => ({ value: id, label: id }))}
          onChoose={(chosen) => change({ vessel: chosen })}
          error={missing(vessel === undefined)}
        />
      )}
      <Choice
        legend={say.operatorNotice.told}
        value={draft.told}
        options={[
          { value: 'yes', label: say.operatorNotice.toldYes },
          { value: 'no', label: say.operatorNotice.toldNo },
        ]}
        onChoose={(told) => change({ told })}
        error={missing(draft.told === undefined)}
      />
      <Field
        label={say.operatorNotice.toldBy}
        hint={say.operatorNotice.toldByHint}
        value={draft.toldBy}
        onInput={(toldBy) => change({ toldBy })}
        error={missing(noTeller)}
      />
      <Field
        label={say.operatorNotice.way}
        hint={say.operatorNotice.wayHint}
        value={draft.way}
        onInput={(way) => change({ way })}
      />
      <ThreeWay
        legend={say.operatorNotice.saysFiled}
        value={draft.saysFiled}
        onChoose={(saysFiled) => change({ saysFiled })}
        error={missing(draft.saysFiled === undefined)}
      />
      {draft.saysFiled === 'yes' && (
        <Field
          label={say.operatorNotice.confirmation}
          hint={say.sign.otherHint}
          value={draft.confirmation}
          onInput={(confirmation) => change({ confirmation })}
        />
      )}
      <Field
        label={say.operatorNotice.words}
        hint={say.sign.otherHint}
        rows={2}
        value={draft.words}
        onInput={(words) => change({ words })}
      />
      <Field
        label={say.call.at}
        hint={`${say.just} ${sayFacts.when(determination.timeZone)}`}
        type="datetime-local"
        value={draft.at}
        onInput={(text) => change({ at: text })}
        error={missing(at === null, sayFacts.notATime)}
      />
      <Refusals error={noting.error} title={say.refused} />
      {noting.done && <Note kind="saved">{say.operatorNotice.done}</Note>}
      <Button type="submit" look="main" busy={noting.pending}>
        {say.operatorNotice.submit}
      </Button>
    </form>
  );
}
