import { earliestDue } from '../../../shared/decision/decision.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { fieldMoment } from '../look/moment.js';
import type { DutyView } from './service-answers.js';
import type { SignDraft } from './sign-draft.js';
import { Ticks } from '../look/ticks.js';

interface FieldsProps {
  readonly draft: SignDraft;
  readonly onChange: (part: Partial<SignDraft>) => void;
}

export function ReportFields({ draft, onChange }: FieldsProps) {
  return (
    <Field
      label={say.sign.reason}
      hint={say.sign.reasonMay}
      rows={2}
      value={draft.reason}
      onInput={(reason) => onChange({ reason })}
    />
  );
}

/** The picker ends at the earliest time at which the report can be due. */
export function WaitFields(props: FieldsProps & { view: DutyView; zone: string; error: string | null }) {
  const { view, zone, draft, onChange, error } = props;
  const due = view.state === 'supplement-due' ? null : earliestDue(view);
  const texts = view.questions.map(({ text }) => text);
  return (
    <>
      <Field
        label={say.sign.until}
        hint={due === null ? say.sign.untilAny(zone) : say.sign.untilHint(tellInstant(due, zone), zone)}
        type="datetime-local"
        value={draft.until}
        onInput={(until) => onChange({ until })}
        error={error}
        {...(due !== null && { max: fieldMoment(due, zone) })}
      />
      {texts.length > 0 && (
        <Ticks
          legend={say.sign.waitedFor}
          options={texts.map((text) => ({ value: text, label: text }))}
          ticked={draft.waitedFor}
          onTick={(waitedFor) => onChange({ waitedFor })}
        />
      )}
      <Field
        label={say.sign.other}
        hint={say.sign.otherHint}
        value={draft.other}
        onInput={(other) => onChange({ other })}
      />
    </>
  );
}

/** Reason and counsel are asked for where the law calls for the report, or where it was filed. */
export function NoReportFields({ view, draft, onChange }: FieldsProps & { view: DutyView }) {
  const filed = view.filings.length > 0;
  const needsReason = filed || view.outcome === 'required';
  return (
    <>
      {view.outcome === 'undetermined' && <Note>{say.sign.cannotYet}</Note>}
      {view.callFirst !== null && <Note>{`${view.callFirst} ${say.callFirstAbout}`}</Note>}
      <Field
        label={say.sign.reason}
        hint={needsReason ? say.sign.reasonHint : say.sign.reasonMay}
        rows={3}
        value={draft.reason}
        onInput={(reason) => onChange({ reason })}
      />
      {view.outcome === 'required' && (
        <Field
          label={say.sign.counsel}
          hint={say.sign.counselHint}
          value={draft.counsel}
          onInput={(counsel) => onChange({ counsel })}
        />
      )}
    </>
  );
}
