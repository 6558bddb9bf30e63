import type { RequestDetails, RequestKind } from '../../../shared/record/legal-request.js';
import { adviseOnRequest } from '../../../shared/record/legal-request-advice.js';
import { objectionsBy } from '../../../shared/record/legal-request-clocks.js';
import type { AskError } from '../ask/ask-error.js';
import type { AccountLine } from '../counsel/counsel-answers.js';
import { SpecFields } from '../lists/spec-fields.js';
import { Choice } from '../look/choice.js';
import { Deadline } from '../look/deadline.js';
import { Field } from '../look/field.js';
import { momentOf } from '../look/moment.js';
import { Section } from '../look/section.js';
import { requests as say } from '../words/requests.js';
import { tellFault } from './request-faults.js';
import { Cautions } from './cautions.js';
import { detailsBody, type RequestDraft, textOf } from './request-draft.js';
import { CAME, COUNSEL, COURT, DUE_BASIS, DUE_DAY, handlerSpec, KIND, WHAT, WHO } from './request-specs.js';

interface RequestFieldsProps {
  readonly draft: RequestDraft;
  readonly onChange: (draft: RequestDraft) => void;
  readonly error: AskError | null;
  /** Zone in which times are typed. */
  readonly zone: string;
  readonly people: readonly AccountLine[];
}

const { form } = say;

/** The fields of a request, in the order in which a paper is read; what to mind stands above them as it becomes known. */
export function RequestFields({ draft, onChange, error, zone, people }: RequestFieldsProps) {
  const faultAt = (pointer: string): string | null => tellFault(error?.faultAt(pointer) ?? null);
  const change = (part: Partial<RequestDraft>): void => onChange({ ...draft, ...part });
  const specs = (list: Parameters<typeof SpecFields>[0]['specs']) => (
    <SpecFields
      specs={list}
      draft={draft.fields}
      onChange={(fields) => change({ fields })}
      faultAt={faultAt}
    />
  );
  const moment = (name: 'receivedAt' | 'dueAt' | 'counselSawAt', label: string, hint?: string) => (
    <Field
      label={label}
      {...(hint !== undefined && { hint })}
      type="datetime-local"
      value={draft[name]}
      onInput={(text) => change({ [name]: text })}
      error={momentOf(draft[name], zone) === null ? form.notATime : faultAt(`/${name}`)}
    />
  );
  const kind = textOf(draft, 'kind') as RequestKind | '';
  const read = detailsOf(draft, zone);
  const objections = read === null ? null : objectionsBy(read, zone);
  return (
    <>
      <Section title={form.paper}>
        {specs([KIND])}
        {read !== null && (
          <Cautions cautions={adviseOnRequest({ details: read, incidents: ANY }).slice(0, MOST)} />
        )}
        {moment('receivedAt', form.receivedAt, form.receivedAtHint(zone))}
        {specs(CAME)}
      </Section>
      <Section title={form.who}>{specs(WHO)}</Section>
      {(kind === 'subpoena' || kind === 'court-order') && (
        <Section title={form.courtTitle}>{specs(COURT)}</Section>
      )}
      <Section title={form.dueTitle}>
        <Choice
          legend={`${form.due} *`}
          options={(['at', 'day', 'unknown'] as const).map((value) => ({ value, label: form.dues[value] }))}
          value={draft.due}
          onChoose={(due) => change({ due })}
          error={faultAt('/due')}
        />
        {draft.due === 'at' && moment('dueAt', `${form.dueAt} *`)}
        {draft.due === 'day' && specs([DUE_DAY])}
        {(draft.due === 'at' || draft.due === 'day') && specs([DUE_BASIS])}
        {objections !== null && (
          <div class="request-objections">
            <strong>{form.objectionsBy}</strong>
            <Deadline at={new Date(objections).toISOString()} timeZone={zone} />
          </div>
        )}
      </Section>
      <Section title={form.what}>{specs(WHAT)}</Section>
      <Section title={form.handling}>
        {specs([handlerSpec(people), COUNSEL])}
        {moment('counselSawAt', form.counselSawAt, form.counselSawHint)}
      </Section>
    </>
  );
}

/** Which incidents it concerns is asked below: nothing is said of that here. */
const ANY = [{ incident: '', since: '', by: { person: '', account: null, role: null, device: null } }];

/** The first that there is to mind: more would not be read while somebody types. */
const MOST = 4;

/** As far as the draft says; null while not even its kind is chosen or a time is none. */
function detailsOf(draft: RequestDraft, zone: string): RequestDetails | null {
  const body = detailsBody(draft, zone) as unknown as Partial<RequestDetails>;
  const { kind } = body;
  const moments = [draft.receivedAt, draft.dueAt].map((text) => momentOf(text, zone));
  if (kind === undefined || moments.includes(null)) return null;
  return { from: '', receivedBy: '', way: 'other', due: 'unknown', receivedAt: '', ...body, kind };
}
