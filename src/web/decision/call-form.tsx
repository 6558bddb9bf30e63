import { useState } from 'preact/hooks';
import type { LegalCall } from '../../../shared/decision/decision.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { decision as say } from '../words/decision.js';
import { facts as sayFacts } from '../words/facts.js';
import { nameDuty } from './compare-determinations.js';
import { momentOf } from '../look/moment.js';
import { Refusals } from './refusals.js';
import { Ticks } from '../look/ticks.js';
import { useCreate } from './use-create.js';
import type { Matter } from './use-matter.js';

interface CallDraft {
  readonly at: string;
  readonly with: LegalCall['with'] | undefined;
  readonly who: string;
  readonly said: string;
  readonly duties: ReadonlySet<string>;
}

const EMPTY: CallDraft = { at: '', with: undefined, who: '', said: '', duties: new Set() };

/** Who at the agency or of counsel said what about a duty. */
export function CallForm({ matter }: { matter: Matter }) {
  const zone = matter.determined.determination.timeZone;
  const [draft, setDraft] = useState(EMPTY);
  const [looked, setLooked] = useState(false);
  const logging = useCreate(matter.id, 'legal-calls');
  const at = momentOf(draft.at, zone);
  const change = (part: Partial<CallDraft>): void => setDraft({ ...draft, ...part });
  const missing = (is: boolean, words: string = say.filing.missing): string | null =>
    looked && is ? words : null;
  const noWho = draft.who.trim() === '';
  const notSaid = draft.said.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    const { duties } = draft;
    if (at === null || draft.with === undefined || noWho || notSaid || duties.size === 0 || logging.pending)
      return;
    const body = {
      at,
      with: draft.with,
      who: draft.who.trim(),
      said: draft.said.trim(),
      duties: [...duties],
    };
    if (await logging.create(body)) {
      setDraft(EMPTY);
      setLooked(false);
    }
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <p class="quiet">{say.call.lead}</p>
      <Choice
        legend={say.call.with}
        value={draft.with}
        options={[
          { value: 'agency', label: say.call.agency },
          { value: 'counsel', label: say.call.counsel },
        ]}
        onChoose={(chosen) => change({ with: chosen })}
        error={missing(draft.with === undefined)}
      />
      <Field
        label={say.call.who}
        hint={say.call.whoHint}
        value={draft.who}
        onInput={(who) => change({ who })}
        error={missing(noWho)}
      />
      <Field
        label={say.call.said}
        rows={3}
        value={draft.said}
        onInput={(said) => change({ said })}
        error={missing(notSaid)}
      />
      <Ticks
        legend={say.call.duties}
        options={[...new Set(matter.duties.map(({ duty }) => duty))].map((duty) => ({
          value: duty,
          label: nameDuty(duty, null),
        }))}
        ticked={draft.duties}
        onTick={(duties) => change({ duties })}
        error={missing(draft.duties.size === 0, say.call.dutiesMissing)}
      />
      <Field
        label={say.call.at}
        hint={`${say.just} ${sayFacts.when(zone)}`}
        type="datetime-local"
        value={draft.at}
        onInput={(text) => change({ at: text })}
        error={missing(at === null, sayFacts.notATime)}
      />
      <Refusals error={logging.error} title={say.refused} />
      {logging.done && <Note kind="saved">{say.call.done}</Note>}
      <Button type="submit" look="main" busy={logging.pending}>
        {say.call.submit}
      </Button>
    </form>
  );
}
