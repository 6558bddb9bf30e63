import { useEffect, useState } from 'preact/hooks';
import { DECISION_KINDS } from '../../../shared/decision/decision.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { decision as say } from '../words/decision.js';
import { Refusals } from './refusals.js';
import { readSignDraft, type SignDraft } from './sign-draft.js';
import { NoReportFields, ReportFields, WaitFields } from './sign-fields.js';
import type { DutyView } from './service-answers.js';
import { StaleNote } from './stale-note.js';
import { useCreate } from './use-create.js';
import type { Matter } from './use-matter.js';

/**
 * Signs on one report. It is signed on the determination that was read: when that changed meanwhile, what changed is
 * shown and asked for again.
 */
export function SignForm({
  matter,
  view,
  onSigned,
}: {
  matter: Matter;
  view: DutyView;
  onSigned: (said: string) => void;
}) {
  const me = useSession().me;
  const zone = matter.determined.determination.timeZone;
  const signing = useCreate(matter.id, 'decisions');
  const [draft, setDraft] = useState<SignDraft>(() => emptyDraft(view));
  const [read, setRead] = useState(matter.determined);
  const [looked, setLooked] = useState(false);
  const stale = read.version !== matter.determined.version;
  const { kind } = draft;
  // Nothing was chosen yet: what stands now is what is read.
  useEffect(() => {
    if (stale && kind === undefined) setRead(matter.determined);
  }, [stale, kind, matter.determined]);

  const reading = readSignDraft(draft, zone);
  const faultAt = (at: 'kind' | 'until'): string | null =>
    looked && 'fault' in reading && reading.at === at ? reading.fault : null;
  const change = (part: Partial<SignDraft>): void => setDraft({ ...draft, ...part });
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (stale || signing.pending || 'fault' in reading || kind === undefined) return;
    const { duty, vessel } = view;
    const body = { ...reading.body, determination: read.version, duty, ...(vessel !== null && { vessel }) };
    if (await signing.create(body)) onSigned(say.sign.done(say.sign.kinds[kind]));
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Choice
        legend={say.sign.legend}
        value={kind}
        options={DECISION_KINDS.map((value) => ({
          value,
          label: say.sign.kinds[value],
          about: say.sign.about[value],
        }))}
        onChoose={(chosen) => change({ kind: chosen })}
        error={faultAt('kind')}
      />
      {kind === 'report' && <ReportFields draft={draft} onChange={change} />}
      {kind === 'wait' && (
        <WaitFields view={view} zone={zone} draft={draft} onChange={change} error={faultAt('until')} />
      )}
      {kind === 'no-report' && <NoReportFields view={view} draft={draft} onChange={change} />}
      {stale && kind !== undefined && (
        <StaleNote read={read} now={matter.determined} onGo={() => setRead(matter.determined)} />
      )}
      <Refusals error={signing.error} title={say.sign.refused} />
      {kind !== undefined && !stale && (
        <>
          <p class="quiet">
            {me !== null && say.sign.as(me.name, common.roles[me.role])} {say.sign.lasts}
          </p>
          <Button type="submit" look="main" busy={signing.pending}>
            {say.sign.submit[kind]}
          </Button>
        </>
      )}
    </form>
  );
}

function emptyDraft({ questions }: DutyView): SignDraft {
  return {
    kind: undefined,
    until: '',
    waitedFor: new Set(questions.map(({ text }) => text)),
    other: '',
    reason: '',
    counsel: '',
  };
}
