import { useState } from 'preact/hooks';
import type { HistoryGroup } from '../../../shared/patterns/incident-history.js';
import { tellSum } from '../../../shared/report/sum-amounts.js';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { DefinitionRows, Section } from '../look/section.js';
import { dayIn, ownZone } from '../look/tell-instant.js';
import { renewal as say } from '../words/renewal.js';
import { HistoryTable, tellDamage } from './history-table.js';

interface Period {
  readonly from: string;
  readonly until: string;
}

/** `GET /api/incident-history` */
interface HistoryAnswer extends Period {
  readonly total: HistoryGroup;
  readonly byMonth: readonly HistoryGroup[];
  readonly byCraft: readonly HistoryGroup[];
  readonly byStation: readonly HistoryGroup[];
  readonly byType: readonly HistoryGroup[];
  readonly outings: number | null;
}

/** What happened in a period, for whoever renews a policy. */
export default function RenewalPage() {
  const [draft, setDraft] = useState<Period>(() => ({
    from: `${dayIn().slice(0, 4)}-01-01`,
    until: dayIn(),
  }));
  const [asked, setAsked] = useState(draft);
  const [pressed, setPressed] = useState(false);
  const period = `from=${asked.from}&until=${asked.until}`;
  const { data, error, again } = useAsk<HistoryAnswer>(`/api/incident-history?${period}`);
  const inOrder = draft.from <= draft.until;
  const submit = (event: Event): void => {
    event.preventDefault();
    setPressed(true);
    if (draft.from !== '' && draft.until !== '' && inOrder) setAsked(draft);
  };
  return (
    <Page title={say.name} lead={say.lead}>
      <PrintedBy timeZone={ownZone()} />
      <form class="form unprinted" onSubmit={submit} noValidate>
        <Field
          type="date"
          label={say.from}
          value={draft.from}
          onInput={(from) => setDraft({ ...draft, from })}
          error={pressed && draft.from === '' ? say.faultDay : null}
        />
        <Field
          type="date"
          label={say.until}
          value={draft.until}
          onInput={(until) => setDraft({ ...draft, until })}
          error={pressed && draft.until === '' ? say.faultDay : inOrder ? null : say.faultOrder}
        />
        <Button type="submit" look="main">
          {say.show}
        </Button>
      </form>
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data !== undefined && <History data={data} period={period} />}
    </Page>
  );
}

const GROUPS = ['byMonth', 'byCraft', 'byStation', 'byType'] as const;

function History({ data, period }: { data: HistoryAnswer; period: string }) {
  const { total, outings, from, until } = data;
  if (total.incidents === 0) {
    return (
      <Empty>
        <p>{say.none}</p>
      </Empty>
    );
  }
  const { hurt, died, missing, unknown } = total.people;
  return (
    <>
      <Section title={`${from} – ${until}`}>
        <DefinitionRows
          rows={[
            { term: say.columns.incidents, value: `${total.incidents} ${say.figures(total.incidents)}` },
            {
              term: say.columns.hurt,
              value: `${hurt + died + missing} ${say.hurt}`,
              about: say.openWords(unknown, total.unlisted),
            },
            { term: say.damage, value: tellDamage(total.damage) },
            { term: say.paid, value: total.paid === null ? say.notEntered : tellSum(total.paid) },
            { term: say.outings, value: outings ?? say.noOutings },
          ]}
        />
        <p class="links-line unprinted">
          <a href={`/api/incident-history/workbook?${period}`} download>
            {say.workbook}
          </a>
          <a href={`/api/incident-history/paper?${period}`} download>
            {say.paper}
          </a>
        </p>
      </Section>
      {GROUPS.map((by) => (
        <Section key={by} title={say[by]}>
          <HistoryTable title={say[by]} groups={data[by]} />
        </Section>
      ))}
      <p class="quiet">{say.several}</p>
    </>
  );
}
