import { useState } from 'preact/hooks';
import { FILERS, FILING_FORMS } from '../../../shared/decision/filing.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { useSession } from '../session/session.js';
import { decision as say } from '../words/decision.js';
import { facts as sayFacts } from '../words/facts.js';
import { nameDuty } from './compare-determinations.js';
import { craftOf } from './craft-of.js';
import { answersOf, authorityIn, emptyFiling, type FilingDraft, filingBody } from './filing-draft.js';
import { FilingSelects } from './filing-selects.js';
import { momentOf } from '../look/moment.js';
import { Refusals } from './refusals.js';
import type { DutyView } from './service-answers.js';
import { Ticks } from '../look/ticks.js';
import { useCreate } from './use-create.js';
import type { Matter } from './use-matter.js';

/** A report or notice that was made, and the duties that it answers. */
export function FilingForm({ matter, view }: { matter: Matter; view?: DutyView }) {
  const me = useSession().me;
  const zone = matter.determined.determination.timeZone;
  const craft = craftOf(matter.duties);
  const empty = (): FilingDraft => emptyFiling(matter, view, me?.name ?? '');
  const [draft, setDraft] = useState(empty);
  const [looked, setLooked] = useState(false);
  const filing = useCreate(matter.id, 'filings');
  const at = momentOf(draft.at, zone);
  const may = answersOf(matter, draft);
  const satisfies = may.filter(({ duty }) => !draft.without.has(duty));
  const change = (part: Partial<FilingDraft>): void => setDraft({ ...draft, ...part });
  const missing = (is: boolean, words: string = say.filing.missing): string | null =>
    looked && is ? words : null;
  const lacks =
    draft.way === '' || draft.to.trim() === '' || draft.filedBy === undefined || draft.filer.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (at === null || lacks || filing.pending) return;
    if (await filing.create(filingBody(draft, at, satisfies))) {
      setDraft(empty());
      setLooked(false);
    }
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <p class="quiet">{say.filing.lead}</p>
      <Choice
        legend={say.filing.form}
        value={draft.form}
        options={FILING_FORMS.map((value) => ({ value, label: say.filing.forms[value] }))}
        onChoose={(form) => change({ form })}
      />
      {craft.length > 1 && (
        <Choice
          legend={say.filing.vessel}
          value={draft.vessel ?? undefined}
          options={craft.map((id) => ({ value: id, label: id }))}
          onChoose={(vessel) => change({ vessel })}
        />
      )}
      <FilingSelects
        matter={matter}
        draft={draft}
        onChange={(part) =>
          change({
            ...part,
            ...(part.jurisdiction !== undefined && { to: authorityIn(matter, part.jurisdiction) }),
          })
        }
        missing={missing}
      />
      <Field
        label={say.filing.to}
        hint={say.filing.toHint}
        value={draft.to}
        onInput={(to) => change({ to })}
        error={missing(draft.to.trim() === '')}
      />
      <Ticks
        legend={say.filing.satisfies}
        options={may.map(({ duty, vessel }) => ({ value: duty, label: nameDuty(duty, vessel) }))}
        ticked={new Set(satisfies.map(({ duty }) => duty))}
        onTick={(ticked) =>
          change({ without: new Set(may.map(({ duty }) => duty).filter((duty) => !ticked.has(duty))) })
        }
        none={say.filing.satisfiesNone}
      />
      <Field
        label={say.filing.at}
        hint={`${say.filing.atHint} ${sayFacts.when(zone)}`}
        type="datetime-local"
        value={draft.at}
        onInput={(text) => change({ at: text })}
        error={missing(at === null, sayFacts.notATime)}
      />
      <Choice
        legend={say.filing.filedBy}
        value={draft.filedBy}
        options={FILERS.map((value) => ({ value, label: say.filing.filers[value] }))}
        onChoose={(filedBy) => change({ filedBy })}
        error={missing(draft.filedBy === undefined)}
      />
      <Field
        label={say.filing.filer}
        value={draft.filer}
        onInput={(filer) => change({ filer })}
        error={missing(draft.filer.trim() === '')}
      />
      <Field
        label={say.filing.confirmation}
        hint={say.filing.confirmationHint}
        value={draft.confirmation}
        onInput={(confirmation) => change({ confirmation })}
      />
      <Field
        label={say.filing.remark}
        hint={say.sign.otherHint}
        rows={2}
        value={draft.remark}
        onInput={(remark) => change({ remark })}
        error={filing.error?.faultAt('/remark')}
      />
      <Refusals error={filing.error} title={say.refused} />
      {filing.done && <Note kind="saved">{say.filing.done}</Note>}
      <Button type="submit" look="main" busy={filing.pending}>
        {say.filing.submit}
      </Button>
    </form>
  );
}
